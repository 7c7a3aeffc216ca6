package ripwright.pattern;

import java.util.Arrays;

/** The strips of one length that a section is filled with, and the knapsack over its width. */
final class StripPasses {
    private final Wood wood;
    private final Charges charges;
    private final StripWorth strips;
    private int count;
    private int[] width = new int[64]; // width[k]: of the strips of pass k, place in wood.widths
    private long[] gain = new long[64]; // gain[k]: of one of them
    private boolean[] free = new boolean[64]; // whether as many as fit may be taken, or only one

    StripPasses(Wood wood, Charges charges, StripWorth strips) {
        this.wood = wood;
        this.charges = charges;
        this.strips = strips;
    }

    /** Sets the passes up for a section of {@code t} ticks. */
    void of(int t) {
        count = 0;
        for (int v = 0; v < wood.widths.length; v++) {
            long one = strips.best(v, t);
            if (one <= charges.rip()) continue;
            int fit = wood.width / wood.stripTicks[v];
            if (fit > 0) of(v, t, one, fit);
        }
    }

    /** The worth of n strips is the least of n times that of one and of all blanks together: each adds no more than the one before. */
    private void of(int v, int t, long one, int fit) {
        long all = strips.mostOf(v, t, 0);
        long slack = strips.mostOf(v, t, 1) - all;
        if (all + fit * slack >= fit * one) {
            add(v, one - charges.rip(), true);
            return;
        }
        long before = 0;
        for (int n = 1; n <= fit; n++) {
            long now = Math.min(n * one, all + n * slack);
            if (now - before <= charges.rip()) return;
            add(v, now - before - charges.rip(), false);
            before = now;
        }
    }

    private void add(int v, long worth, boolean often) {
        if (count == width.length) {
            width = Arrays.copyOf(width, 2 * count);
            gain = Arrays.copyOf(gain, 2 * count);
            free = Arrays.copyOf(free, 2 * count);
        }
        width[count] = v;
        gain[count] = worth;
        free[count++] = often;
    }

    /** Fills choice[u] with the worth of the best strips in at most {@code u} ticks, up to {@code room}. */
    void fill(long[] choice, int room) {
        Arrays.fill(choice, 0, room + 1, 0);
        for (int k = 0; k < count; k++) pass(k, choice, room);
    }

    private void pass(int k, long[] choice, int room) {
        int step = wood.stripTicks[width[k]];
        long worth = gain[k];
        if (free[k]) {
            for (int u = step; u <= room; u++) choice[u] = Math.max(choice[u], choice[u - step] + worth);
        } else {
            for (int u = room; u >= step; u--) choice[u] = Math.max(choice[u], choice[u - step] + worth);
        }
    }

    /** How many strips of each width fill at most {@code room} ticks best. */
    int[] trace(int room, long[] scratch) {
        long[][] after = new long[count + 1][];
        Arrays.fill(scratch, 0, room + 1, 0);
        after[0] = Arrays.copyOf(scratch, room + 1);
        for (int k = 0; k < count; k++) {
            pass(k, scratch, room);
            after[k + 1] = Arrays.copyOf(scratch, room + 1);
        }
        int[] many = new int[wood.widths.length];
        int u = room;
        for (int k = count - 1; k >= 0; k--) {
            int step = wood.stripTicks[width[k]];
            while (after[k + 1][u] != after[k][u]) {
                many[width[k]]++;
                u -= step;
                if (!free[k]) break;
            }
        }
        return many;
    }
}
