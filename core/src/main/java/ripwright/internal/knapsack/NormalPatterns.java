package ripwright.internal.knapsack;

import java.util.Arrays;
import java.util.TreeSet;

/**
 * The normal patterns of the strip widths: all sums that strips can come to, a rip kerf with each, which are the only
 * positions across a section that a knapsack over its width need look at, as any layout can be pushed towards the
 * reference edge. Exact; only where there are too many, strips are first rounded down to a coarser tick.
 *
 * @see "J. C. Herz, Recursive computational procedure for two-dimensional stock cutting, IBM Journal of Research and
 *     Development 16 (1972) 462-469; from memory"
 */
public final class NormalPatterns {
    private static final int MOST = 1 << 12;

    private final long[] sums; // in rising order, 0 the first
    private final int[][] next; // next[v][i]: place of sums[i] and one more strip of width v, or -1

    /**
     * The sums of some widths.
     *
     * @param strips widths, a kerf included in each
     * @param room the greatest sum there may be
     */
    public NormalPatterns(long[] strips, long room) {
        long tick = 1;
        long[] found = sums(strips, tick, room);
        while (found.length > MOST) {
            tick = Math.max(2 * tick, room / (MOST * 4));
            found = sums(strips, tick, room);
        }
        sums = found;
        next = new int[strips.length][sums.length];
        for (int v = 0; v < strips.length; v++) {
            long strip = Math.max(tick, strips[v] - strips[v] % tick);
            for (int i = 0; i < sums.length; i++) next[v][i] = Math.max(-1, Arrays.binarySearch(sums, sums[i] + strip));
        }
    }

    /** All sums up to {@code room}; of too many one more than {@link #MOST}. */
    private static long[] sums(long[] strips, long tick, long room) {
        TreeSet<Long> all = new TreeSet<>();
        TreeSet<Long> fresh = new TreeSet<>();
        fresh.add(0L);
        while (!fresh.isEmpty() && all.size() <= MOST) {
            long sum = fresh.pollFirst();
            all.add(sum);
            for (long strip : strips) {
                long more = sum + Math.max(tick, strip - strip % tick);
                if (more <= room) fresh.add(more);
            }
        }
        return all.stream().mapToLong(sum -> sum).toArray();
    }

    public int count() {
        return sums.length;
    }

    /** The {@code i}-th sum, in nanometers. */
    public long sum(int i) {
        return sums[i];
    }

    /** The place of the sum of the {@code i}-th and one more strip, or -1 where that is too wide. */
    public int next(int v, int i) {
        return next[v][i];
    }

    /** For each place the next one with a strip of width {@code v}; not to be changed. */
    public int[] next(int v) {
        return next[v];
    }

    /** The place of the greatest sum that is no more than {@code room}; -1 when {@code room} is below zero. */
    public int within(long room) {
        if (room < 0) return -1;
        int i = Arrays.binarySearch(sums, room);
        return i >= 0 ? i : -i - 2;
    }
}
