package ripwright.internal.geometry;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalLong;
import ripwright.job.Job;
import ripwright.stock.Board;
import ripwright.stock.Edge;

/**
 * All that a layout leaves of its board, before any test blank is cut: pieces along the grain first, then section by
 * section. What the saws turn to dust, and wedges that come to nothing at their narrow end, are not among it.
 */
public final class LayoutLeftovers {
    private final Job job;
    private final Board board;
    private final Layout layout;
    private final long crosscutKerf;
    private final long ripKerf;
    private final List<Leftover> found = new ArrayList<>();

    /** Of that layout, feasible for that job. */
    public LayoutLeftovers(Job job, Layout layout) {
        this.job = job;
        this.board = job.board(layout.board());
        this.layout = layout;
        this.crosscutKerf = job.saw().crosscutKerf().nanometers();
        this.ripKerf = job.saw().ripKerf().nanometers();
        besideSections();
        for (int i = 0; i < layout.sections().size(); i++)
            ofSection(i, layout.sections().get(i));
    }

    /** Every leftover, kept or wasted. */
    public List<Leftover> all() {
        return List.copyOf(found);
    }

    private void besideSections() {
        long from = 0;
        for (Layout.Section section : layout.sections()) {
            besideSection(from, section.from() - crosscutKerf);
            from = section.to() + crosscutKerf;
        }
        besideSection(from, board.length().nanometers());
    }

    private void besideSection(long from, long to) {
        if (to > from) found.add(Leftover.ofBoard(Piece.across(board, from, to)));
    }

    private void ofSection(int index, Layout.Section section) {
        boolean left = section.referenceEdge() == Edge.LEFT;
        Piece whole = Piece.across(board, section.from(), section.to());
        long width = whole.narrowWidth();
        long taken = section.edgeLoss();
        for (int i = 0; i < section.strips().size(); i++) {
            Layout.Strip strip = section.strips().get(i);
            long start = left ? taken : width - taken - strip.width();
            Piece piece = between(whole, start, OptionalLong.of(start + strip.width()), true, true);
            alongStrip(index, i, strip, piece);
            taken += strip.width() + ripKerf;
        }
        if (width <= taken) return;
        Piece beside = left
                ? between(whole, taken, OptionalLong.empty(), true, whole.rightStraight())
                : between(whole, 0, OptionalLong.of(width - taken), whole.leftStraight(), true);
        found.add(Leftover.ofSection(index, beside));
    }

    /** The section is milled before it is ripped, so every piece of it has its finished thickness. */
    private Piece between(Piece whole, long left, OptionalLong right, boolean leftStraight, boolean rightStraight) {
        return new Piece(board, whole.from(), whole.to(), left, right, leftStraight, rightStraight, true);
    }

    private void alongStrip(int section, int index, Layout.Strip strip, Piece whole) {
        if (strip.blanks().isEmpty()) {
            found.add(new Leftover(Leftover.Of.STRIP, section, index, whole, true, true));
            return;
        }
        boolean squared = job.breakdown().leavesOver();
        long from = whole.from();
        for (Layout.Blank blank : strip.blanks()) {
            long to = blank.from() - crosscutKerf;
            boolean first = from == whole.from();
            if (to > from) {
                Piece piece = whole.span(from, to).squared(squared && !first, squared);
                found.add(new Leftover(Leftover.Of.STRIP, section, index, piece, first, false));
            }
            from = blank.from() + job.parts().get(blank.part()).blankLength().nanometers() + crosscutKerf;
        }
        if (whole.to() > from) {
            Piece piece = whole.span(from, whole.to()).squared(squared, false);
            found.add(new Leftover(Leftover.Of.STRIP, section, index, piece, false, true));
        }
    }
}
