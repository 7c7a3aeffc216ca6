package ripwright.internal.knapsack;

import java.util.Arrays;

/**
 * All choices from a few types with so many copies each, numbered in mixed radix: the number of two choices together is the
 * sum of their numbers, as long as there are copies enough.
 */
public final class Multisets {
    private final int[] copies;
    private final int[] stride; // stride[i]: number of the choice of one of type i
    private final int size;

    public Multisets(int[] copies) {
        this.copies = copies;
        stride = new int[copies.length];
        int all = 1;
        for (int i = 0; i < copies.length; i++) {
            stride[i] = all;
            all *= copies[i] + 1;
        }
        size = all;
    }

    /** How many choices there are; {@code most} + 1 when there are more than {@code most}. */
    public static int count(int[] copies, int most) {
        long all = 1;
        for (int c : copies) {
            all *= c + 1L;
            if (all > most) return most + 1;
        }
        return (int) all;
    }

    /** How many pairs of a choice and a part of it there are; {@code most} + 1 when there are more than {@code most}. */
    public static int pairs(int[] copies, int most) {
        long all = 1;
        for (int c : copies) {
            all *= (c + 1L) * (c + 2L) / 2;
            if (all > most) return most + 1;
        }
        return (int) all;
    }

    public int size() {
        return size;
    }

    /** How many copies of type {@code i} there are. */
    public int copies(int i) {
        return copies[i];
    }

    /** How many of type {@code i} choice {@code m} has. */
    public int many(int m, int i) {
        return m / stride[i] % (copies[i] + 1);
    }

    /** For every choice the sum of what its blanks weigh. */
    public void sums(long[] weights, long[] into) {
        into[0] = 0;
        for (int i = 0; i < copies.length; i++)
            for (int m = stride[i]; m < stride[i] * (copies[i] + 1); m++) into[m] = into[m - stride[i]] + weights[i];
    }

    /** The part of {@code m} after {@code part}, in rising order of their numbers; -1 after the last, which is {@code m}. */
    public int nextPart(int m, int part) {
        if (part == m) return -1;
        int next = part;
        for (int i = 0; i < copies.length; i++) {
            int has = many(next, i);
            if (has < many(m, i)) return next + stride[i];
            next -= has * stride[i];
        }
        return -1;
    }

    /** The types in choice {@code m}, each as often as it is there. */
    public int[] types(int m) {
        int[] types = new int[Arrays.stream(copies).sum()];
        int n = 0;
        for (int i = 0; i < copies.length; i++) for (int c = many(m, i); c > 0; c--) types[n++] = i;
        return Arrays.copyOf(types, n);
    }
}
