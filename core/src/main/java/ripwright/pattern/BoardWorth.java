package ripwright.pattern;

import java.util.Arrays;

/**
 * What the best layout of one board is worth: one to three sections and what is left at full width. Reckons few of the
 * possible sections: one that loses more than the whole board loses in a layout known already is in no better one. What is
 * left is tried in all pairs, each with the best that its rest of the board still holds. Exact for the worths of its
 * sections.
 */
final class BoardWorth {
    private final Wood wood;
    private final SectionWorth sections;
    private final int i; // the board's place in the wood
    private final BoardShape shape;
    private final Taken taken; // shared by all boards of the wood
    private final int[] byLoss; // the same; sections, least loss first
    private double perTick;
    private long best;
    private int[] before = {}; // lengths of the sections before the last one in the best layout
    private int last; // length of the last one; 0 where there is none

    BoardWorth(Wood wood, SectionWorth sections, int i, BoardShape shape, Taken taken, int[] byLoss) {
        this.wood = wood;
        this.sections = sections;
        this.i = i;
        this.shape = shape;
        this.taken = taken;
        this.byLoss = byLoss;
    }

    /** The worth of the board's best layout of one section at least; {@link StripWorth#NONE} when it is not above zero. */
    long best() {
        best = StripWorth.NONE;
        if (!taken.begin(sections, i, shape)) return best;
        perTick = taken.settle((double) shape.fullRate()) * (1 + 1e-12);
        double tried = perTick * shape.length / 64;
        while (true) {
            taken.take(perTick, tried);
            combine(tried);
            double enough = slack();
            if (tried >= enough) return best;
            tried = Math.min(2 * tried + 64, enough);
        }
    }

    /** What all sections and leftovers of a layout may lose together that is better, and worth anything at all. */
    private double slack() {
        return shape.slack(perTick, Math.max(0, best), wood.spill);
    }

    /**
     * Tries all layouts of the sections taken. Of a layout's sections the one that loses most is left to the rest: so the
     * one before loses no more than half of the slack, and of three the first no more than a third.
     */
    private void combine(double slack) {
        int room = shape.length;
        better(taken.last(room), taken.last(room), room);
        int n = taken.byLoss(slack / 2, byLoss);
        for (int a = 0; a < n; a++) {
            int first = byLoss[a];
            int left = room - taken.length(first);
            long rest = taken.rest(left);
            if (taken.worth(first) + rest > best) better(taken.worth(first) + rest, rest, left, taken.length(first));
            double allowed = (slack - taken.loss(first)) / 2;
            for (int b = a; b < n && taken.loss(byLoss[b]) <= allowed; b++) {
                int second = byLoss[b];
                int end = left - taken.length(second);
                if (end < 0) continue;
                long sum = taken.worth(first) + taken.worth(second) + taken.rest(end);
                if (sum > best) better(sum, taken.rest(end), end, taken.length(first), taken.length(second));
            }
        }
    }

    private void better(long worth, long rest, int end, int... lengths) {
        if (worth <= best) return;
        best = worth;
        before = lengths;
        last = taken.lengthOfLast(end, rest);
    }

    /** The lengths of the sections of the best layout. */
    int[] bestSections() {
        if (last == 0) return before.clone();
        int[] all = Arrays.copyOf(before, before.length + 1);
        all[before.length] = last;
        return all;
    }
}
