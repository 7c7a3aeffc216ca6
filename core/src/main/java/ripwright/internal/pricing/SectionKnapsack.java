package ripwright.internal.pricing;

import java.util.Arrays;
import ripwright.internal.model.ScaledLabor;

/** The strips of one length that a section is filled with, and the knapsack over its width. */
public final class SectionKnapsack {
    private final BoardClass wood;
    private final ScaledLabor charges;
    private final StripPricing[] strips;
    private int count;
    private final int[] width; // width[k]: of the strips of pass k, place in wood.widths
    private final long[][] gain; // gain[k][n]: of n + 1 of them; none where each adds as much as the first
    private final long[] each; // each[k]: of one of them
    private final long[] scratch;

    SectionKnapsack(BoardClass wood, ScaledLabor charges, StripPricing[] strips) {
        this.wood = wood;
        this.charges = charges;
        this.strips = strips;
        width = new int[wood.widths.length];
        gain = new long[width.length][];
        each = new long[width.length];
        scratch = new long[wood.sums.count()];
    }

    /** Sets the passes up for a section of {@code t} ticks. */
    void of(int t) {
        count = 0;
        for (int v = 0; v < wood.widths.length; v++) {
            long one = strips[v].best(1, t);
            if (one <= charges.rip()) continue;
            width[count] = v;
            each[count] = one - charges.rip();
            gain[count] = new long[strips[v].told()];
            for (int n = 0; n < gain[count].length; n++)
                gain[count][n] = strips[v].best(n + 1, t) - (n + 1) * charges.rip();
            count++;
        }
    }

    /** Fills choice[i] with the worth of the best strips whose widths come to the i-th sum, none or NONE where none do. */
    void fill(long[] choice) {
        Arrays.fill(choice, StripPricing.NONE);
        choice[0] = 0;
        for (int k = 0; k < count; k++) pass(k, choice);
    }

    private void pass(int k, long[] choice) {
        int[] next = wood.sums.next(width[k]);
        if (gain[k].length == 0) {
            for (int i = 0; i < choice.length; i++) take(choice, choice[i], next[i], each[k]);
            return;
        }
        System.arraycopy(choice, 0, scratch, 0, choice.length);
        for (int i = 0; i < choice.length; i++) {
            if (scratch[i] == StripPricing.NONE) continue;
            int to = next[i];
            for (int n = 0; n < gain[k].length && to >= 0; n++) {
                take(choice, scratch[i], to, gain[k][n]);
                to = next[to];
            }
        }
    }

    private static void take(long[] choice, long before, int to, long worth) {
        if (to >= 0 && before != StripPricing.NONE) choice[to] = Math.max(choice[to], before + worth);
    }

    /** How many strips of each width there are in the best strips whose widths come to the {@code sum}-th sum. */
    int[] trace(int sum) {
        long[][] after = new long[count + 1][];
        long[] choice = new long[wood.sums.count()];
        Arrays.fill(choice, StripPricing.NONE);
        choice[0] = 0;
        after[0] = choice.clone();
        for (int k = 0; k < count; k++) {
            pass(k, choice);
            after[k + 1] = choice.clone();
        }
        int[] many = new int[wood.widths.length];
        int i = sum;
        for (int k = count - 1; k >= 0; k--) {
            long worth = after[k + 1][i];
            int n = 0;
            while (after[k][i] == StripPricing.NONE || after[k][i] + gain(k, n) != worth) {
                i = before(k, i);
                n++;
            }
            many[width[k]] = n;
        }
        return many;
    }

    private long gain(int k, int strips) {
        if (strips == 0) return 0;
        return gain[k].length == 0 ? strips * each[k] : gain[k][strips - 1];
    }

    private int before(int k, int i) {
        int[] next = wood.sums.next(width[k]);
        int j = wood.sums.within(Math.max(0, wood.sums.sum(i) - wood.strips[width[k]]));
        while (next[j] != i) j++;
        return j;
    }
}
