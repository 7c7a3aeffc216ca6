package ripwright.internal.model;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * What it costs an answer to prove its rip settings on test blanks: from wide to narrow a blank is ripped again wherever it
 * still is a kerf wider, and new ones are cut from the rack, else from waste, else from fresh wood, each time what loses
 * least; where boards of several thicknesses are ripped at one setting, each is tried first, as long as no more test blanks
 * are needed so. The plan chooses by the same
 * rules but looks further, so it pays as much or less. Boards x leftovers x new blanks steps.
 */
public final class TestWoodCost {
    private final JobNumbers numbers;
    private final int tries;
    private final boolean[] proved; // proved[w]: whether strips of that width are tested
    private final TestWoodPieces[] whole; // whole[b]: of board b while nothing else is cut from it

    TestWoodCost(JobNumbers numbers, int tries) {
        this.numbers = numbers;
        this.tries = tries;
        whole = new TestWoodPieces[numbers.boards.length];
        proved = new boolean[numbers.widths.length];
        for (int w = 0; w < proved.length; w++) proved[w] = numbers.tests(numbers.widths[w]);
        if (tries > 0) for (int b = 0; b < whole.length; b++) whole[b] = TestWoodFinder.ofWhole(numbers, b);
    }

    /**
     * What proving costs.
     *
     * @param missing how many test blanks find no wood in time
     * @param millionths what the others lose, in millionths of the currency
     * @param first the first of those missing
     */
    public record Cost(int missing, long millionths, Optional<Missing> first) {
        /** Nothing to prove. */
        public static final Cost NONE = new Cost(0, 0, Optional.empty());

        private boolean lessThan(Cost other) {
            return missing != other.missing ? missing < other.missing : millionths < other.millionths;
        }
    }

    /**
     * Test blanks that find no wood.
     *
     * @param width the width of the strips they are to prove, in nanometers
     * @param thickness which of the job's thicknesses they must have
     * @param blanks how many
     */
    public record Missing(long width, int thickness, int blanks) {}

    /** Whether settings are proved at all. */
    public boolean wanted() {
        return tries > 0;
    }

    /** What proving all settings of an answer costs, given the layout of every board, null where it stays whole. */
    public Cost of(@Nullable PricedLayout[] layouts) {
        if (tries == 0) return Cost.NONE;
        long[] thicknesses = thicknesses(layouts);
        List<Need> needs = needs(thicknesses, -1);
        Cost best = proved(layouts, needs);
        int fewest = needs.size();
        long choices = 0;
        for (long those : thicknesses) if (Long.bitCount(those) > 1) choices |= those;
        for (; choices != 0; choices &= choices - 1) {
            List<Need> others = needs(thicknesses, Long.numberOfTrailingZeros(choices));
            if (others.size() > fewest) continue;
            Cost cost = proved(layouts, others);
            if (others.size() < fewest || cost.lessThan(best)) best = cost;
            fewest = others.size();
        }
        return best;
    }

    private Cost proved(@Nullable PricedLayout[] layouts, List<Need> needs) {
        if (needs.isEmpty()) return Cost.NONE;
        TestWoodAssignment taken =
                new TestWoodAssignment(ends(layouts, needs.get(needs.size() - 1).width), numbers.ripKerf);
        for (int i = 0; i < needs.size(); i++) {
            Need need = needs.get(i);
            int alike = 1;
            while (i + 1 < needs.size() && needs.get(i + 1).begunLike(need)) {
                i++;
                alike++;
            }
            taken.take(need.width, need.thickness, alike);
        }
        return taken.cost();
    }

    /** What may serve a setting of that width or a wider one. */
    private List<TestWoodPiece> ends(@Nullable PricedLayout[] layouts, long narrowest) {
        List<TestWoodPiece> ends = new ArrayList<>();
        for (int b = 0; b < layouts.length; b++) {
            PricedLayout layout = layouts[b];
            for (TestWoodPiece end : (layout == null ? whole[b] : layout.testEnds()).all())
                if (end.proves(narrowest, numbers.ripKerf, 0)) ends.add(end);
        }
        return ends;
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

        private boolean begunLike(Need other) {
            return width == other.width && thickness == other.thickness;
        }
    }

    /** The test blanks to be cut, widest first; of thickness {@code first} where that may be. */
    private List<Need> needs(long[] thicknesses, int first) {
        List<Need> needs = new ArrayList<>();
        for (int w = 0; w < thicknesses.length; w++) {
            long width = numbers.widths[w];
            if (thicknesses[w] == 0 || !proved[w]) continue;
            int there = 0;
            for (Need need : needs) {
                if (there == tries) break;
                boolean thick = (thicknesses[w] >> need.thickness & 1) != 0;
                if (!thick || need.last < width + numbers.ripKerf || need.last == width) continue;
                need.last = width;
                there++;
            }
            boolean preferred = first >= 0 && (thicknesses[w] >> first & 1) != 0;
            int thickness = preferred ? first : Long.numberOfTrailingZeros(thicknesses[w]);
            for (; there < tries; there++) needs.add(new Need(width, thickness));
        }
        return needs;
    }
}
