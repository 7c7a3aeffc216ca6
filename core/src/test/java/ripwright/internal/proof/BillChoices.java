package ripwright.internal.proof;

import java.util.Arrays;

/** Every choice of blanks from a bill, numbered so that two choices put together are the sum of their numbers. */
public final class BillChoices {
    private final int[] wanted; // wanted[k]: blanks of type k on the bill
    private final int[] step; // step[k]: what one of them adds to a choice's number
    private final int size;

    BillChoices(int[] wanted) {
        this.wanted = wanted.clone();
        step = new int[wanted.length];
        int all = 1;
        for (int k = 0; k < wanted.length; k++) {
            step[k] = all;
            all = Math.multiplyExact(all, wanted[k] + 1);
        }
        size = all;
    }

    /** How many choices there are; the last is the whole bill, 0 is nothing. */
    int size() {
        return size;
    }

    int types() {
        return wanted.length;
    }

    int many(int choice, int type) {
        return choice / step[type] % (wanted[type] + 1);
    }

    /** What is left of a choice when only blanks of those types count. */
    int only(int choice, int[] types) {
        int left = 0;
        for (int k : types) left += many(choice, k) * step[k];
        return left;
    }

    /** All parts of a choice, nothing and itself among them. */
    int[] parts(int choice) {
        int[] parts = {0};
        for (int k = 0; k < wanted.length; k++) {
            int n = parts.length;
            int copies = many(choice, k);
            parts = Arrays.copyOf(parts, n * (copies + 1));
            for (int i = n; i < parts.length; i++) parts[i] = parts[i - n] + step[k];
        }
        return parts;
    }

    /** The sum over a choice's blanks of what one of each type comes to. */
    long sum(int choice, long[] each) {
        long sum = 0;
        for (int k = 0; k < wanted.length; k++) sum += many(choice, k) * each[k];
        return sum;
    }
}
