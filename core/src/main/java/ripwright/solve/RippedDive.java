package ripwright.solve;

import java.util.List;
import java.util.SplittableRandom;
import java.util.function.BooleanSupplier;
import java.util.stream.IntStream;
import ripwright.bound.StripProgram;
import ripwright.pattern.RippedStock;

/**
 * Strips of ripped stock made a few at a time: those a linear program is surest of are cut, what is left is priced again,
 * and so on. Given up as soon as what is cut and the floor under the rest come to no less than the best answer.
 *
 * @see "C. Joncour et al., Column generation based primal heuristics, Electronic Notes in Discrete Mathematics 36 (2010)
 *     695-702; from memory"
 */
final class RippedDive {
    private static final double SURE = 0.95; // a weight as good as a whole
    private static final double NOISE = 0.3; // against weights from 0 to 1

    private final RippedStock stock;
    private final BestFit bestFit;
    private final long step; // millionths that every cost is a multiple of
    private final BooleanSupplier stop;

    RippedDive(RippedStock stock, BestFit bestFit, long step, BooleanSupplier stop) {
        this.stock = stock;
        this.bestFit = bestFit;
        this.step = step;
        this.stop = stop;
    }

    /** The best of {@code best} and what comes of one dive, where no answer costs less than {@code least}. */
    StripsCut better(StripsCut best, StripProgram whole, long least, SplittableRandom random) {
        StripsCut cut = new StripsCut(stock);
        StripsCut better = best;
        StripProgram program = whole;
        while (!stop.getAsBoolean()) {
            long most = better.complete() ? better.cost() - cut.cost() : Long.MAX_VALUE;
            if (program.floor(step) >= most || !keep(program.strips(), cut, random)) break;
            StripsCut filled = bestFit.completed(cut);
            if (filled.betterThan(better)) better = filled;
            if (cut.complete() || (better.complete() && better.cost() <= least)) break;
            program = program.rest(cut.left(), cut.free());
            program.solve(step, better.complete() ? better.cost() - cut.cost() : Long.MAX_VALUE, stop);
        }
        return better;
    }

    /** Cuts whole copies of strips, and what is as good as whole; where there is none, the surest. Whether any. */
    private static boolean keep(List<StripProgram.Weighted> strips, StripsCut cut, SplittableRandom random) {
        boolean any = false;
        for (StripProgram.Weighted one : strips) {
            int whole = (int) Math.floor(one.weight() + 1 - SURE);
            for (int n = 0; n < whole && cut.cut(one.strip()); n++) any = true;
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
