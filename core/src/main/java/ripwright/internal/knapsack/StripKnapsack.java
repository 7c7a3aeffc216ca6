package ripwright.internal.knapsack;

import java.util.Arrays;

/**
 * The dearest blanks that fit one strip, for every length of the strip at once, no more of a type than are wanted: a
 * knapsack of exact fillings, types x ticks steps, a few more for types of which few are wanted. Exact. Keeps its tables
 * for the next prices, so it serves one thread.
 *
 * @see "S. Martello, P. Toth, Knapsack Problems, Wiley 1990, section 3.2; from memory"
 */
public final class StripKnapsack {
    private final int[] order; // the types, shortest first
    private final int[] sizes; // sizes[i]: ticks of order[i]
    private final long[] exact; // exact[t]: worth of the best blanks that take exactly t ticks, or NONE
    private final int[] filled; // filled[t]: how many ticks the best blanks in at most t take
    private final KnapsackPasses passes;

    /**
     * @param ticks of a blank of each type, above zero, a kerf included
     * @param longest ticks of the longest strip, a kerf included
     */
    public StripKnapsack(int[] ticks, int longest) {
        Integer[] shortestFirst = new Integer[ticks.length];
        Arrays.setAll(shortestFirst, k -> k);
        Arrays.sort(shortestFirst, (a, b) -> Integer.compare(ticks[a], ticks[b]));
        order = Arrays.stream(shortestFirst).mapToInt(k -> k).toArray();
        sizes = Arrays.stream(order).map(k -> ticks[k]).toArray();
        exact = new long[longest + 1];
        filled = new int[longest + 1];
        passes = new KnapsackPasses(longest);
    }

    /** Fills the tables for those prices; what is worth nothing, or is not wanted, is left out. */
    public void price(long[] prices, int[] wanted) {
        Arrays.fill(exact, KnapsackPasses.NONE);
        exact[0] = 0;
        passes.clear();
        int reached = 0;
        for (int i = 0; i < order.length; i++) {
            int k = order[i];
            if (prices[k] <= 0 || wanted[k] == 0 || sizes[i] >= exact.length) continue;
            reached = passes.add(exact, reached, i, sizes[i], prices[k], wanted[k]);
        }
        for (int t = 1; t < exact.length; t++) filled[t] = exact[t] > exact[filled[t - 1]] ? t : filled[t - 1];
    }

    /** What the best strip of {@code t} ticks is worth. */
    public long worth(int t) {
        return exact[filled[t]];
    }

    /** The types of its blanks, each as often as there are of it. */
    public int[] blanks(int t) {
        return passes.trace(filled[t], order, sizes);
    }
}
