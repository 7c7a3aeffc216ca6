package ripwright.runner.sheet.drawing;

import ripwright.measure.Length;
import ripwright.measure.Unit;
import ripwright.runner.sheet.drawing.Words.Anchor;
import ripwright.stock.Board;

/** What stands above a board's drawing: its figure, its id, what it is, and which way the grain runs. */
final class TitleLine {
    private static final long ARROW = 6_000; // room for the grain's arrow
    private static final long LONGEST_ID = 18_000;

    private final String figure;
    private final String id;
    private final String text;
    private final long left;

    TitleLine(String figure, Board board, Unit units, long left) {
        this.figure = figure;
        this.id = Lettering.TITLE.fitted(Isolated.name(board.id()), LONGEST_ID);
        this.text = text(board, units);
        this.left = left;
    }

    private static String text(Board board, Unit units) {
        String thickness = units.nearest(board.thickness());
        String milled = board.rough() ? " (to be milled to " + units.nearest(board.millsTo()) + ")" : "";
        String taper = board.tapered() ? " tapering to " + units.nearest(board.widthAtFarEnd()) : "";
        Length crook = board.crook();
        return Isolated.name(board.species().name()) + ", " + thickness + milled + " × " + units.nearest(board.width())
                + taper + " × " + units.nearest(board.length()) + " " + units.symbol()
                + (crook.isZero() ? "" : ", crook " + units.nearest(crook));
    }

    /** How far right it reaches when nothing is cut short. */
    long right() {
        return textLeft() + Lettering.LABEL.width(text) + 500 + ARROW;
    }

    private long textLeft() {
        return left + Lettering.TITLE.width(id) + 700;
    }

    void draw(Paper paper, long right, long baseline) {
        long grain = right - ARROW;
        paper.words(new Words(Lettering.LABEL, Anchor.START, 0, baseline, figure));
        paper.words(new Words(Lettering.TITLE, Anchor.START, left, baseline, id));
        String fitted = Lettering.LABEL.fitted(text, grain - textLeft() - 500);
        paper.words(new Words(Lettering.LABEL, Anchor.START, textLeft(), baseline, fitted));
        paper.words(new Words(Lettering.LABEL, Anchor.START, grain, baseline, "grain"));
        Arrows.along(paper, grain + 2_700, right, baseline - 300);
    }
}
