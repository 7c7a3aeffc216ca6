package ripwright.solve;

import ripwright.pattern.JobNumbers;
import ripwright.pattern.PricedLayout;

/**
 * What it counts to make a blank while the search runs. Blanks not made have to trade against cost: were they forbidden
 * outright the search would freeze, so each is worth somewhat more than the wood it takes.
 */
final class Tariff {
    private final long[] worth; // worth[p]: of one blank of part p, in millionths

    /** Every blank is worth {@code factor} times the price of its wood. */
    static Tariff byPrice(JobNumbers numbers, double factor) {
        long[] worth = new long[numbers.parts()];
        for (int p = 0; p < worth.length; p++) worth[p] = Math.round(factor * numbers.woodPrice(p));
        return new Tariff(worth);
    }

    /** Blanks are worth {@code factor} times the price of their wood all together, each by its finished board feet. */
    static Tariff byFeet(JobNumbers numbers, double factor) {
        double price = 0;
        double feet = 0;
        int[] wanted = numbers.wanted();
        for (int p = 0; p < wanted.length; p++) {
            price += wanted[p] * numbers.woodPrice(p);
            feet += (double) wanted[p] * numbers.feet(p);
        }
        long[] worth = new long[wanted.length];
        for (int p = 0; p < worth.length; p++) worth[p] = Math.round(factor * price / feet * numbers.feet(p));
        return new Tariff(worth);
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
