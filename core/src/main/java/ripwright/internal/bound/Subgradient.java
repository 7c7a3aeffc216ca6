package ripwright.internal.bound;

import java.util.function.BooleanSupplier;
import java.util.function.LongConsumer;
import ripwright.internal.pricing.PricingProblem;
import ripwright.internal.pricing.PricingStopped;

/**
 * Raises a floor without a linear program, for jobs that would make it too large: blanks of which too few are made at the
 * prices asked become dearer, those of which too many are become cheaper, by steps that aim a little above the best floor
 * so far. It does not end at the highest floor, but near it, and its steps cost no more on large jobs than asking the
 * boards does.
 *
 * @see "M. Held, P. Wolfe, H. P. Crowder, Validation of subgradient optimization, Mathematical Programming 6 (1974) 62-88"
 * @see "P. M. Camerini, L. Fratta, F. Maffioli, On improving relaxation methods by modified gradient techniques,
 *     Mathematical Programming Study 3 (1975) 26-34; from memory"
 */
public final class Subgradient {
    private static final double FIRST_AIM = 0.04; // above the best floor, as a share of it
    private static final double LAST_AIM = 1e-4;
    private static final int BARREN = 6; // steps that bring nothing before it aims lower
    private static final double MOMENTUM = 0.7; // of the step before

    private final Demand demand;
    private final PricingProblem pricing;
    private final double[] scale; // of a price; steps go by it
    private final long most; // what the whole stack comes to, twice: the bill cannot be made when a floor is above that
    private LagrangianBound best;

    Subgradient(Demand demand, PricingProblem pricing, LagrangianBound start) {
        this.demand = demand;
        this.pricing = pricing;
        best = start;
        long all = demand.due + 1;
        for (int b = 0; b < demand.cost.length; b++) all += 2 * demand.cost[b] * demand.copies[b];
        most = all;
        scale = new double[demand.wanted.length];
        for (int k = 0; k < scale.length; k++) scale[k] = Math.max(1, start.prices()[k]);
    }

    /** The best of so many steps, or of fewer when {@code stop} says so. */
    LagrangianBound run(int steps, BooleanSupplier stop, LongConsumer raised) {
        try {
            raise(steps, stop, raised);
        } catch (PricingStopped e) {
            // The best so far stands.
        }
        return best;
    }

    private void raise(int steps, BooleanSupplier stop, LongConsumer raised) {
        double[] prices = new double[scale.length];
        double[] step = new double[scale.length];
        begin(prices);
        double aim = FIRST_AIM;
        int barren = 0;
        LagrangianBound now = LagrangianBound.of(demand, best.prices().clone(), pricing);
        for (int i = 0; i < steps && aim > LAST_AIM && best.money() < most && !stop.getAsBoolean(); i++) {
            turn(step);
            move(prices, step, best.money() * (1 + aim) - now.money());
            now = LagrangianBound.of(demand, whole(prices), pricing);
            boolean better = now.money() > best.money();
            barren = better ? 0 : barren + 1;
            if (better) {
                best = now;
                raised.accept(best.money());
            } else if (barren == BARREN) {
                aim /= 2;
                barren = 0;
                begin(prices);
                java.util.Arrays.fill(step, 0);
                now = LagrangianBound.of(demand, best.prices().clone(), pricing);
            }
        }
    }

    private void begin(double[] prices) {
        for (int k = 0; k < prices.length; k++) prices[k] = best.prices()[k];
    }

    private static long[] whole(double[] prices) {
        long[] whole = new long[prices.length];
        for (int k = 0; k < whole.length; k++) whole[k] = Math.max(0, Math.round(prices[k]));
        return whole;
    }

    /** Turns the step towards what is missing, or away from what is made too often, at the prices just asked. */
    private void turn(double[] step) {
        double[] missing = new double[step.length];
        for (int k = 0; k < missing.length; k++) missing[k] = demand.wanted[k];
        for (int b = 0; b < demand.copies.length; b++) {
            if (!pricing.cuts(b) || pricing.worth(b) <= demand.cost[b]) continue;
            int[] made = pricing.pattern(b).made(step.length);
            for (int k = 0; k < made.length; k++) missing[k] -= (double) made[k] * demand.copies[b];
        }
        for (int k = 0; k < step.length; k++) step[k] = missing[k] * scale[k] + MOMENTUM * step[k];
    }

    /** Moves prices along the step as far as would raise the floor by {@code gain} if it went on rising as it does here. */
    private void move(double[] prices, double[] step, double gain) {
        double square = 0;
        for (double each : step) square += each * each;
        if (square == 0) return;
        for (int k = 0; k < prices.length; k++) prices[k] = Math.max(0, prices[k] + gain / square * step[k] * scale[k]);
    }
}
