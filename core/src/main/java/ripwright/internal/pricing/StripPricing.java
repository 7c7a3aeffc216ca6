package ripwright.internal.pricing;

import java.util.List;
import ripwright.internal.knapsack.KnapsackPasses;

/**
 * What strips of one width are worth at given prices, by the length of their section: their blanks at their prices, less
 * the crosscuts that part them, and what is left at their ends where the rack wants it. Their rips are not paid yet.
 *
 * <p>Every blank pays for the cut behind it; where the last one ends with its strip there is none, and it is paid back.
 */
public interface StripPricing {
    /** The worth of what cannot be: far below any other, and far above what a long cannot hold. */
    long NONE = KnapsackPasses.NONE;

    /**
     * Fills the tables.
     *
     * @param prices of a blank of each part kind, in coins
     * @param most how many of each there may be
     */
    void price(long[] prices, int[] most);

    /** How many strips of one section are told apart; 0 where each is worth as much as the first. */
    int told();

    /** What so many strips of a section of {@code t} ticks are worth together. */
    long best(int strips, int t);

    /** The part kinds of each of those strips. */
    List<int[]> blanks(int strips, int t);

    /** Marks every length at which strips are worth more than a tick before. */
    void markRises(boolean[] rises);
}
