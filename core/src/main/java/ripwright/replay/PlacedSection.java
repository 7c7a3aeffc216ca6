package ripwright.replay;

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
record PlacedSection(Section section, Frame frame) {
    String id() {
        return section.id();
    }

    Board board() {
        return frame.board();
    }

    long from() {
        return section.from().nanometers();
    }

    long to() {
        return section.to().nanometers();
    }

    long length() {
        return to() - from();
    }

    Line.Span span() {
        return new Line.Span(from(), to());
    }

    /** That of its own narrower end. */
    long width() {
        return Math.min(frame.widthAt(from()), frame.widthAt(to()));
    }

    Edge otherEdge() {
        return section.referenceEdge() == Edge.LEFT ? Edge.RIGHT : Edge.LEFT;
    }

    long edgeLoss() {
        return section.edgeLoss().nanometers();
    }

    /** What its reference edge must give up, at least. */
    long dueEdgeLoss() {
        return frame.straighteningLoss(section.referenceEdge(), length());
    }

    /** Whether its reference edge is ripped straight first: it is not, or it gives up more than nothing. */
    boolean straightened() {
        return !frame.straight(section.referenceEdge()) || Tolerance.more(edgeLoss(), 0);
    }

    /** Whether the decimals of a plan's file leave that open; then it is as the steps say. */
    boolean straightenedOrNot() {
        return frame.straight(section.referenceEdge())
                && Math.abs(edgeLoss() - Tolerance.NANOMETERS) <= Tolerance.OF_PRINT;
    }

    List<PlacedStrip> strips() {
        return section.strips().stream()
                .map(strip -> new PlacedStrip(strip, this))
                .toList();
    }

    /** How far its strips reach from the raw reference edge. */
    long reach() {
        if (section.strips().isEmpty()) return edgeLoss();
        Strip last = section.strips().get(section.strips().size() - 1);
        return edgeLoss() + last.offset().nanometers() + last.width().nanometers();
    }
}
