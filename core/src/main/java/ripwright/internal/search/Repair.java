package ripwright.internal.search;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import ripwright.internal.model.JobNumbers;
import ripwright.internal.model.PricedLayout;
import ripwright.internal.model.Restriction;
import ripwright.internal.model.TestWoodCost;
import ripwright.internal.recreate.RuinAndRecreate;
import ripwright.measure.Length;

/**
 * Mends an answer that leaves some rip setting without test wood or some part unmade, so that what leaves a search never makes
 * less than a greedy answer does once its tests are provided for. It asks no clock: it takes a bounded number of recuts, and
 * none at all where nothing is amiss. Ripped stock, which needs no test, is never touched to provide for one.
 *
 * <p>Test wood is provided in two ways, and the better outcome is taken: a board that is cut is cut again, shorter by the test
 * blanks that are missing; or, where that does not help, no strip is ripped to the width that cannot be proved. Then the parts
 * that are missing are cut from boards that stayed whole, or from one that is cut, again.
 */
public final class Repair {
    private static final int MOST_BOARDS_SHORTENED = 24; // those that waste most
    private static final int MOST_BOARDS_RECUT = 250;
    private static final int TRIES = 3; // of one board, as a recut has its chances

    private final JobNumbers numbers;
    private final Map<Integer, RuinAndRecreate> shortened = new HashMap<>(); // by test blanks

    private int recuts;

    Repair(JobNumbers numbers) {
        this.numbers = numbers;
    }

    /** That answer, or one that proves more of its settings, makes more, or costs less. */
    Incumbent repaired(Incumbent answer, SplittableRandom random) {
        if (answer.unproved() == 0) return filled(answer, random);
        Incumbent kept = filled(proved(answer, true, random), random);
        Incumbent barred = filled(proved(answer, false, random), random);
        return barred.betterThan(kept) ? barred : kept;
    }

    /** How many boards it has cut again so far. */
    int recuts() {
        return recuts;
    }

    /** Whether there is nothing for it to do. */
    boolean sound(Incumbent answer) {
        return answer.unproved() == 0
                && answer.blanks() == Arrays.stream(numbers.wanted()).sum();
    }

    /** Every rip setting proved; by cutting boards shorter where that helps and {@code shorter} says so. */
    private Incumbent proved(Incumbent answer, boolean shorter, SplittableRandom random) {
        Incumbent now = answer;
        Restriction barred = Restriction.NOTHING;
        while (now.unproved() > 0) {
            TestWoodCost.Missing missing =
                    numbers.proving().of(now.layouts()).first().orElseThrow();
            Incumbent other = shorter ? withShorterBoard(now, missing, random) : now;
            if (other.unproved() >= now.unproved()) {
                barred = barred.withWidth(new Length(missing.width()));
                other = without(now, barred, random);
            }
            now = other;
        }
        return now;
    }

    /** One board cut shorter, or not at all, so that less test wood is missing: the way that loses the least finished wood. */
    private Incumbent withShorterBoard(Incumbent now, TestWoodCost.Missing missing, SplittableRandom random) {
        Incumbent best = now;
        for (int board : wastefulFirst(now, missing)) {
            best = lesserLoss(best, replaced(now, board, null), now);
            for (int blanks : new int[] {missing.blanks(), 1}) {
                for (int i = 0; i < TRIES; i++)
                    best = lesserLoss(best, recut(now, board, shortened(blanks), random), now);
                if (blanks == 1) break;
            }
        }
        return best;
    }

    private static Incumbent lesserLoss(Incumbent best, Incumbent other, Incumbent than) {
        if (other.unproved() >= than.unproved()) return best;
        if (best.unproved() >= than.unproved() || other.feet() > best.feet()) return other;
        return other.feet() == best.feet() && other.betterThan(best) ? other : best;
    }

