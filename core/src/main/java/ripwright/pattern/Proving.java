package ripwright.pattern;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What it costs an answer to prove its rip settings on test blanks: from wide to narrow a blank is ripped again wherever it
 * still is a kerf wider, and new ones are cut from the rack, else from waste, else from fresh wood, each time what loses
 * least. The plan chooses by the same rules but looks further, so it pays as much or less. Boards x leftovers x new blanks
 * steps.
 */
public final class Proving {
    private final JobNumbers numbers;
    private final int tries;
    private final TestEnds[] whole; // whole[b]: of board b while nothing else is cut from it

    Proving(JobNumbers numbers, int tries) {
        this.numbers = numbers;
        this.tries = tries;
        whole = new TestEnds[numbers.boards.length];
        if (tries > 0) for (int b = 0; b < whole.length; b++) whole[b] = TestEndFinder.ofWhole(numbers, b);
    }

    /**
     * What proving costs.
     *
     * @param missing how many test blanks find no wood in time
     * @param millionths what the others lose, in millionths of the currency
     */
    public record Cost(int missing, long millionths) {
        /** Nothing to prove. */
        public static final Cost NONE = new Cost(0, 0);
    }

    /** Whether settings are proved at all. */
    public boolean wanted() {
        return tries > 0;
    }

    /** What proving all settings of an answer costs, given the layout of every board, null where it stays whole. */
    public Cost of(@Nullable PricedLayout[] layouts) {
        if (tries == 0) return Cost.NONE;
        List<Need> needs = needs(thicknesses(layouts));
        if (needs.isEmpty()) return Cost.NONE;
        List<Stock> stock = stock(layouts, needs.get(needs.size() - 1).width);
        int missing = 0;
        double millionths = 0;
        for (Need need : needs) {
            Stock best = null;
            for (Stock one : stock) if (one.proves(need) && (best == null || one.before(best))) best = one;
            if (best == null) {
                missing++;
                continue;
            }
            millionths += best.end.loss(best.taken);
            best.taken++;
        }
        return new Cost(missing, Math.round(millionths));
    }

    /** thicknesses[w]: bit t when strips of thickness t are ripped at the width in place w. */
    private long[] thicknesses(@Nullable PricedLayout[] layouts) {
        long[] thicknesses = new long[numbers.widths.length];
        for (int b = 0; b < layouts.length; b++) {
            PricedLayout layout = layouts[b];
            if (layout == null) continue;
            for (long width : layout.widths())
                thicknesses[place(width)] |= 1L << Math.min(63, numbers.boards[b].thickness);
        }
        return thicknesses;
    }

    private int place(long width) {
        int low = 0;
        int high = numbers.widths.length - 1;
        while (low < high) {
            int middle = (low + high) >>> 1;
            if (numbers.widths[middle] > width) low = middle + 1;
            else high = middle;
        }
        return low;
    }

    /** A test blank to be cut: the widest setting it proves, and how narrow it is by now. */
    private static final class Need {
        private final long width;
        private final int thickness;
        private long last;

        Need(long width, int thickness) {
            this.width = width;
            this.thickness = thickness;
            last = width;
        }
    }

    /** The test blanks to be cut, widest first. */
    private List<Need> needs(long[] thicknesses) {
        List<Need> needs = new ArrayList<>();
        for (int w = 0; w < thicknesses.length; w++) {
            if (thicknesses[w] == 0) continue;
            long width = numbers.widths[w];
            int there = 0;
            for (Need need : needs) {
                if (there == tries) break;
                boolean thick = (thicknesses[w] >> need.thickness & 1) != 0;
                if (!thick || need.last < width + numbers.ripKerf || need.last == width) continue;
                need.last = width;
                there++;
            }
            for (; there < tries; there++) needs.add(new Need(width, Long.numberOfTrailingZeros(thicknesses[w])));
        }
        return needs;
    }

    /** A piece, and how many test blanks are cut from it so far. */
    private static final class Stock {
        private final TestEnd end;
        private final long ripKerf;
        private int taken;

        Stock(TestEnd end, long ripKerf) {
            this.end = end;
            this.ripKerf = ripKerf;
        }

        boolean proves(Need need) {
            return end.thickness() == need.thickness && end.proves(need.width, ripKerf, taken);
        }

        boolean before(Stock other) {
            if (end.source() != other.end.source()) return end.source() < other.end.source();
            return end.loss(taken) < other.end.loss(other.taken);
        }
    }

    private List<Stock> stock(@Nullable PricedLayout[] layouts, long narrowest) {
        List<Stock> stock = new ArrayList<>();
        for (int b = 0; b < layouts.length; b++) {
            PricedLayout layout = layouts[b];
            for (TestEnd end : (layout == null ? whole[b] : layout.testEnds()).all())
                if (end.proves(narrowest, numbers.ripKerf, 0)) stock.add(new Stock(end, numbers.ripKerf));
        }
        return stock;
    }
}
