package ripwright.internal.onedimensional;

import java.util.List;
import java.util.SplittableRandom;
import java.util.function.BooleanSupplier;
import org.jspecify.annotations.Nullable;
import ripwright.internal.model.JobNumbers;
import ripwright.internal.model.PricedLayout;

/**
 * Plans what a job cuts from clear ripped stock, where only lengths matter: best fit, then value correction, then dives, until
 * the stock costs no more than the floor under it. Offcuts and labor it leaves to the search, as it does boards with
 * defects and parts that belong together.
 */
public final class RippedStockHeuristic {
    private static final long STEPS_OF_CORRECTION = 10_000_000; // of knapsacks, after the first pass
    private static final int PASSES_OF_CORRECTION = 4;
    private static final long MOST_STEPS_OF_A_PASS = 2_000_000_000;
    private static final int MOST_KINDS_FOR_DIVES = 600;
    private static final int DIVES = 24;

    private final JobNumbers numbers;
    private final List<RippedStock> stocks;
    private final BooleanSupplier stop;

    public RippedStockHeuristic(JobNumbers numbers, BooleanSupplier stop) {
        this.numbers = numbers;
        this.stop = stop;
        stocks = RippedStock.all(numbers);
    }

    /** Whether there is any. */
    public boolean any() {
        return !stocks.isEmpty();
    }

    /** Whether there is nothing else: no other board gives any part. */
    public boolean all() {
        int types = 0;
        for (RippedStock stock : stocks)
            for (int k = 0; k < stock.parts() && stock.alone(); k++) types += stock.partsOf(k).length;
        return types == numbers.parts();
    }

    /** Layouts for ripped boards; null where a board stays whole or is not for us to cut. */
    @Nullable
    public PricedLayout[] layouts(SplittableRandom random) {
        @Nullable PricedLayout[] layouts = new @Nullable PricedLayout[numbers.boards()];
        for (RippedStock stock : stocks)
            for (PricedLayout layout :
                    stock.layouts(new OneStock(stock, random.split()).best().strips()))
                layouts[layout.layout().board()] = layout;
        return layouts;
    }

    private final class OneStock {
        private final RippedStock stock;
        private final SplittableRandom random;
        private final BestFit bestFit;
        private final long step;
        private PartialCutting best;

        OneStock(RippedStock stock, SplittableRandom random) {
            this.stock = stock;
            this.random = random;
            bestFit = new BestFit(stock);
            step = step();
            best = bestFit.completed(new PartialCutting(stock));
        }

        private long step() {
            long step = 0;
            for (int s = 0; s < stock.boards(); s++) step = gcd(step, stock.cost(s));
            return Math.max(1, step);
        }

        private static long gcd(long a, long b) {
            return b == 0 ? a : gcd(b, a % b);
        }

        PartialCutting best() {
            long least = byLength();
            correct(least);
            if (done(least) || stock.parts() > MOST_KINDS_FOR_DIVES) return best;
            StripMaster program = new StripMaster(stock);
            for (RippedStock.Strip strip : best.strips()) program.offer(strip);
            program.solve(step, most(), stop);
            least = Math.max(least, program.lowerBound(step));
            StripDive dive = new StripDive(stock, bestFit, step, stop);
            for (int i = 0; i < DIVES && !done(least); i++)
                best = dive.better(best, program, least, i > 0, random.split());
            return best;
        }

        private boolean done(long least) {
            return stop.getAsBoolean() || (best.complete() && best.cost() <= least);
        }

        private long most() {
            return best.complete() ? best.cost() : Long.MAX_VALUE;
        }

        /** What the bill costs at least, if every tick cost what it does on the board where it is cheapest. */
        private long byLength() {
            double sum = 0;
            int[] wanted = stock.wanted();
            for (int k = 0; k < wanted.length; k++) sum += wanted[k] * stock.leastCost(k);
            return (long) Math.ceil(sum / step * (1 - 1e-9)) * step;
        }

        private void correct(long least) {
            if (stepsOfPass(best) > MOST_STEPS_OF_A_PASS) return;
            SequentialValueCorrection correction = new SequentialValueCorrection(stock, random.split(), stop);
            long steps = 0;
            for (int i = 0; i < PASSES_OF_CORRECTION && steps < STEPS_OF_CORRECTION && !done(least); i++) {
                PartialCutting cut = correction.pass(new PartialCutting(stock), most());
                if (cut.betterThan(best)) best = cut;
                steps += stepsOfPass(cut);
            }
        }

        private long stepsOfPass(PartialCutting cut) {
            int longest = 0;
            for (int s = 0; s < stock.boards(); s++) longest = Math.max(longest, stock.room(s));
            return (1L + cut.strips().size()) * (1 + stock.parts()) * (1 + longest) / 2;
        }
    }
}
