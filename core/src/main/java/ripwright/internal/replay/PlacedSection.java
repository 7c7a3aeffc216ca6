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
