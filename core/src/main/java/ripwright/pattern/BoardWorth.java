package ripwright.pattern;

import java.util.Arrays;

/**
 * What the best layout of one board is worth: one to three sections and what is left at full width. Reckons few of the
 * possible sections. No tick along the board is worth more than {@code perTick}, so a section that loses more against it
 * than the whole board loses in a layout known already is in no better one; what is left is tried in all pairs, each
 * with the best that its rest of the board still holds. Exact for the worths of its sections.
 */
final class BoardWorth {
    private static final int MOST_SECTIONS = 3;

    private final Wood wood;
    private final SectionWorth sections;
    private final int i; // the board's place in the wood
    private final BoardShape shape;
    private double perTick;
    private final double[] most; // most[k]: at least the worth of a section as long as the k-th length of sections
    private int count; // of sections taken
    private final int[] length; // length[k]: of section k, those shortest first
    private final long[] worth; // worth[k]: what it is worth
    private final double[] loss; // loss[k]: what it loses against perTick
    private final long[] any; // any[k]: the most that one of the first k + 1 is worth
    private final long[] leaving; // leaving[k]: the same, what they take from the leftover taken off
    private final int[] place; // place[t]: how many are no longer than t ticks
    private final int[] byLoss; // sections, least loss first
    private long best;
    private final int[] bestSections = new int[MOST_SECTIONS - 1];
    private int bestCount; // sections before the rest in the best layout

    BoardWorth(Wood wood, SectionWorth sections, int i, BoardShape shape, int[] place) {
        this.wood = wood;
        this.sections = sections;
        this.i = i;
        this.shape = shape;
        this.place = place;
        int n = shape.length + 1;
        most = new double[n];
        length = new int[n];
        worth = new long[n];
        loss = new double[n];
        any = new long[n];
        leaving = new long[n];
        byLoss = new int[n];
    }

    /** The worth of the board's best layout of one section at least; {@link StripWorth#NONE} when it is not above zero. */
    long best() {
        best = StripWorth.NONE;
        int[] lengths = sections.lengths();
        int longest = Math.min(shape.length, wood.longest);
        int n = 0;
        while (n < lengths.length && lengths[n] <= longest) {
            most[n] = sections.atMost(i, lengths[n]);
            n++;
        }
        if (n == 0) return best;
        settlePerTick(lengths, n);
        double tried = perTick * shape.length / 64;
        while (true) {
            take(lengths, n, tried);
            combine(tried);
            double enough = slack();
            if (tried >= enough) return best;
            tried = Math.min(2 * tried + 64, enough);
        }
    }

    /** What all sections and leftovers of a layout may lose together that is better, and worth anything at all. */
    private double slack() {
        double flush = Math.max(0, Math.max(shape.flush, shape.open));
        double spilled = (double) shape.fullRate() * wood.spill;
        return (perTick * shape.length + flush + spilled - Math.max(0, best)) * (1 + 1e-9) + 64;
    }

    /** Reckons sections, those first that may be worth most for each tick, until one is reckoned that is. */
    private void settlePerTick(int[] lengths, int n) {
        double rate = shape.fullRate();
        for (int k = 0; k < n; k++) if (sections.isReckoned(lengths[k])) rate = Math.max(rate, most[k] / lengths[k]);
        int open = 0;
        for (int k = 0; k < n; k++) {
            if (most[k] <= rate * lengths[k] || sections.isReckoned(lengths[k])) continue;
            loss[k] = most[k] / lengths[k];
            byLoss[open++] = k;
        }
        for (int k = open / 2; k >= 0; k--) sink(k, open);
        while (open > 0 && loss[byLoss[0]] > rate) {
            int first = byLoss[0];
            most[first] = sections.worth(i, lengths[first]);
            rate = Math.max(rate, most[first] / lengths[first]);
            byLoss[0] = byLoss[--open];
            sink(0, open);
        }
        perTick = rate * (1 + 1e-12);
    }

    /** Takes all sections that lose no more than {@code slack}. */
    private void take(int[] lengths, int n, double slack) {
        count = 0;
        int t = 0;
        long highest = StripWorth.NONE;
        long leaves = StripWorth.NONE;
        for (int k = 0; k < n; k++) {
            if (perTick * lengths[k] - most[k] > slack) continue;
            long w = sections.worth(i, lengths[k]);
            most[k] = w;
            double lost = perTick * lengths[k] - w;
            if (w == StripWorth.NONE || lost > slack) continue;
            while (t < lengths[k]) place[t++] = count;
            highest = Math.max(highest, w);
            leaves = Math.max(leaves, w - shape.fullRate() * lengths[k]);
            length[count] = lengths[k];
            worth[count] = w;
            any[count] = highest;
            leaving[count] = leaves;
            loss[count++] = lost;
        }
        while (t <= shape.length) place[t++] = count;
    }

