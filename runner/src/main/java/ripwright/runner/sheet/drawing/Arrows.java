package ripwright.runner.sheet.drawing;

import java.util.List;
import ripwright.runner.sheet.drawing.Line.Pen;
import ripwright.runner.sheet.drawing.Shape.Look;

/** Arrows and pointers of drafting practice. */
final class Arrows {
    private static final long LONG = 560;
    private static final long HALF = 130;

    private Arrows() {}

    /** A line from {@code start} to {@code end}, an arrowhead at each end. */
    static void along(Paper paper, long start, long end, long y) {
        between(paper, start, end, y, 0);
    }

    /** A dimension line, an arrowhead at each end, broken for a text in the middle that is twice {@code gap} wide. */
    static void between(Paper paper, long start, long end, long y, long gap) {
        long middle = (start + end) / 2;
        paper.line(Pen.THIN, new Spot(start, y), new Spot(middle - gap, y));
        paper.line(Pen.THIN, new Spot(middle + gap, y), new Spot(end, y));
        if (end - start < 3 * LONG) return;
        paper.shape(head(start, start + LONG, y));
        paper.shape(head(end, end - LONG, y));
    }

    private static Shape head(long tip, long back, long y) {
        return new Shape(Look.BLACK, List.of(new Spot(tip, y), new Spot(back, y - HALF), new Spot(back, y + HALF)));
    }

    /** A solid triangle whose tip stands on an edge, from above or from below. */
    static Shape datum(long x, long edge, boolean above) {
        long back = above ? edge - 560 : edge + 560;
        return new Shape(Look.BLACK, List.of(new Spot(x, edge), new Spot(x - 340, back), new Spot(x + 340, back)));
    }
}
