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
    private final boolean everyLength; // whether a section may be worth more only because it is longer
    private final long[] rest; // rest[t]: worth of the best end of a layout in t ticks: a section or none, and leftover
    private final long[] lastRest; // the same with a section
    private final long[]
            most; // most[t]: at least the worth of a section of t ticks, NONE where a shorter one is worth more
    private final int[] length; // length[k]: of a section that was reckoned
    private final long[] worth; // worth[k]: what it is worth
    private final double[] loss; // loss[k]: what it loses against perTick
    private final int[] byLoss; // places in length, worth and loss, least loss first
    private int count;
    private double perTick;
    private long best;
    private final int[] bestSections = new int[MOST_SECTIONS - 1];
    private int bestCount; // sections before the rest in the best layout

    BoardWorth(Wood wood, SectionWorth sections, int i, BoardShape shape, Charges charges, long[][] scratch) {
        this.wood = wood;
        this.sections = sections;
        this.i = i;
        this.shape = shape;
        everyLength = wood.offcutRate > 0 || (charges.crosscut() > 0 && shape.flush > 0);
        rest = scratch[0];
        most = scratch[2];
        lastRest = scratch[1];
        length = new int[wood.length + 1];
        worth = new long[wood.length + 1];
        loss = new double[wood.length + 1];
        byLoss = new int[wood.length + 1];
    }

    /** The worth of the board's best layout of one section at least; {@link StripWorth#NONE} when it is not above zero. */
    long best() {
        best = StripWorth.NONE;
        int from = Math.max(1, wood.shortest);
        int to = Math.min(shape.length, wood.longest);
        if (from > to) return best;
        if (shape.length <= wood.longest) sections.worth(i, shape.length);
        for (int t = from; t <= to; t++)
            most[t] = everyLength || t == from || sections.rises(t) ? sections.atMost(i, t) : StripWorth.NONE;
        settlePerTick(from, to);
        double tried = perTick * shape.length / 64;
        while (true) {
            reckon(from, to, tried);
            collect(from, to, tried);
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

    /** Reckons all sections that may lose no more than {@code slack}. */
    private void reckon(int from, int to, double slack) {
        for (int t = from; t <= to; t++)
            if (!sections.isReckoned(t) && perTick * t - most[t] <= slack) sections.worth(i, t);
    }

    /** Reckons sections, those first that may be worth most for each tick, until one is reckoned that is. */
    private void settlePerTick(int from, int to) {
        double rate = shape.fullRate();
        for (int t = from; t <= to; t++)
            if (sections.isReckoned(t)) rate = Math.max(rate, (double) sections.worth(i, t) / t);
        int n = 0;
        for (int t = from; t <= to; t++) {
            if (sections.isReckoned(t) || most[t] <= rate * t) continue;
            loss[n] = (double) most[t] / t;
            length[n++] = t;
        }
        for (int k = n / 2; k >= 0; k--) sink(k, n);
        while (n > 0 && loss[0] > rate) {
            rate = Math.max(rate, (double) sections.worth(i, length[0]) / length[0]);
            n--;
            loss[0] = loss[n];
            length[0] = length[n];
            sink(0, n);
        }
        perTick = rate * (1 + 1e-12);
    }

    /** Keeps the heap of lengths whose keys, largest first, are in {@code loss}. */
    private void sink(int from, int n) {
        int k = from;
        while (2 * k + 1 < n) {
            int child = 2 * k + 1;
            if (child + 1 < n && loss[child + 1] > loss[child]) child++;
            if (loss[child] <= loss[k]) return;
            double key = loss[k];
            loss[k] = loss[child];
            loss[child] = key;
            int t = length[k];
            length[k] = length[child];
            length[child] = t;
            k = child;
        }
    }

    /** Takes all sections that are reckoned and lose no more than {@code slack}, shortest first. */
    private void collect(int from, int to, double slack) {
        count = 0;
        for (int t = from; t <= to; t++) {
            if (!sections.isReckoned(t)) continue;
            long w = sections.worth(i, t);
            double lost = perTick * t - w;
            if (w == StripWorth.NONE || lost > slack) continue;
            length[count] = t;
            worth[count] = w;
            loss[count++] = lost;
        }
    }

    /**
     * Tries all layouts of the sections taken. Of a layout's sections the one that loses most is left to the rest: so the
     * one before loses no more than half of the slack, and of three the first no more than a third.
     */
    private void combine(double slack) {
        fillRest();
        int room = shape.length;
        if (lastRest[room] > best) {
            best = lastRest[room];
            bestCount = 0;
        }
        int n = leastLosses(slack / 2);
        for (int a = 0; a < n; a++) {
            int first = byLoss[a];
            int left = room - length[first];
            if (left < 0) continue;
            if (worth[first] + rest[left] > best) {
                best = worth[first] + rest[left];
                bestCount = 1;
                bestSections[0] = length[first];
            }
            double allowed = (slack - loss[first]) / 2;
            for (int b = a; b < n && loss[byLoss[b]] <= allowed; b++) {
                int second = byLoss[b];
                if (length[second] > left) continue;
                long sum = worth[first] + worth[second] + rest[left - length[second]];
                if (sum <= best) continue;
                best = sum;
                bestCount = 2;
                bestSections[0] = length[first];
                bestSections[1] = length[second];
            }
        }
    }

    /** Sorts the sections that lose no more than {@code most} into byLoss, that first which loses least. */
    private int leastLosses(double most) {
        int n = 0;
        for (int k = 0; k < count; k++) if (loss[k] <= most) byLoss[n++] = k;
        for (int k = n / 2; k >= 0; k--) sinkByLoss(k, n);
        for (int end = n - 1; end > 0; end--) {
            int k = byLoss[0];
            byLoss[0] = byLoss[end];
            byLoss[end] = k;
            sinkByLoss(0, end);
        }
        return n;
    }

    private void sinkByLoss(int from, int n) {
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

    private void fillRest() {
        long any = StripWorth.NONE; // of the best section of at most t ticks
        long leaving = StripWorth.NONE; // the same, what it takes from the leftover taken off
        int next = 0;
        int sooner = 0;
        for (int t = 0; t <= shape.length; t++) {
            long flush = StripWorth.NONE;
            if (next < count && length[next] == t) {
                any = Math.max(any, worth[next]);
                flush = worth[next++];
            }
            long last = Math.max(any + shape.open, flush + shape.flush);
            long none = t == 0 ? Math.max(shape.open, shape.flush) : shape.open;
            if (shape.leaves(t)) {
                while (sooner < count && length[sooner] <= t - wood.keepTicks) {
                    leaving = Math.max(leaving, worth[sooner] - shape.fullRate() * length[sooner]);
                    sooner++;
                }
                last = Math.max(last, leaving + shape.leftover(t) + shape.open);
                none = Math.max(none, shape.leftover(t) + shape.open);
            }
            lastRest[t] = last;
            rest[t] = Math.max(last, none);
        }
    }

    /** The lengths of the sections of the best layout. */
    int[] bestSections() {
        fillRest();
        int room = shape.length;
        for (int k = 0; k < bestCount; k++) room -= bestSections[k];
        long wanted = best;
        for (int k = 0; k < bestCount; k++) wanted -= sections.worth(i, bestSections[k]);
        int[] all = Arrays.copyOf(bestSections, bestCount);
        for (int k = 0; k < count && length[k] <= room; k++) {
            int left = room - length[k];
            long with = worth[k] + (left == 0 ? Math.max(shape.flush, shape.open) : shape.open);
            if (shape.leaves(left)) with = Math.max(with, worth[k] + shape.leftover(left) + shape.open);
            if (with != wanted) continue;
            int[] more = Arrays.copyOf(all, bestCount + 1);
            more[bestCount] = length[k];
            return more;
        }
        return all;
    }
}
