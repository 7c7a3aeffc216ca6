package ripwright.testing;

import java.util.TreeSet;
import java.util.stream.LongStream;
import ripwright.measure.OnePlace;

/** Remainders too small to see or nearly so, in nanometers: from 1 to 0.001 in, closest where a cut begins to count. */
public final class Slivers {
    private static final long MOST = 2 * OnePlace.NANOMETERS;

    private Slivers() {}

    /** All of them, the smallest first. */
    public static LongStream all() {
        TreeSet<Long> all = new TreeSet<>();
        for (double sliver = 1; sliver <= MOST; sliver *= 1.6) all.add(Math.round(sliver));
        all.add(MOST);
        for (long off : new long[] {0, 1, 2, 12, 13, 25, 26, 38, 39, 51, 52, 100}) {
            all.add(OnePlace.NANOMETERS - off);
            all.add(OnePlace.NANOMETERS + off);
        }
        return all.stream().mapToLong(sliver -> sliver);
    }
}
