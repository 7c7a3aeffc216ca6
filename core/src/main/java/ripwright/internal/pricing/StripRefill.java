package ripwright.internal.pricing;

import java.util.ArrayList;
import java.util.List;
import ripwright.internal.knapsack.KnapsackPasses;
import ripwright.internal.knapsack.TickGrid;
import ripwright.internal.model.ItemTypes;
import ripwright.internal.model.JobNumbers;
import ripwright.internal.model.PartNumbers;

/** Fills one strip from the blanks that are left so that their prices come to the most: a knapsack, exact but for its grid. */
public final class StripRefill {
    private static final int MOST_TICKS = 1 << 11;

    private final JobNumbers numbers;
    private final ItemTypes types;
    private final long[] prices; // of part types
    private final int[] left; // of parts

    StripRefill(JobNumbers numbers, ItemTypes types, long[] prices, int[] left) {
        this.numbers = numbers;
        this.types = types;
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
        TickGrid grid = new TickGrid(sizes, room, MOST_TICKS);
        int[] ticks = new int[sizes.length];
        int[] places = new int[sizes.length];
        for (int i = 0; i < ticks.length; i++) {
            ticks[i] = grid.of(sizes[i]);
            places[i] = i;
        }
        long[] worth = new long[grid.in(room) + 1];
        java.util.Arrays.fill(worth, StripPricing.NONE);
        worth[0] = 0;
        KnapsackPasses passes = new KnapsackPasses(worth.length - 1);
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
        return prices[types.typeOfPart(part.index)];
    }
}
