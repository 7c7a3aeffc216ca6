package ripwright.internal.replay;

import java.util.List;
import ripwright.plan.Section;
import ripwright.plan.Strip;
import ripwright.stock.Board;
import ripwright.stock.Edge;

/**
 * A section where it lies on its board; everything in nanometers.
 *
 * @param section the section
 * @param frame its board
 */
public record PlacedSection(Section section, BoardFrame frame) {
    public String id() {
        return section.id();
    }

    public Board board() {
        return frame.board();
    }

    public long from() {
        return section.from().nanometers();
    }

    public long to() {
        return section.to().nanometers();
    }

    public long length() {
        return to() - from();
    }

    public CrosscutLine.Span span() {
        return new CrosscutLine.Span(from(), to());
    }

    /** Whether it starts at the board's own marked end, where no cut is made. */
    public boolean startsAtBoardEnd() {
        return Tolerance.same(from(), 0);
    }

    /** Whether it ends at the board's own other end. */
    public boolean endsAtBoardEnd() {
        return Tolerance.same(to(), frame.length());
    }

    /**
     * Where its blanks may lie: {@code over} from its ends, unless those are the board's own and square, and in no end
     * trim. With {@code over} 0 that is all of it, as it lies between the trims.
     */
    public CrosscutLine.Span room(long over) {
        if (over == 0) return span();
        long start = startsAtBoardEnd() && frame.squareNear() ? from() : from() + over;
        long end = endsAtBoardEnd() && frame.squareFar() ? to() : to() - over;
        return new CrosscutLine.Span(Math.max(start, frame.clearFrom()), Math.min(end, frame.clearTo()));
    }

    /** That of its own narrower end. */
    public long width() {
        return Math.min(frame.widthAt(from()), frame.widthAt(to()));
    }

    public Edge otherEdge() {
        return section.referenceEdge() == Edge.LEFT ? Edge.RIGHT : Edge.LEFT;
    }

    public long edgeLoss() {
        return section.edgeLoss().nanometers();
    }

    /** What its reference edge must give up, at least. */
    public long dueEdgeLoss() {
        return frame.straighteningLoss(section.referenceEdge(), length());
    }

    /** Whether its reference edge is ripped straight first: it is not, or it gives up more than nothing. */
    public boolean straightened() {
        return !frame.straight(section.referenceEdge()) || Tolerance.more(edgeLoss(), 0);
    }

    /** Whether the decimals of a plan's file leave that open; then it is as the steps say. */
    public boolean straightenedOrNot() {
        return frame.straight(section.referenceEdge())
                && Math.abs(edgeLoss() - Tolerance.NANOMETERS) <= Tolerance.OF_PRINT;
    }

    public List<PlacedStrip> strips() {
        return section.strips().stream()
                .map(strip -> new PlacedStrip(strip, this))
                .toList();
    }

    /** How far its strips reach from the raw reference edge. */
    public long reach() {
        if (section.strips().isEmpty()) return edgeLoss();
        Strip last = section.strips().get(section.strips().size() - 1);
        return edgeLoss() + last.offset().nanometers() + last.width().nanometers();
    }
}
