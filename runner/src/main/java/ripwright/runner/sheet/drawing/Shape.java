package ripwright.runner.sheet.drawing;

import java.util.List;
import java.util.stream.Collectors;

/**
 * A closed outline.
 *
 * @param look how it is drawn
 * @param corners its corners in turn
 */
public record Shape(Look look, List<Spot> corners) {
    /** How a shape is drawn. */
    public enum Look {
        /** The board as a whole. */
        BOARD,
        /** A piece somebody wants: a blank, an offcut, a test blank. */
        PIECE,
        /** A defect that bars every part. */
        DEFECT,
        /** A defect that bars show parts only. */
        SOUND_DEFECT,
        /** The wood a cut turns to dust: all black. */
        KERF,
        /** A mark, all black. */
        BLACK
    }

    /** Keeps a copy of the list. */
    public Shape {
        corners = List.copyOf(corners);
    }

    /** A rectangle. */
    static Shape box(Look look, Box box) {
        return new Shape(look, box.corners());
    }

    /** Its corners as SVG writes points. */
    public String points() {
        return corners.stream().map(spot -> spot.x() + "," + spot.y()).collect(Collectors.joining(" "));
    }
}
