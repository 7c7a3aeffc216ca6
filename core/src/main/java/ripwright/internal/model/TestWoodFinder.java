package ripwright.internal.model;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import ripwright.internal.geometry.Layout;
import ripwright.stock.Edge;

/**
 * Finds the wood of one board that test blanks can be cut from: all of it while the board stays whole, else the leftovers of
 * its layout that are there before its last strip is crosscut. Defects are not looked at: a test blank may lie on them, and
 * what they cost an offcut is left out.
 */
public final class TestWoodFinder {
    private final JobNumbers numbers;
    private final BoardNumbers board;
    private final @Nullable Layout layout; // null: the board stays whole

    private TestWoodFinder(JobNumbers numbers, int board, @Nullable Layout layout) {
        this.numbers = numbers;
        this.board = numbers.boards[board];
        this.layout = layout;
    }

    /** What that layout leaves. */
    static TestWoodPieces of(JobNumbers numbers, Layout layout) {
        return new TestWoodPieces(() -> new TestWoodFinder(numbers, layout.board(), layout).all());
    }

    /** What that board offers while nothing else is cut from it. */
    static TestWoodPieces ofWhole(JobNumbers numbers, int board) {
        return new TestWoodPieces(() -> new TestWoodFinder(numbers, board, null).all());
    }

    private List<TestWoodPiece> all() {
        return layout == null ? whole() : left(layout);
    }

    /** A board opened for test wood is paid for, and the rest of it kept. */
    private List<TestWoodPiece> whole() {
        List<TestWoodPiece> ends = new ArrayList<>();
        int source = board.stock.fromRack() ? TestWoodPiece.RACK : TestWoodPiece.FRESH;
        new Lengthwise(0, board.length, Long.MAX_VALUE, source, board.cost).into(ends);
        return ends;
    }

    private List<TestWoodPiece> left(Layout layout) {
        List<TestWoodPiece> ends = new ArrayList<>();
        long from = 0;
        for (Layout.Section section : layout.sections()) {
            if (!board.ripped) beside(from, section.from() - numbers.crosscutKerf, ends);
            from = section.to() + numbers.crosscutKerf;
            section(section, ends);
        }
        if (!board.ripped) beside(from, board.length, ends);
        return ends;
    }

    private void beside(long from, long to, List<TestWoodPiece> ends) {
        if (to > from) new Lengthwise(from, to, Long.MAX_VALUE, -1, 0).into(ends);
    }

    private void section(Layout.Section section, List<TestWoodPiece> ends) {
        long rest = board.sectionWidth(section.from(), section.to()) - section.edgeLoss();
        long last = 0;
        for (Layout.Strip strip : section.strips()) {
            rest -= strip.width() + numbers.ripKerf;
            last = strip.width();
            long freed = board.ripped ? Long.MAX_VALUE : last;
            strip(section, strip, freed, ends);
        }
        boolean left = section.referenceEdge() == Edge.LEFT;
        if (!board.ripped && rest > 0 && (left || board.leftStraight || !board.tapered()))
            new Lengthwise(section.from(), section.to(), last, rest).into(ends);
    }

    private void strip(Layout.Section section, Layout.Strip strip, long freed, List<TestWoodPiece> ends) {
        long near = section.to();
        long far = section.from();
        for (Layout.Blank blank : strip.blanks()) {
            near = Math.min(near, blank.from());
            far = Math.max(far, blank.from() + numbers.parts[blank.part()].length);
        }
        if (far > near) {
            new Lengthwise(section.from(), near - numbers.crosscutKerf, freed, strip.width()).into(ends);
            new Lengthwise(far + numbers.crosscutKerf, section.to(), freed, strip.width()).into(ends);
        } else {
            new Lengthwise(section.from(), section.to(), freed, strip.width()).into(ends);
        }
    }

    /** One piece, from one place along the grain to another. */
    private final class Lengthwise {
        private final long from;
        private final long to;
        private final long freedBy;
        private final long width; // of what is ripped straight; 0: it reaches over the board's full width
        private final int source; // -1: by whether it would be kept
        private final double price; // of opening the board; 0: it is cut anyway
        private final double rate; // what a square nanometer of it is worth when kept

        /** Over the full width. */
        Lengthwise(long from, long to, long freedBy, int source, double price) {
            this.from = from;
            this.to = to;
            this.freedBy = freedBy;
            this.source = source;
            this.price = price;
            width = 0;
            rate = board.salvageRate;
        }

        /** Off a section that is straight on one edge at least, and milled. */
        Lengthwise(long from, long to, long freedBy, long width) {
            this.from = from;
            this.to = to;
            this.freedBy = freedBy;
            this.width = width;
            source = -1;
            price = 0;
            rate = board.milledSalvageRate;
        }

        void into(List<TestWoodPiece> ends) {
            long start = from == 0 ? Math.max(from, board.stock.endTrim().near().nanometers()) : from;
            long end = to == board.length
                    ? board.length - board.stock.endTrim().far().nanometers()
                    : to;
            long each = numbers.testLength + numbers.crosscutKerf;
            long room = (end - start + numbers.crosscutKerf) / each;
            if (end <= start || room < 1) return;
            int most = (int) Math.min(room, numbers.mostTestBlanks);
            boolean farEnd = width == 0 && board.widthAt(end) > board.widthAt(start);
            long[] widths = new long[most];
            double[] losses = new double[most];
            double worth = price > 0 ? price : worth(start, end);
            for (int n = 0; n < most; n++) {
                long at = farEnd ? end - n * each - numbers.testLength : start + n * each;
                widths[n] = widthOf(at, at + numbers.testLength);
                long rest = (n + 1) * each;
                double kept = worth(farEnd ? start : start + rest, farEnd ? end - rest : end);
                losses[n] = worth - kept + (n + 1) * numbers.crosscutCost;
            }
            int kind =
                    source >= 0 ? source : worth > 0 || keeps(start, end) ? TestWoodPiece.FRESH : TestWoodPiece.WASTE;
            ends.add(new TestWoodPiece(board.thickness, kind, freedBy, widths, losses));
        }

        private long widthOf(long start, long end) {
            if (width > 0) return width;
            long narrow = Math.min(board.widthAt(start), board.widthAt(end));
            boolean straight = board.leftStraight || board.rightStraight;
            return straight ? narrow : narrow - board.referenceLoss(true, end - start);
        }

        private boolean keeps(long start, long end) {
            long narrow = width > 0 ? width : Math.min(board.widthAt(start), board.widthAt(end));
            return end - start >= numbers.keepLength && narrow >= numbers.keepWidth;
        }

        private double worth(long start, long end) {
            if (!keeps(start, end)) return 0;
            double mean = width > 0 ? width : (board.widthAt(start) + board.widthAt(end)) / 2.0;
            return (end - start) * mean * rate;
        }
    }
}
