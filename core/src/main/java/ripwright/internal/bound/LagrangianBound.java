package ripwright.internal.bound;

import java.math.BigInteger;
import java.util.Arrays;
import org.apache.commons.numbers.fraction.BigFraction;
import ripwright.internal.pricing.PricingProblem;

/**
 * Prices, and the floor that follows from them by whole-number sums alone. Give every blank a price. A plan makes its
 * blanks, which are worth their prices together; no board's layout is worth more than the pricing problem says, so a board that is
 * cut brings in at most that and costs what it costs. So no plan costs less than the prices of all it makes, less what
 * boards bring in beyond their cost. Any prices prove a floor; good ones prove a high one.
 *
 * <p>Where only so much finished wood is to be made, the least that its prices can come to is reckoned as if blanks could
 * be made in part: what is dearer for its wood than {@code perFeet} is left out.
 *
 * @see "A. Neumaier, O. Shcherbina, Safe bounds in linear and mixed-integer linear programming, Mathematical Programming
 *     99 (2004) 283-296"
 */
@SuppressWarnings("ArrayRecordComponent") // never changed once made, never compared
public record LagrangianBound(Demand demand, long[] prices, long[] worths, BigFraction perFeet, long money) {
    /** Reckons the floor of those prices. */
    static LagrangianBound of(Demand demand, long[] prices, PricingProblem pricing) {
        pricing.price(prices);
        long[] worths = new long[demand.copies.length];
        for (int b = 0; b < worths.length; b++) worths[b] = pricing.worth(b);
        return of(demand, prices, worths);
    }

    /** Reckons the floor of those prices, when boards are worth that much at them. */
    static LagrangianBound of(Demand demand, long[] prices, long[] worths) {
        BigFraction perFeet = demand.least.isPresent() ? perFeet(demand, prices) : BigFraction.ZERO;
        BigInteger sum = demand.least.isPresent() ? leastMade(demand, prices, perFeet) : allMade(demand, prices);
        for (int b = 0; b < worths.length; b++) {
            long gain = worths[b] - demand.cost[b];
            if (gain > 0) sum = sum.subtract(times(gain, demand.copies[b]));
        }
        long money = sum.add(BigInteger.valueOf(demand.due)).longValueExact();
        return new LagrangianBound(demand, prices, worths, perFeet, money);
    }

    private static BigInteger times(long a, long b) {
        return BigInteger.valueOf(a).multiply(BigInteger.valueOf(b));
    }

    private static BigInteger allMade(Demand demand, long[] prices) {
        BigInteger sum = BigInteger.ZERO;
        for (int k = 0; k < prices.length; k++) sum = sum.add(times(prices[k], demand.wanted[k]));
        return sum;
    }

    /** For any {@code perFeet}, the prices of what makes so much wood come to this much at least. */
    private static BigInteger leastMade(Demand demand, long[] prices, BigFraction perFeet) {
        BigFraction sum = perFeet.multiply(BigInteger.valueOf(demand.least.orElseThrow()));
        for (int k = 0; k < prices.length; k++) {
            BigFraction over = BigFraction.of(BigInteger.valueOf(prices[k] + demand.share[k]))
                    .subtract(perFeet.multiply(BigInteger.valueOf(demand.feet[k])));
            if (over.signum() < 0) sum = sum.add(over.multiply(demand.wanted[k]));
        }
        return sum.bigDecimalValue(0, java.math.RoundingMode.FLOOR).toBigIntegerExact();
    }

    /** The price for its wood of the last blank that is made when the cheapest for their wood are made first. */
    private static BigFraction perFeet(Demand demand, long[] prices) {
        Integer[] order = new Integer[prices.length];
        Arrays.setAll(order, k -> k);
        double[] ratio = new double[prices.length];
        for (int k = 0; k < ratio.length; k++) ratio[k] = (double) (prices[k] + demand.share[k]) / demand.feet[k];
        Arrays.sort(order, (a, b) -> Double.compare(ratio[a], ratio[b]));
        long left = demand.least.orElseThrow();
        BigFraction perFeet = BigFraction.ZERO;
        for (int k : order) {
            if (left <= 0) break;
            perFeet =
                    BigFraction.of(BigInteger.valueOf(prices[k] + demand.share[k]), BigInteger.valueOf(demand.feet[k]));
            left -= demand.feet[k] * demand.wanted[k];
        }
        return perFeet;
    }
}
