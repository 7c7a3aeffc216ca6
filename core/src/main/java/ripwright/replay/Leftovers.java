package ripwright.replay;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import ripwright.stock.Edge;

/** What is left of a board, a section and a strip before test blanks are cut from it. */
final class Leftovers {
    private final long ripKerf;
    private final long crosscutKerf;

    Leftovers(Pieces pieces) {
        this.ripKerf = pieces.ripKerf();
        this.crosscutKerf = pieces.crosscutKerf();
    }

    /** The full-width pieces beside its sections, with the raw ends that stay on them. */
    List<Leftover> of(PlacedBoard board) {
        List<Leftover> left = new ArrayList<>();
        for (Line.Span along : board.line(crosscutKerf).free()) {
            left.add(new Leftover(
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
    Optional<Leftover> of(PlacedSection section) {
        long start = section.reach() + ripKerf;
        if (section.strips().isEmpty() || section.length() <= 0 || section.width() <= start) return Optional.empty();
        boolean ridesLeft = section.section().referenceEdge() == Edge.LEFT;
        Frame frame = section.frame();
        return Optional.of(new Leftover(
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
    List<Leftover> of(PlacedStrip strip) {
        List<Leftover> left = new ArrayList<>();
        for (Line.Span along : strip.line(crosscutKerf).free())
            if (strip.width() > 0)
                left.add(new Leftover(
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
