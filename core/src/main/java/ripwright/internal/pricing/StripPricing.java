package ripwright.internal.pricing;

import java.util.List;
import ripwright.internal.knapsack.KnapsackPasses;

/**
 * The innermost part of the pricing problem: what n strips of one width are worth at given prices, for every length of their
 * section: the dual prices of their blanks, less the crosscuts that part them, plus the salvage of what is left at their
 * ends. The rips that make them are charged by the section.
 *
 * <p>Accounting: each blank is charged one crosscut, for the cut behind it; where the last blank ends with its strip there is
 * no cut, and the charge is paid back. Values are upper bounds where lengths do not fall on the grid.
 */
public interface StripPricing {
    /** The worth of what cannot be: far below any other, and far above what a long cannot hold. */
    long NONE = KnapsackPasses.NONE;

    /**
     * Fills the tables.
     *
     * @param prices of a blank of each part type, in scaled money
     * @param most how many of each there may be
     */
    void price(long[] prices, int[] most);

    /** How many strips of one section are told apart; 0 where each is worth as much as the first. */
    int told();

    /** What so many strips of a section of {@code t} ticks are worth together. */
    long best(int strips, int t);

    /** The part types of each of those strips. */
    List<int[]> blanks(int strips, int t);

    /** Marks every length at which strips are worth more than a tick before. */
    void markRises(boolean[] rises);
}
