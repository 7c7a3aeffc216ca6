package ripwright.internal.replay.leftovers;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import ripwright.internal.replay.BoardFrame;
import ripwright.internal.replay.CrosscutLine;
import ripwright.internal.replay.PlacedBoard;
import ripwright.internal.replay.PlacedSection;
import ripwright.internal.replay.PlacedStrip;
import ripwright.internal.replay.ReplayIndex;
import ripwright.stock.Edge;

/** What is left of a board, a section and a strip before test blanks are cut from it. */
public final class ReplayLeftovers {
    private final long ripKerf;
    private final long crosscutKerf;
    private final boolean over; // whether sections reach into end trims, and blanks lie between squared ends

    public ReplayLeftovers(ReplayIndex pieces) {
        this.ripKerf = pieces.ripKerf();
        this.crosscutKerf = pieces.crosscutKerf();
        this.over = pieces.over() > 0;
    }

    /** The full-width pieces beside its sections, with the raw ends that stay on them. */
    public List<ReplayLeftover> of(PlacedBoard board) {
        List<ReplayLeftover> left = new ArrayList<>();
        for (CrosscutLine.Span along : board.line(crosscutKerf).free()) {
            boolean atNearEnd = along.from() == 0;
            boolean atFarEnd = along.to() == board.frame().length();
            left.add(new ReplayLeftover(
                    board.id(),
                    board.frame(),
                    along,
                    0,
                    board.frame().widthAt(along.from()),
                    board.frame().widthAt(along.to()),
                    atNearEnd ? board.board().endTrim().near().nanometers() : 0,
                    atFarEnd ? board.board().endTrim().far().nanometers() : 0,
                    atNearEnd && board.frame().squareNear(),
                    atFarEnd && board.frame().squareFar(),
                    board.frame().straight(Edge.LEFT),
                    board.frame().straight(Edge.RIGHT),
                    false));
        }
        return left;
    }

    /** The piece beside its last strip: what is left of the width less one rip kerf, rough far edge and all. */
    public Optional<ReplayLeftover> of(PlacedSection section) {
        long start = section.reach() + ripKerf;
        if (section.strips().isEmpty() || section.length() <= 0 || section.width() <= start) return Optional.empty();
        boolean ridesLeft = section.section().referenceEdge() == Edge.LEFT;
        BoardFrame frame = section.frame();
        return Optional.of(new ReplayLeftover(
                section.id(),
                frame,
                section.span(),
                ridesLeft ? start : 0,
                frame.widthAt(section.from()) - start,
                frame.widthAt(section.to()) - start,
                rawNear(section),
                rawFar(section),
                squareNear(section),
                squareFar(section),
                ridesLeft || frame.straight(Edge.LEFT),
                !ridesLeft || frame.straight(Edge.RIGHT),
                true));
    }

    /** The pieces beside its blanks; the whole strip when it carries none. */
    public List<ReplayLeftover> of(PlacedStrip strip) {
        List<ReplayLeftover> left = new ArrayList<>();
        PlacedSection section = strip.section();
        for (CrosscutLine.Span along : strip.line(crosscutKerf).free()) {
            boolean atNearEnd = along.from() == section.from(); // else a cut of a blank made it
            boolean atFarEnd = along.to() == section.to();
            if (strip.width() > 0)
                left.add(new ReplayLeftover(
                        strip.id(),
                        section.frame(),
                        along,
                        strip.left(),
                        strip.width(),
                        strip.width(),
                        atNearEnd ? rawNear(section) : 0,
                        atFarEnd ? rawFar(section) : 0,
                        atNearEnd ? squareNear(section) : over,
                        atFarEnd ? squareFar(section) : over,
                        true,
                        true,
                        true));
        }
        return left;
    }

    private long rawNear(PlacedSection section) {
        return over && section.startsAtBoardEnd() ? section.frame().clearFrom() : 0;
    }

    private long rawFar(PlacedSection section) {
        return over && section.endsAtBoardEnd()
                ? section.board().endTrim().far().nanometers()
                : 0;
    }

    private static boolean squareNear(PlacedSection section) {
        return section.startsAtBoardEnd() && section.frame().squareNear();
    }

    private static boolean squareFar(PlacedSection section) {
        return section.endsAtBoardEnd() && section.frame().squareFar();
    }
}
