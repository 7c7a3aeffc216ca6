package ripwright.internal.search;

import ripwright.internal.model.JobNumbers;
import ripwright.internal.model.PricedLayout;

/**
 * The objective's reward for making a blank, while the search runs. Demand is relaxed into the objective, as a Lagrangian
 * penalty of fixed size: were blanks not made forbidden outright, no move could take a board out and the search would
 * freeze; so each that is made earns somewhat more than the wood it takes.
 *
 * <p>And a reward for waste that is gathered. Boards are bought whole, so of two answers that cost the same the one that
 * loses all its waste on one board is nearer to doing without a board. A board of cost c with waste w counts by
 * {@code share * w * w / c} less: the bin packing fitness of Falkenauer and Delchambre, with waste for fill.
 *
 * @see "E. Falkenauer, A. Delchambre, A genetic algorithm for bin packing and line balancing, Proc. IEEE International
 *     Conference on Robotics and Automation (1992) 1186-1192, for the square; from memory"
 */
public final class BlankRewards {
    private static final double[] NO_WOOD = {};

    private final long[] worth; // worth[p]: of one blank of part p, in millionths
    private final double[] wood; // wood[p]: what the wood of one costs, in millionths
    private final double share; // of a board that is all waste: what it counts less

    /** Every blank is worth {@code factor} times the price of its wood. */
    static BlankRewards byPrice(JobNumbers numbers, double factor) {
        long[] worth = new long[numbers.parts()];
        for (int p = 0; p < worth.length; p++) worth[p] = Math.round(factor * numbers.woodPrice(p));
        return new BlankRewards(worth, wood(numbers), 0);
    }

    /** Blanks are worth {@code factor} times the price of their wood all together, each by its finished board feet. */
    static BlankRewards byFeet(JobNumbers numbers, double factor) {
        double price = 0;
        double feet = 0;
        int[] wanted = numbers.wanted();
        for (int p = 0; p < wanted.length; p++) {
            price += wanted[p] * numbers.woodPrice(p);
            feet += (double) wanted[p] * numbers.feet(p);
        }
        long[] worth = new long[wanted.length];
        for (int p = 0; p < worth.length; p++) worth[p] = Math.round(factor * price / feet * numbers.feet(p));
        return new BlankRewards(worth, wood(numbers), 0);
    }

    private static double[] wood(JobNumbers numbers) {
        double[] wood = new double[numbers.parts()];
        for (int p = 0; p < wood.length; p++) wood[p] = numbers.woodPrice(p);
        return wood;
    }

    /**
     * Waste counts the same wherever it lies.
     *
     * @param worth of one blank of each part, in millionths
     */
    BlankRewards(long[] worth) {
        this(worth, NO_WOOD, 0);
    }

    /**
     * @param worth of one blank of each part, in millionths
     * @param wood what the wood of one costs, in millionths
     * @param share of the cost of a board that is all waste: how much less it counts; below 1
     */
    BlankRewards(long[] worth, double[] wood, double share) {
        this.worth = worth;
        this.wood = wood;
        this.share = share;
    }

    /** The same, but waste gathered on one board counts less. */
    BlankRewards gathering(double share) {
        return new BlankRewards(worth, wood, share);
    }

    long of(PricedLayout layout) {
        long sum = 0;
        for (int part : layout.made()) sum += worth[part];
        return sum;
    }

    /** How much less the board counts for losing so much at once, in millionths. */
    long wasteGathered(PricedLayout layout) {
        if (share == 0 || layout.cost() == 0) return 0;
        double waste = Math.max(0, waste(layout));
        return Math.round(share * waste * waste / layout.cost());
    }

    /** What the board costs beyond the wood of its blanks, in millionths. */
    double waste(PricedLayout layout) {
        double waste = layout.cost();
        for (int part : layout.made()) waste -= wood[part];
        return waste;
    }
}
