package ripwright.internal.search;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.SplittableRandom;
import java.util.function.BooleanSupplier;
import org.jspecify.annotations.Nullable;
import ripwright.internal.bound.LowerBound;
import ripwright.internal.bound.ResidualMaster;
import ripwright.internal.bound.WorkBudget;
import ripwright.internal.model.JobNumbers;
import ripwright.internal.model.PricedLayout;

/**
 * An answer made board by board: the surest of the layouts a floor rests on are kept, the parts that are left are priced
 * again on the boards that are left, and so on; the last few parts go to the proof, which cuts them as cheaply as can be.
 *
 * @see "C. Joncour et al., Column generation based primal heuristics, Electronic Notes in Discrete Mathematics 36 (2010)
 *     695-702; from memory"
 */
public final class DivingHeuristic {
    private static final int MOST_PARTS_FOR_PROOF = 24;
    private static final int MOST_PARTS_WITH_MONEY = 10; // the same, where offcuts and labor count
    private static final int QUESTIONS = 400; // the proof may ask whether to end; then the dive goes on
    private static final int QUESTIONS_WITH_MONEY = 12;
    private static final double SURE = 0.95; // a weight as good as a whole
    private static final double SHARE_AT_ONCE = 0.08; // of the boards still to be cut
    private static final double DEAREST_END = 1.5; // of the last few parts, against the program's cost for them
    private static final int MOST_PARTS_TO_LOOK_AHEAD = 250;
    private static final int LOOKED_AHEAD = 4;
    private static final int ROUNDS = 10;
    private static final int ROUNDS_AHEAD = 3;
    private static final double NOISE = 0.25; // against weights from 0 to 1

    private final JobNumbers numbers;
    private final GreedyHeuristic greedy;
    private final LowerBound lowerBound;
    private final BooleanSupplier stop;

    DivingHeuristic(JobNumbers numbers, GreedyHeuristic greedy, LowerBound lowerBound, BooleanSupplier stop) {
        this.numbers = numbers;
        this.greedy = greedy;
        this.lowerBound = lowerBound;
        this.stop = stop;
    }

    /** Down to the last part; what could not be priced is cut greedily. */
    Incumbent answer(SplittableRandom random) {
        @Nullable PricedLayout[] kept = new @Nullable PricedLayout[numbers.boards()];
        ResidualMaster residual = new ResidualMaster(lowerBound);
        int last = numbers.boardsAlone() ? MOST_PARTS_FOR_PROOF : MOST_PARTS_WITH_MONEY;
        boolean looksAhead = Arrays.stream(residual.missing()).sum() <= MOST_PARTS_TO_LOOK_AHEAD;
        while (!stop.getAsBoolean()) {
            int missing = Arrays.stream(residual.missing()).sum();
            if (missing == 0) break;
            ResidualMaster.Solution here = residual.solve(ROUNDS, stop);
            if (missing <= last && finish(residual.missing(), here.cost(), kept)) break;
            List<Ranked> ranked = ranked(here, residual.missing(), random);
            if (ranked.isEmpty()) break;
            if (looksAhead && ranked.get(0).weight < SURE) {
                residual = ahead(residual, ranked, kept);
            } else {
                keep(residual, ranked, kept);
            }
        }
        return greedy.completed(kept, random);
    }

    private record Ranked(PricedLayout layout, double weight, double rank) {}

    private static List<Ranked> ranked(ResidualMaster.Solution here, int[] missing, SplittableRandom random) {
        List<Ranked> ranked = new ArrayList<>();
        for (LowerBound.WeightedLayout one : here.layouts()) {
            double noise = NOISE * random.nextDouble();
            if (!RoundingHeuristic.taken(one.layout(), missing.clone())) continue;
            ranked.add(new Ranked(one.layout(), one.weight(), one.weight() < SURE ? one.weight() + noise : 2));
        }
        ranked.sort(Comparator.comparingDouble(Ranked::rank).reversed());
        return ranked;
    }

    /** Keeps that one of the first few layouts with which the rest comes cheapest. */
    private ResidualMaster ahead(ResidualMaster residual, List<Ranked> ranked, @Nullable PricedLayout[] kept) {
        ResidualMaster best = residual;
        PricedLayout layout = null;
        double least = Double.MAX_VALUE;
        for (Ranked one : ranked.subList(0, Math.min(LOOKED_AHEAD, ranked.size()))) {
            ResidualMaster next = residual.copy();
            next.keep(one.layout);
            double cost = one.layout.net() + next.solve(ROUNDS_AHEAD, stop).cost();
            if (cost >= least) continue;
            least = cost;
            best = next;
            layout = one.layout;
        }
        if (layout != null) kept[layout.layout().board()] = layout;
        return best;
    }

    /** Keeps every sure layout, or else a share of the surest ones whatever they weigh. */
    private static void keep(ResidualMaster residual, List<Ranked> ranked, @Nullable PricedLayout[] kept) {
        double boards = ranked.stream().mapToDouble(Ranked::weight).sum();
        int unsure = Math.max(1, (int) (boards * SHARE_AT_ONCE));
        int[] missing = residual.missing();
        int count = 0;
        for (Ranked one : ranked) {
            if (count >= unsure && one.weight < SURE) continue;
            int board = one.layout.layout().board();
            if (kept[board] != null || !RoundingHeuristic.taken(one.layout, missing)) continue;
            kept[board] = one.layout;
            residual.keep(one.layout);
            count++;
        }
    }

    /** Whether the proof found how to cut what is left. */
    private boolean finish(int[] missing, double cost, @Nullable PricedLayout[] kept) {
        List<Integer> boards = new ArrayList<>();
        for (int b = 0; b < kept.length; b++) if (kept[b] == null) boards.add(b);
        long most = (long) (cost * DEAREST_END) + numbers.settingCost() * missing.length;
        List<PricedLayout> found = Subproblem.of(numbers, boards, missing)
                .cheapest(most, new WorkBudget(stop, numbers.boardsAlone() ? QUESTIONS : QUESTIONS_WITH_MONEY));
        for (PricedLayout layout : found) kept[layout.layout().board()] = layout;
        return !found.isEmpty();
    }
}
