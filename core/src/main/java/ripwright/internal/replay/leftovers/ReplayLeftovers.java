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

    public ReplayLeftovers(ReplayIndex pieces) {
        this.ripKerf = pieces.ripKerf();
        this.crosscutKerf = pieces.crosscutKerf();
    }

    /** The full-width pieces beside its sections, with the raw ends that stay on them. */
    public List<ReplayLeftover> of(PlacedBoard board) {
        List<ReplayLeftover> left = new ArrayList<>();
        for (CrosscutLine.Span along : board.line(crosscutKerf).free()) {
            left.add(new ReplayLeftover(
                    board.id(),
                    board.frame(),
                    along,
                    0,
                    board.frame().widthAt(along.from()),
                    board.frame().widthAt(along.to()),
                    along.from() == 0 ? board.board().endTrim().near().nanometers() : 0,
                    along.to() == board.frame().length()
                            ? board.board().endTrim().far().nanometers()
                            : 0,
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
                0,
                0,
                ridesLeft || frame.straight(Edge.LEFT),
                !ridesLeft || frame.straight(Edge.RIGHT),
                true));
    }

    /** The pieces beside its blanks; the whole strip when it carries none. */
    public List<ReplayLeftover> of(PlacedStrip strip) {
        List<ReplayLeftover> left = new ArrayList<>();
        for (CrosscutLine.Span along : strip.line(crosscutKerf).free())
            if (strip.width() > 0)
                left.add(new ReplayLeftover(
                        strip.id(),
                        strip.section().frame(),
                        along,
                        strip.left(),
                        strip.width(),
                        strip.width(),
                        0,
                        0,
                        true,
                        true,
                        true));
        return left;
    }
}