    private List<Integer> wastefulFirst(Incumbent now, TestWoodCost.Missing missing) {
        BlankRewards rewards = BlankRewards.byPrice(numbers, 1);
        return IntStream.range(0, now.layouts().length)
                .filter(b -> now.layouts()[b] != null && !numbers.job().board(b).ripped())
                .filter(b -> numbers.thickness(b) == missing.thickness())
                .boxed()
                .sorted(Comparator.comparingDouble(b -> -wasteOf(rewards, now.layouts()[b])))
                .limit(MOST_BOARDS_SHORTENED)
                .toList();
    }

    private static double wasteOf(BlankRewards rewards, @Nullable PricedLayout layout) {
        return layout == null ? 0 : rewards.waste(layout);
    }

    /** No strip ripped to a width that is barred; the boards that had one are cut again. */
    private Incumbent without(Incumbent now, Restriction barred, SplittableRandom random) {
        @Nullable PricedLayout[] layouts = now.layouts().clone();
        List<Integer> fallen = new ArrayList<>();
        for (int b = 0; b < layouts.length; b++) {
            PricedLayout layout = layouts[b];
            if (layout == null || Arrays.stream(layout.widths()).noneMatch(barred::bars)) continue;
            fallen.add(b);
            layouts[b] = null;
        }
        RuinAndRecreate recut = new RuinAndRecreate(new JobNumbers(numbers.job(), barred));
        @Nullable PricedLayout[] again = recut.cut(fallen, missing(layouts), random);
        for (int i = 0; i < again.length; i++) layouts[fallen.get(i)] = priced(again[i]);
        return Incumbent.of(numbers, layouts);
    }

    /** What is missing cut from boards that stayed whole, ripped ones first; then from one that is cut, again. */
    private Incumbent filled(Incumbent answer, SplittableRandom random) {
        Incumbent best = answer;
        List<Integer> boards = IntStream.range(0, answer.layouts().length)
                .boxed()
                .sorted(Comparator.comparing((Integer b) -> answer.layouts()[b] != null)
                        .thenComparing(b -> !numbers.job().board(b).ripped()))
                .toList();
        int cutAgain = 0;
        for (int board : boards) {
            if (Arrays.stream(missing(best.layouts())).noneMatch(n -> n > 0)) break;
            if (best.layouts()[board] != null && ++cutAgain > MOST_BOARDS_RECUT) break;
            best = better(best, board, random);
        }
        return best;
    }

    /** With that board cut again, as it is or shorter by the test blanks of one setting, where that is better. */
    private Incumbent better(Incumbent than, int board, SplittableRandom random) {
        Incumbent best = than;
        int tries = numbers.job().testRip().tries();
        for (int i = 0; i < TRIES; i++) {
            best = preferred(best, recut(than, board, shortened(0), random));
            if (tries > 0) best = preferred(best, recut(than, board, shortened(tries), random));
        }
        return best;
    }

    private static Incumbent preferred(Incumbent one, Incumbent other) {
        return other.betterThan(one) ? other : one;
    }

    private Incumbent recut(Incumbent now, int board, RuinAndRecreate recut, SplittableRandom random) {
        recuts++;
        @Nullable PricedLayout[] layouts = now.layouts().clone();
        layouts[board] = null;
        PricedLayout layout = priced(recut.cut(List.of(board), missing(layouts), random)[0]);
        return layout == null && now.layouts()[board] == null ? now : replaced(now, board, layout);
    }

    private Incumbent replaced(Incumbent now, int board, @Nullable PricedLayout layout) {
        @Nullable PricedLayout[] layouts = now.layouts().clone();
        layouts[board] = layout;
        return Incumbent.of(numbers, layouts);
    }

    /** A layout that was cut as if the board were shorter, priced as the board is. */
    private @Nullable PricedLayout priced(@Nullable PricedLayout layout) {
        return layout == null ? null : numbers.priced(layout.layout());
    }

    private RuinAndRecreate shortened(int blanks) {
        return shortened.computeIfAbsent(blanks, n -> new RuinAndRecreate(n == 0 ? numbers : numbers.shortened(n)));
    }

    private int[] missing(@Nullable PricedLayout[] layouts) {
        int[] missing = numbers.wanted();
        for (PricedLayout layout : layouts) if (layout != null) for (int part : layout.made()) missing[part]--;
        return missing;
    }
}
