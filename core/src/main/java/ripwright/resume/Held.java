package ripwright.resume;

import ripwright.sequence.Piece;

/**
 * A piece of wood in hand.
 *
 * @param kind what it is
 * @param name its id in the plan; of a leftover that the plan does not list the id of what it is left of
 * @param of the id of the board, section or strip it is, or is what is left of, or was cut from
 * @param wood where it lay in its board
 */
public record Held(Kind kind, String name, String of, Piece wood) {
    /** What a piece in hand is. */
    public enum Kind {
        /** A board nothing is cut from. */
        BOARD,
        /** A section, or what is not ripped of it yet. */
        SECTION,
        /** A strip, or what is left of it. */
        STRIP,
        /** A blank. */
        BLANK,
        /** A test blank. */
        TEST_BLANK,
        /** A leftover the plan lists for the rack. */
        OFFCUT,
        /** A leftover the plan does not list. */
        REST
    }

    Held with(Piece other) {
        return new Held(kind, name, of, other);
    }

    /** Whether blanks, test blanks or offcuts can be cut from it. */
    boolean stock() {
        return kind != Kind.BLANK && kind != Kind.TEST_BLANK;
    }
}
