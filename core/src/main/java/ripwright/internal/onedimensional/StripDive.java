package ripwright.internal.onedimensional;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import java.util.function.BooleanSupplier;
import java.util.stream.IntStream;

/**
 * Strips of ripped stock made a few at a time: those a linear program is surest of are cut, what is left is priced again,
 * and so on. Given up as soon as what is cut and the floor under the rest come to no less than the best answer.
 *
 * @see "C. Joncour et al., Column generation based primal heuristics, Electronic Notes in Discrete Mathematics 36 (2010)
 *     695-702; from memory"
 */
public final class StripDive {
    private static final double SURE = 0.95; // a weight as good as a whole
    private static final double KEPT = 0.8; // of them, where others are to be tried
    private static final double NOISE = 0.3; // against weights from 0 to 1

    private final RippedStock stock;
    private final BestFit bestFit;
    private final long step; // millionths that every cost is a multiple of
    private final BooleanSupplier stop;

    StripDive(RippedStock stock, BestFit bestFit, long step, BooleanSupplier stop) {
        this.stock = stock;
        this.bestFit = bestFit;
        this.step = step;
        this.stop = stop;
    }

    /** What is cut, and the program over the rest. */
    private record Level(PartialCutting cut, StripMaster program) {}

    /**
     * The best of {@code best} and what comes of one dive, where no answer costs less than {@code least}. A dive that is given
     * up goes on one level higher, then two, four, ... as long as there are levels.
     *
     * @param others whether the surest strips led nowhere before, so that not all of them are cut at once
     */
    PartialCutting better(PartialCutting best, StripMaster whole, long least, boolean others, SplittableRandom random) {
        PartialCutting better = best;
        List<Level> levels = new ArrayList<>(List.of(new Level(new PartialCutting(stock), whole)));
        for (int back = 1; !levels.isEmpty() && !done(better, least); back *= 2) {
            better = down(levels, better, least, others || back > 1, random);
            for (int i = 0; i < back && !levels.isEmpty(); i++) levels.remove(levels.size() - 1);
        }
        return better;
    }

    private boolean done(PartialCutting better, long least) {
        return stop.getAsBoolean() || (better.complete() && better.cost() <= least);
    }

    private PartialCutting down(
            List<Level> levels, PartialCutting best, long least, boolean others, SplittableRandom random) {
        PartialCutting better = best;
        int tried = Integer.MAX_VALUE; // blanks left when they were last filled by best fit
        while (!done(better, least)) {
            Level level = levels.get(levels.size() - 1);
            PartialCutting cut = level.cut.copy();
            if (level.program.lowerBound(step) >= spare(better, cut)
                    || !keep(level.program.strips(), cut, others, random)) break;
            int left = Arrays.stream(cut.left()).sum();
            if (left <= 0.8 * tried) {
                PartialCutting filled = bestFit.completed(cut);
                if (filled.betterThan(better)) better = filled;
                tried = left;
            }
            if (left == 0) break;
            StripMaster rest = level.program.rest(cut.left(), cut.free());
            rest.solve(step, spare(better, cut), stop);
            levels.add(new Level(cut, rest));
        }
        return better;
    }

    /** What the rest has to cost less than. */
    private static long spare(PartialCutting best, PartialCutting cut) {
        return best.complete() ? best.cost() - cut.cost() : Long.MAX_VALUE;
    }

    /**
     * Cuts whole copies of strips, and what is as good as whole; not all of them where others are to be tried. Where there is
     * none, cuts the surest. Whether any.
     */
    private static boolean keep(
            List<StripMaster.Weighted> strips, PartialCutting cut, boolean others, SplittableRandom random) {
        boolean any = false;
        for (StripMaster.Weighted one : strips) {
            int whole = (int) Math.floor(one.weight() + 1 - SURE);
            for (int n = 0; n < whole; n++) if (!others || random.nextDouble() < KEPT) any |= cut.cut(one.strip());
        }
        if (any) return true;
        double[] rank = strips.stream()
                .mapToDouble(one -> one.weight() + NOISE * random.nextDouble())
                .toArray();
        return IntStream.range(0, rank.length)
                .boxed()
                .sorted((a, b) -> Double.compare(rank[b], rank[a]))
                .anyMatch(i -> cut.cut(strips.get(i).strip()));
    }
}
