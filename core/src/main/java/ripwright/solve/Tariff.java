package ripwright.solve;

import ripwright.pattern.JobNumbers;
import ripwright.pattern.PricedLayout;

/**
 * What it counts to make a blank while the search runs. Blanks not made have to trade against cost: were they forbidden
 * outright the search would freeze, so each is worth somewhat more than the wood it takes.
 */
final class Tariff {
    private final long[] worth; // worth[p]: of one blank of part p, in millionths

    /**
     * @param factor how many times the price of its wood a blank is worth
     */
    Tariff(JobNumbers numbers, double factor) {
        worth = new long[numbers.parts()];
        for (int p = 0; p < worth.length; p++) worth[p] = Math.round(factor * numbers.woodPrice(p));
    }

    /**
     * @param worth of one blank of each part, in millionths
     */
    Tariff(long[] worth) {
        this.worth = worth;
    }

    long of(PricedLayout layout) {
        long sum = 0;
        for (int part : layout.made()) sum += worth[part];
        return sum;
    }
}
