package ripwright.internal.search;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import org.jspecify.annotations.Nullable;
import ripwright.internal.bound.LowerBound;
import ripwright.internal.model.JobNumbers;
import ripwright.internal.model.PricedLayout;
import ripwright.stock.Board;

/**
 * Answers made of the layouts a floor rests on: those of the greatest weight first, more or less, as long as their boards
 * are free and their blanks are missing; the rest is cut greedily.
 */
public final class RoundingHeuristic {
    private static final int ANSWERS = 8;
    private static final double NOISE = 0.4; // against weights from 0 to 1

    private final JobNumbers numbers;
    private final GreedyHeuristic greedy;
    private final LowerBound lowerBound;
    private final List<List<Integer>> alike =
            new ArrayList<>(); // alike.get(b): boards that differ from b in name alone

    RoundingHeuristic(JobNumbers numbers, GreedyHeuristic greedy, LowerBound lowerBound) {
        this.numbers = numbers;
        this.greedy = greedy;
        this.lowerBound = lowerBound;
        Map<Board, List<Integer>> types = new HashMap<>();
        List<Board> boards = numbers.job().boards();
        for (int b = 0; b < boards.size(); b++) {
            List<Integer> type =
                    types.computeIfAbsent(boards.get(b).toBuilder().id("any").build(), board -> new ArrayList<>());
            type.add(b);
            alike.add(type);
        }
    }

    /** The best of a few. */
    Incumbent best(SplittableRandom random) {
        Incumbent best = answer(random);
        for (int i = 1; i < ANSWERS; i++) {
            Incumbent other = answer(random);
            if (other.betterThan(best)) best = other;
        }
        return best;
    }

    private Incumbent answer(SplittableRandom random) {
        record Ranked(PricedLayout layout, double rank) {}
        List<Ranked> ranked = new ArrayList<>();
        for (LowerBound.WeightedLayout one : lowerBound.layouts())
            ranked.add(new Ranked(one.layout(), one.weight() + NOISE * random.nextDouble()));
        ranked.sort(Comparator.comparingDouble(Ranked::rank).reversed());
        int[] missing = numbers.wanted();
        @Nullable PricedLayout[] layouts = new @Nullable PricedLayout[numbers.boards()];
        for (Ranked one : ranked) {
            int copies = (int) Math.max(1, Math.floor(one.rank()));
            for (int board : alike.get(one.layout().layout().board())) {
                if (copies == 0) break;
                if (layouts[board] != null) continue;
                if (!taken(one.layout(), missing)) break;
                layouts[board] = one.layout().on(board);
                copies--;
            }
        }
        return greedy.completed(layouts, random);
    }

    /** Takes the layout's blanks from those missing; leaves all as it is when some are not. */
    static boolean taken(PricedLayout layout, int[] missing) {
        int taken = 0;
        while (taken < layout.made().length && missing[layout.made()[taken]] > 0) missing[layout.made()[taken++]]--;
        if (taken == layout.made().length) return true;
        for (int i = 0; i < taken; i++) missing[layout.made()[i]]++;
        return false;
    }
}
