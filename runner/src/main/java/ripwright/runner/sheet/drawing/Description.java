package ripwright.runner.sheet.drawing;

import java.util.stream.Collectors;
import ripwright.measure.Unit;
import ripwright.plan.Section;
import ripwright.plan.Strip;
import ripwright.runner.sheet.place.BoardMap;
import ripwright.runner.sheet.place.Piece;
import ripwright.runner.sheet.place.Piece.Fate;
import ripwright.stock.Edge;

/** Says in words what a board's drawing shows. */
final class Description {
    private final BoardMap map;
    private final Unit units;

    Description(BoardMap map, Unit units) {
        this.map = map;
        this.units = units;
    }

    String text() {
        StringBuilder text = new StringBuilder();
        text.append("The marked end is to the left; lengths in ")
                .append(units.symbol())
                .append('.');
        map.sections().forEach(placed -> section(text, placed.section()));
        listed(text, Fate.OFFCUT, "For the rack");
        listed(text, Fate.TEST_BLANK, "Test blanks");
        return text.toString();
    }

    private void section(StringBuilder text, Section section) {
        text.append(" Section ")
                .append(Isolated.name(section.id()))
                .append(" from ")
                .append(units.nearest(section.from()));
        text.append(" to ").append(units.nearest(section.to()));
        text.append(section.referenceEdge() == Edge.LEFT ? ", left" : ", right").append(" edge on the fence");
        section.strips().forEach(strip -> strip(text, strip));
        text.append('.');
    }

    private void strip(StringBuilder text, Strip strip) {
        text.append("; strip ")
                .append(Isolated.name(strip.id()))
                .append(", ")
                .append(units.nearest(strip.width()))
                .append(" wide");
        if (strip.blanks().isEmpty()) return;
        text.append(": ")
                .append(strip.blanks().stream()
                        .map(blank -> Isolated.name(blank.id()) + " " + Isolated.name(blank.part()))
                        .collect(Collectors.joining(", ")));
    }

    private void listed(StringBuilder text, Fate fate, String what) {
        String ids = map.pieces().stream()
                .filter(piece -> piece.fate() == fate)
                .map(Piece::id)
                .map(Isolated::name)
                .collect(Collectors.joining(", "));
        if (!ids.isEmpty())
            text.append(' ').append(what).append(": ").append(ids).append('.');
    }
}
