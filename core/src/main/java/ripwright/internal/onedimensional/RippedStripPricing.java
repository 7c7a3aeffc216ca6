package ripwright.internal.onedimensional;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import ripwright.internal.knapsack.StripKnapsack;

/** The best strip of every type of ripped board at given prices; boards that take the same parts share their tables. */
public final class RippedStripPricing {
    private static final double SCALE = 1L << 32; // whole-number prices in one of the program's units

    private final RippedStock stock;
    private final List<boolean[]> woods = new ArrayList<>(); // what boards of one wood take
    private final List<StripKnapsack> tables = new ArrayList<>();
    private final int[] woodOf; // woodOf[s]: of board type s

    /** For all boards of that stock. */
    public RippedStripPricing(RippedStock stock) {
        this.stock = stock;
        woodOf = new int[stock.boards()];
        int[] longest = new int[stock.boards()];
        for (int s = 0; s < woodOf.length; s++) {
            boolean[] takes = takes(s);
            int w = 0;
            while (w < woods.size() && !Arrays.equals(woods.get(w), takes)) w++;
            if (w == woods.size()) woods.add(takes);
            woodOf[s] = w;
            longest[w] = Math.max(longest[w], stock.room(s));
        }
        int[] ticks = new int[stock.parts()];
        for (int k = 0; k < ticks.length; k++) ticks[k] = stock.ticks(k);
        for (int w = 0; w < woods.size(); w++) tables.add(new StripKnapsack(ticks, longest[w]));
    }

    /** Whether the parts are taken; one that is too long for this board alone does no harm, as it never fits. */
    private boolean[] takes(int boardType) {
        boolean[] takes = new boolean[stock.parts()];
        for (int k = 0; k < takes.length; k++)
            takes[k] = stock.takes(boardType, k) || stock.ticks(k) > stock.room(boardType);
        return takes;
    }

    /** Reckons all boards; a strip has no more of a type than is wanted. */
    public void price(double[] prices, int[] wanted) {
        for (int w = 0; w < tables.size(); w++) {
            long[] whole = new long[prices.length];
            for (int k = 0; k < whole.length; k++) if (woods.get(w)[k]) whole[k] = Math.round(prices[k] * SCALE);
            tables.get(w).price(whole, wanted);
        }
    }

    /** What the best strip of a board of that type is worth. */
    public double worth(int boardType) {
        return tables.get(woodOf[boardType]).worth(stock.room(boardType)) / SCALE;
    }

    /** That strip, its parts in rising order. */
    public RippedStock.Strip strip(int boardType) {
        int[] types = tables.get(woodOf[boardType]).blanks(stock.room(boardType));
        Arrays.sort(types);
        return new RippedStock.Strip(boardType, types);
    }
}
