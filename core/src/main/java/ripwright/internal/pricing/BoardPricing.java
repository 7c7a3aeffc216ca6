package ripwright.internal.pricing;

import java.util.Arrays;

/**
 * What the best layout of one board is worth: one to three sections and what is left at full width. Reckons few of the
 * possible sections: one that loses more than the whole board loses in a layout known already is in no better one. What is
 * left is tried in all pairs, each with the best that its rest of the board still holds. Exact for the worths of its
 * sections.
 */
public final class BoardPricing {
    private final BoardClass wood;
    private final SectionPricing sections;
    private final int i; // the board's place in the wood
    private final BoardProfile shape;
    private final SectionCandidates taken; // shared by all boards of the wood
    private final int[] byLoss; // the same; sections, least loss first
    private double perTick;
    private long best;
    private int[] lengths = {}; // of the sections of the best layout
    private int[] before = {}; // of a better one while it is looked for, without its last one
    private int end = -1; // ticks that one has left for its last section; -1 when there is none better
    private long rest; // what they are worth

    BoardPricing(
            BoardClass wood,
            SectionPricing sections,
            int i,
            BoardProfile shape,
            SectionCandidates taken,
            int[] byLoss) {
        this.wood = wood;
        this.sections = sections;
        this.i = i;
        this.shape = shape;
        this.taken = taken;
        this.byLoss = byLoss;
    }

    /** The worth of the board's best layout of one section at least; {@link StripPricing#NONE} when it is not above zero. */
    long best() {
        best = StripPricing.NONE;
        if (!taken.begin(sections, i, shape)) return best;
        if (lengths.length > 0) best = taken.worth(lengths); // what was best before is good still
        perTick = taken.settle((double) shape.fullRate()) * (1 + 1e-12);
        double tried = best > 0 ? slack() : perTick * shape.length / 64;
        while (true) {
            taken.take(perTick, tried);
            combine(tried);
            remember();
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
    private void combine(double tried) {
        int room = shape.length;
        better(taken.last(room), taken.last(room), room);
        double slack = Math.min(tried, slack());
        int n = taken.byLoss(slack / 2, byLoss);
        for (int a = 0; a < n && taken.loss(byLoss[a]) <= slack / 2; a++) {
            int first = byLoss[a];
            int left = room - taken.length(first);
            long worth = taken.worth(first);
            long rest = taken.rest(left);
            if (worth + rest > best) {
                better(worth + rest, rest, left, taken.length(first));
                slack = Math.min(tried, slack());
            }
            double allowed = (slack - taken.loss(first)) / 2;
            for (int b = a; b < n && taken.loss(byLoss[b]) <= allowed; b++) {
                int second = byLoss[b];
                int end = left - taken.length(second);
                if (end < 0) continue;
                long sum = worth + taken.worth(second) + taken.rest(end);
                if (sum <= best) continue;
                better(sum, taken.rest(end), end, taken.length(first), taken.length(second));
                slack = Math.min(tried, slack());
                allowed = (slack - taken.loss(first)) / 2;
            }
        }
    }

    /** Keeps a layout of those sections and the best rest of its last {@code end} ticks, if it is better. */
    private void better(long worth, long rest, int end, int... before) {
        if (worth <= best) return;
        best = worth;
        this.before = before;
        this.rest = rest;
        this.end = end;
    }

    /** Remembers the sections of the best layout of {@link #combine}, when that found any. */
    private void remember() {
        if (end < 0) return;
        int last = taken.lengthOfLast(end, rest);
        lengths = last == 0 ? before : Arrays.copyOf(before, before.length + 1);
        if (last > 0) lengths[before.length] = last;
        end = -1;
    }

    /** The lengths of the sections of the best layout. */
    int[] bestSections() {
        return lengths.clone();
    }
}
