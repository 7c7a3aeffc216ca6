package ripwright.internal.knapsack;

import java.util.Arrays;

/**
 * Fills one clear interval of a strip with blanks so that the least is left over: a subset sum by shifted words. As n
 * blanks need n - 1 kerfs, each is taken one kerf longer, and the interval too. Exact; blanks x ticks / 64 steps. Keeps
 * its table for the next filling, so it serves one thread.
 *
 * @see "D. Pisinger, Dynamic programming on the word RAM, Algorithmica 35 (2003) 128-145. The kerf: common practice."
 */
public final class StripFill {
    private long[][] reach = new long[0][]; // reach[k], bit x: some of the first k blanks come to exactly x ticks
    private int[] chosen = new int[16]; // which blanks the fullest filling takes, last first
    private int chosenCount;

    /**
     * Finds a fullest filling; of several that are as full one that does without the last blanks.
     *
     * @param blanks ticks of each blank, one kerf included; only the first {@code count} are read
     * @param capacity ticks of the interval, one kerf included
     * @return how many ticks it fills; {@link #chosen} says with what
     */
    public int fill(int[] blanks, int count, int capacity) {
        chosenCount = 0;
        if (capacity <= 0 || count == 0) return 0;
        int words = (capacity >> 6) + 1;
        reserve(count + 1, words);
        Arrays.fill(reach[0], 0, words, 0);
        reach[0][0] = 1;
        long lastWord = -1L >>> (63 - (capacity & 63));
        int rows = 0;
        for (int k = 0; k < count; k++) {
            rows = k + 1;
            shiftOr(reach[k], reach[k + 1], blanks[k], words, lastWord);
            if (hasBit(reach[k + 1], capacity)) break;
        }
        return trace(blanks, rows, highestBit(reach[rows], words));
    }

    private int trace(int[] blanks, int rows, int filled) {
        int x = filled;
        for (int k = rows; k > 0; k--) {
            if (hasBit(reach[k - 1], x)) continue; // the blanks before this one come to x without it
            if (chosenCount == chosen.length) chosen = Arrays.copyOf(chosen, 2 * chosenCount);
            chosen[chosenCount++] = k - 1;
            x -= blanks[k - 1];
        }
        return filled;
    }

    /** How many blanks the last filling takes. */
    public int chosenCount() {
        return chosenCount;
    }

    /** The place of its {@code i}-th blank in what {@link #fill} was given, last places first. */
    public int chosen(int i) {
        return chosen[i];
    }

    private void reserve(int rows, int words) {
        if (reach.length < rows) {
            int old = reach.length;
            reach = Arrays.copyOf(reach, rows);
            for (int k = old; k < rows; k++) reach[k] = new long[words];
        }
        for (int k = 0; k < rows; k++) if (reach[k].length < words) reach[k] = new long[words];
    }

    private static void shiftOr(long[] from, long[] into, int shift, int words, long lastWord) {
        int whole = shift >> 6;
        int bits = shift & 63;
        int kept = Math.min(whole, words);
        System.arraycopy(from, 0, into, 0, kept);
        if (bits == 0) {
            for (int i = kept; i < words; i++) into[i] = from[i] | from[i - whole];
        } else if (whole < words) {
            into[whole] = from[whole] | from[0] << bits;
            for (int i = whole + 1; i < words; i++)
                into[i] = from[i] | from[i - whole] << bits | from[i - whole - 1] >>> (64 - bits);
        }
        into[words - 1] &= lastWord;
    }

    private static boolean hasBit(long[] bits, int x) {
        return (bits[x >> 6] >>> x & 1) != 0;
    }

    private static int highestBit(long[] bits, int words) {
        int i = words - 1;
        while (bits[i] == 0) i--;
        return 64 * i + 63 - Long.numberOfLeadingZeros(bits[i]);
    }
}
