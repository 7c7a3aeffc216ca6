package ripwright.pattern;

import java.util.ArrayList;
import java.util.List;

/** Fills one strip from the blanks that are left so that their prices come to the most: a knapsack, exact but for its grid. */
final class StripRefill {
    private static final int MOST_TICKS = 1 << 11;

    private final JobNumbers numbers;
    private final Kinds kinds;
    private final long[] prices; // of part kinds
    private final int[] left; // of parts

    StripRefill(JobNumbers numbers, Kinds kinds, long[] prices, int[] left) {
        this.numbers = numbers;
        this.kinds = kinds;
        this.prices = prices;
        this.left = left;
    }

    /** The parts that fill a strip of that width and length best. */
    List<Integer> fill(long width, long length) {
        List<PartNumbers> offered = new ArrayList<>();
        for (PartNumbers part : numbers.parts)
            if (part.width == width && part.length <= length && left[part.index] > 0 && price(part) > 0)
                offered.add(part);
        long room = length + numbers.crosscutKerf;
        long[] sizes = offered.stream()
                .mapToLong(part -> part.length + numbers.crosscutKerf)
                .toArray();
        Grid grid = new Grid(sizes, room, MOST_TICKS);
        int[] ticks = new int[sizes.length];
        int[] places = new int[sizes.length];
        for (int i = 0; i < ticks.length; i++) {
            ticks[i] = grid.of(sizes[i]);
            places[i] = i;
        }
        long[] worth = new long[grid.in(room) + 1];
        java.util.Arrays.fill(worth, StripWorth.NONE);
        worth[0] = 0;
        Passes passes = new Passes(worth.length - 1);
        int reached = 0;
        for (int i = 0; i < ticks.length; i++)
            if (ticks[i] < worth.length)
                reached = passes.add(worth, reached, i, ticks[i], price(offered.get(i)), left[offered.get(i).index]);
        int best = 0;
        for (int t = 0; t < worth.length; t++) if (worth[t] > worth[best]) best = t;
        List<Integer> parts = new ArrayList<>();
        for (int i : passes.trace(best, places, ticks)) parts.add(offered.get(i).index);
        return parts;
    }

    private long price(PartNumbers part) {
        return prices[kinds.kindOfPart(part.index)];
    }
}
