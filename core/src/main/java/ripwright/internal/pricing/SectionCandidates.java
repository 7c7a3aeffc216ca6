package ripwright.internal.pricing;

/**
 * Reduces the section lengths that the pricing of one board looks at, without losing its optimum. Let r be the least rate
 * at which no section is worth more than r for each of its ticks. The loss of a section is r times its ticks less its worth;
 * it is never negative, and a layout's worth is r times the ticks it covers less the losses of its sections. So, when a
 * layout that loses d in all is known, no section that loses more than d is in a better one, and it is left out: reduced
 * cost fixing with r as the dual price of a tick. Exact; one pass over the lengths for each bound that is tightened. Serves
 * one board after another, on one thread.
 */
public final class SectionCandidates {
    private final BoardClass wood;
    private SectionPricing sections;
    private BoardProfile shape;
    private int board; // its place in the wood
    private int offered; // lengths the board has room for
    private final double[] most; // most[k]: at least the worth of a section as long as the k-th length of sections
    private final int[] heap; // places in most; keys in loss
    private int count; // of sections taken
    private final int[] length; // length[k]: of section k, those shortest first
    private final long[] worth; // worth[k]: what it is worth
    private final double[] loss; // loss[k]: what it loses
    private final long[] any; // any[k]: the most that one of the first k + 1 is worth
    private final long[] leaving; // leaving[k]: the same, what they take from the leftover taken off
    private final int[] place; // place[t]: how many are no longer than t ticks
    private final long[] rest; // rest[t]: what t ticks at the end of a layout are worth at best

    SectionCandidates(BoardClass wood, SectionPricing sections, BoardProfile shape) {
        this.wood = wood;
        this.sections = sections;
        this.shape = shape;
        int n = wood.length + 1;
        most = new double[n];
        heap = new int[n];
        length = new int[n];
        worth = new long[n];
        loss = new double[n];
        any = new long[n];
        leaving = new long[n];
        place = new int[n];
        rest = new long[n];
    }

    /** Begins with the {@code i}-th board of the wood; whether it has room for any section. */
    boolean begin(SectionPricing sections, int i, BoardProfile shape) {
        this.sections = sections;
        this.shape = shape;
        board = i;
        int[] lengths = sections.lengths();
        int longest = Math.min(shape.length, wood.longest);
        offered = 0;
        while (offered < lengths.length && lengths[offered] <= longest) {
            most[offered] = sections.atMost(i, lengths[offered]);
            offered++;
        }
        return offered > 0;
    }

    /** A rate no section exceeds, nor {@code rate}: reckons sections, those first that may be worth most for each tick. */
    double settle(double rate) {
        int[] lengths = sections.lengths();
        double highest = rate;
        for (int k = 0; k < offered; k++)
            if (sections.isReckoned(lengths[k])) highest = Math.max(highest, most[k] / lengths[k]);
        int open = 0;
        for (int k = 0; k < offered; k++) {
            if (most[k] <= highest * lengths[k] || sections.isReckoned(lengths[k])) continue;
            loss[k] = most[k] / lengths[k];
            heap[open++] = k;
        }
        for (int k = open / 2; k >= 0; k--) sink(heap, loss, k, open);
        while (open > 0 && loss[heap[0]] > highest) {
            int first = heap[0];
            most[first] = sections.worth(board, lengths[first]);
            highest = Math.max(highest, most[first] / lengths[first]);
            heap[0] = heap[--open];
            sink(heap, loss, 0, open);
        }
        return highest;
    }

    /** Takes all sections that lose no more than {@code slack} against {@code perTick}. */
    void take(double perTick, double slack) {
        int[] lengths = sections.lengths();
        count = 0;
        int t = 0;
        long highest = StripPricing.NONE;
        long leaves = StripPricing.NONE;
        for (int k = 0; k < offered; k++) {
            if (perTick * lengths[k] - most[k] > slack) continue;
            long w = sections.worth(board, lengths[k]);
            most[k] = w;
            double lost = perTick * lengths[k] - w;
            if (w == StripPricing.NONE || lost > slack) continue;
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
        for (int end = 0; end <= shape.length; end++) rest[end] = Math.max(none(end), last(end));
    }

    int count() {
        return count;
    }

    int length(int k) {
        return length[k];
    }

    long worth(int k) {
        return worth[k];
    }

    double loss(int k) {
        return loss[k];
    }

    /** The best end of a layout in {@code t} ticks: one section and what is left beyond it. */
    long last(int t) {
        int k = place[t] - 1;
        long last = StripPricing.NONE;
        if (k >= 0) {
            last = any[k] + shape.open;
            for (int near = k; near >= 0 && t - length[near] <= wood.unseenInBoard; near--)
                last = Math.max(last, worth[near] + shape.flush);
        }
        if (shape.leaves(t)) {
            int leaves = place[t - wood.keepTicks] - 1;
            if (leaves >= 0) last = Math.max(last, leaving[leaves] + shape.leftover(t) + shape.open);
        }
        return last;
    }

    /** The same, or without a section. */
    long rest(int t) {
        return rest[t];
    }

    /** What a layout of sections of those lengths is worth. */
    long worth(int[] lengths) {
        int left = shape.length;
        long sum = 0;
        for (int length : lengths) {
            long worth = sections.worth(board, length);
            if (worth == StripPricing.NONE) return StripPricing.NONE;
            sum += worth;
            left -= length;
        }
        return sum + none(left);
    }

    private long none(int t) {
        long none = t <= wood.unseenInBoard ? Math.max(shape.open, shape.flush) : shape.open;
        return shape.leaves(t) ? Math.max(none, shape.leftover(t) + shape.open) : none;
    }

    /** The length of a section of a last end worth {@code last} in {@code t} ticks; 0 when there is none. */
    int lengthOfLast(int t, long last) {
        for (int k = 0; k < place[t]; k++) if (worth[k] + none(t - length[k]) == last) return length[k];
        return 0;
    }

    /** Sorts the sections that lose no more than {@code most} into {@code into}, that first which loses least. */
    int byLoss(double most, int[] into) {
        int n = 0;
        for (int k = 0; k < count; k++) if (loss[k] <= most) into[n++] = k;
        for (int k = n / 2; k >= 0; k--) sink(into, loss, k, n);
        for (int end = n - 1; end > 0; end--) {
            int k = into[0];
            into[0] = into[end];
            into[end] = k;
            sink(into, loss, 0, end);
        }
        return n;
    }

    /** Lets the entry at {@code from} sink in a heap, the greatest key at its top. */
    private static void sink(int[] heap, double[] keys, int from, int n) {
        int k = from;
        while (2 * k + 1 < n) {
            int child = 2 * k + 1;
            if (child + 1 < n && keys[heap[child + 1]] > keys[heap[child]]) child++;
            if (keys[heap[child]] <= keys[heap[k]]) return;
            int other = heap[k];
            heap[k] = heap[child];
            heap[child] = other;
            k = child;
        }
    }
}
