package ripwright.internal.search;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.function.BooleanSupplier;
import org.jspecify.annotations.Nullable;
import ripwright.internal.model.JobNumbers;
import ripwright.internal.model.PricedLayout;

/** First answers: board after board, always the one of a few that gives the most wanted wood for its price. */
public final class GreedyHeuristic {
    private static final int NONE = -1; // no board is held back
    private static final int ANSWERS = 6;
    private static final int BOARDS_COMPARED = 6;

    private final RecreateTables tables;
    private final JobNumbers numbers;
    private final BooleanSupplier stop;
    private final BlankRewards rewards;

    GreedyHeuristic(RecreateTables tables, BooleanSupplier stop) {
        this.tables = tables;
        this.stop = stop;
        numbers = tables.numbers();
        rewards = BlankRewards.byPrice(numbers, 1);
    }

    /** The best of a few; the first is finished even when told to stop. */
    Incumbent best(SplittableRandom random) {
        Incumbent best = one(random.split());
        for (int i = 1; i < ANSWERS && !stop.getAsBoolean(); i++) {
            Incumbent other = one(random.split());
            if (other.betterThan(best)) best = other;
        }
        return best;
    }

    /** A single one. */
    Incumbent one(SplittableRandom random) {
        return holdingBack(NONE, random);
    }

    /** A single one that leaves that board whole. */
    Incumbent holdingBack(int board, SplittableRandom random) {
        return answer(new @Nullable PricedLayout[numbers.boards()], numbers.wanted(), board, random);
    }

    /** Makes what those layouts leave missing, as far as the boards that are whole allow. */
    Incumbent completed(@Nullable PricedLayout[] layouts, SplittableRandom random) {
        int[] missing = numbers.wanted();
        for (PricedLayout layout : layouts) if (layout != null) for (int part : layout.made()) missing[part]--;
        return answer(layouts.clone(), missing, NONE, random);
    }

    private Incumbent answer(@Nullable PricedLayout[] layouts, int[] left, int heldBack, SplittableRandom random) {
        List<Integer> whole = new ArrayList<>();
        for (int b = 0; b < layouts.length; b++) if (layouts[b] == null && b != heldBack) whole.add(b);
        while (!whole.isEmpty() && some(left)) {
            PricedLayout best = null;
            double bestWorth = 0;
            List<Integer> useless = new ArrayList<>();
            int compared = 0;
            for (int start = random.nextInt(whole.size()), i = 0; i < whole.size() && compared < BOARDS_COMPARED; i++) {
                int board = whole.get((start + i) % whole.size());
                PricedLayout cut = tables.recut().cut(List.of(board), left.clone(), random)[0];
                if (cut == null) {
                    useless.add(board);
                    continue;
                }
                compared++;
                double worth = rewards.of(cut) / Math.max(1.0, (double) cut.net());
                if (best != null && worth <= bestWorth) continue;
                best = cut;
                bestWorth = worth;
            }
            whole.removeAll(useless);
            if (best == null) break;
            layouts[best.layout().board()] = best;
            whole.remove((Integer) best.layout().board());
            for (int part : best.made()) left[part]--;
        }
        return Incumbent.of(numbers, layouts);
    }

    private static boolean some(int[] left) {
        for (int count : left) if (count > 0) return true;
        return false;
    }
}