    /**
     * Tries all layouts of the sections taken. Of a layout's sections the one that loses most is left to the rest: so the
     * one before loses no more than half of the slack, and of three the first no more than a third.
     */
    private void combine(double slack) {
        int room = shape.length;
        long alone = last(room);
        if (alone > best) {
            best = alone;
            bestCount = 0;
        }
        int n = leastLosses(slack / 2);
        for (int a = 0; a < n; a++) {
            int first = byLoss[a];
            int left = room - length[first];
            if (worth[first] + rest(left) > best) {
                best = worth[first] + rest(left);
                bestCount = 1;
                bestSections[0] = length[first];
            }
            double allowed = (slack - loss[first]) / 2;
            for (int b = a; b < n && loss[byLoss[b]] <= allowed; b++) {
                int second = byLoss[b];
                if (length[second] > left) continue;
                long sum = worth[first] + worth[second] + rest(left - length[second]);
                if (sum <= best) continue;
                best = sum;
                bestCount = 2;
                bestSections[0] = length[first];
                bestSections[1] = length[second];
            }
        }
    }

    /** The best end of a layout in {@code t} ticks: one section and what is left beyond it. */
    private long last(int t) {
        int k = place[t] - 1;
        long last = StripWorth.NONE;
        if (k >= 0) {
            last = any[k] + shape.open;
            if (length[k] == t) last = Math.max(last, worth[k] + shape.flush);
        }
        if (shape.leaves(t)) {
            int leaves = place[t - wood.keepTicks] - 1;
            if (leaves >= 0) last = Math.max(last, leaving[leaves] + shape.leftover(t) + shape.open);
        }
        return last;
    }

    /** The same, or without a section. */
    private long rest(int t) {
        long none = t == 0 ? Math.max(shape.open, shape.flush) : shape.open;
        if (shape.leaves(t)) none = Math.max(none, shape.leftover(t) + shape.open);
        return Math.max(none, last(t));
    }

    /** Sorts the sections that lose no more than {@code most} into byLoss, that first which loses least. */
    private int leastLosses(double most) {
        int n = 0;
        for (int k = 0; k < count; k++) if (loss[k] <= most) byLoss[n++] = k;
        for (int k = n / 2; k >= 0; k--) sink(k, n);
        for (int end = n - 1; end > 0; end--) {
            int k = byLoss[0];
            byLoss[0] = byLoss[end];
            byLoss[end] = k;
            sink(0, end);
        }
        return n;
    }

    /** Lets the entry at {@code from} sink in the heap of byLoss, the greatest loss at its top. */
    private void sink(int from, int n) {
        int k = from;
        while (2 * k + 1 < n) {
            int child = 2 * k + 1;
            if (child + 1 < n && loss[byLoss[child + 1]] > loss[byLoss[child]]) child++;
            if (loss[byLoss[child]] <= loss[byLoss[k]]) return;
            int other = byLoss[k];
            byLoss[k] = byLoss[child];
            byLoss[child] = other;
            k = child;
        }
    }

    /** The lengths of the sections of the best layout. */
    int[] bestSections() {
        int room = shape.length;
        long wanted = best;
        for (int k = 0; k < bestCount; k++) {
            room -= bestSections[k];
            wanted -= sections.worth(i, bestSections[k]);
        }
        int[] all = Arrays.copyOf(bestSections, bestCount);
        for (int t : sections.lengths()) {
            if (t > room) break;
            if (!sections.isReckoned(t) || sections.worth(i, t) == StripWorth.NONE) continue;
            int left = room - t;
            long with = sections.worth(i, t) + (left == 0 ? Math.max(shape.flush, shape.open) : shape.open);
            if (shape.leaves(left)) with = Math.max(with, sections.worth(i, t) + shape.leftover(left) + shape.open);
            if (with != wanted) continue;
            int[] more = Arrays.copyOf(all, bestCount + 1);
            more[bestCount] = t;
            return more;
        }
        return all;
    }
}
