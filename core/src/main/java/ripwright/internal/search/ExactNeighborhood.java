package ripwright.internal.search;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.SplittableRandom;
import java.util.function.BooleanSupplier;
import org.jspecify.annotations.Nullable;
import ripwright.internal.bound.LowerBound;
import ripwright.internal.bound.WorkBudget;
import ripwright.internal.model.JobNumbers;
import ripwright.internal.model.PricedLayout;

/**
 * Betters an answer that makes the whole bill a few boards at a time: their blanks, those boards and some that are whole are
 * a small job, and the proof cuts it as cheaply as can be, or finds that it is. Boards that lose much at the floor's prices
 * come first.
 */
public final class ExactNeighborhood {
    private static final int FEWEST_PARTS = 10;
    private static final int MOST_PARTS = 30;
    private static final int MOST_PARTS_WITH_MONEY = 12; // where offcuts and labor count, which is harder to prove
    private static final int MOST_WHOLE = 14;
    private static final int QUESTIONS = 400; // a proof may ask whether to end; most need fewer
    private static final int QUESTIONS_WITH_MONEY = 12;

    private final JobNumbers numbers;
    private final double[] prices; // of a blank of each part, in millionths
    private final BooleanSupplier stop;

    ExactNeighborhood(JobNumbers numbers, LowerBound lowerBound, BooleanSupplier stop) {
        this.numbers = numbers;
        this.stop = stop;
        prices = lowerBound.prices();
    }

    /** The best answer after so many tries. */
    Incumbent better(Incumbent from, int tries, SplittableRandom random) {
        Incumbent best = from;
        for (int i = 0; i < tries && !stop.getAsBoolean(); i++) best = tried(best, random);
        return best;
    }

    private Incumbent tried(Incumbent from, SplittableRandom random) {
        List<Integer> cut = lossyFirst(from.layouts(), random);
        boolean money = !numbers.boardsAlone();
        int most = random.nextInt(FEWEST_PARTS, (money ? MOST_PARTS_WITH_MONEY : MOST_PARTS) + 1);
        int[] missing = new int[numbers.wanted().length];
        @Nullable PricedLayout[] taken = new @Nullable PricedLayout[from.layouts().length];
        @Nullable PricedLayout[] after = from.layouts().clone();
        List<Integer> boards = new ArrayList<>();
        int parts = 0;
        for (int b : cut) {
            PricedLayout layout = after[b];
            if (layout == null || parts + layout.made().length > most) continue;
            parts += layout.made().length;
            for (int part : layout.made()) missing[part]++;
            taken[b] = layout;
            after[b] = null;
            boards.add(b);
        }
        if (boards.isEmpty()) return from;
        boards.addAll(someWhole(from.layouts(), random));
        Collections.sort(boards);
        long cost = Incumbent.of(numbers, taken).net();
        List<PricedLayout> found = Subproblem.of(numbers, boards, missing)
                .cheapest(cost, new WorkBudget(stop, money ? QUESTIONS_WITH_MONEY : QUESTIONS));
        if (found.isEmpty()) return from;
        for (PricedLayout layout : found) after[layout.layout().board()] = layout;
        Incumbent other = Incumbent.of(numbers, after);
        return other.betterThan(from) ? other : from;
    }

    /** The boards that are cut, those first that bring in least beyond their cost, more or less. */
    private List<Integer> lossyFirst(@Nullable PricedLayout[] layouts, SplittableRandom random) {
        List<Integer> cut = new ArrayList<>();
        double[] rank = new double[layouts.length];
        for (int b = 0; b < layouts.length; b++) {
            PricedLayout layout = layouts[b];
            if (layout == null) continue;
            cut.add(b);
            double loss = layout.net();
            for (int part : layout.made()) loss -= prices[part];
            rank[b] = Math.max(loss, 0.001 * layout.cost()) * -Math.log(1 - random.nextDouble());
        }
        cut.sort((a, b) -> Double.compare(rank[b], rank[a]));
        if (random.nextBoolean() && cut.size() > 1)
            Collections.shuffle(cut.subList(1, cut.size()), new Random(random.nextLong()));
        return cut;
    }

    private static List<Integer> someWhole(@Nullable PricedLayout[] layouts, SplittableRandom random) {
        List<Integer> whole = new ArrayList<>();
        for (int b = 0; b < layouts.length; b++) if (layouts[b] == null) whole.add(b);
        Collections.shuffle(whole, new Random(random.nextLong()));
        return whole.subList(0, Math.min(MOST_WHOLE, whole.size()));
    }
}
