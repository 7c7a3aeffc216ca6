package ripwright.resume;

import ripwright.internal.geometry.Piece;

/** A piece of wood in hand, as the steps done made it. Two are equal when they say the same. */
public final class HeldPiece {
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

    private record Facts(Kind kind, String name, String of, Piece wood) {}

    private final Facts facts;

    HeldPiece(Kind kind, String name, String of, Piece wood) {
        facts = new Facts(kind, name, of, wood);
    }

    /** What it is. */
    public Kind kind() {
        return facts.kind;
    }

    /** Its id in the plan; of a leftover that the plan does not list the id of what it is left of. */
    public String name() {
        return facts.name;
    }

    /** The id of the board, section or strip it is, or is what is left of, or was cut from. */
    public String of() {
        return facts.of;
    }

    /** Where it lay in its board. */
    Piece wood() {
        return facts.wood;
    }

    HeldPiece with(Piece other) {
        return new HeldPiece(facts.kind, facts.name, facts.of, other);
    }

    /** Whether blanks, test blanks or offcuts can be cut from it. */
    boolean stock() {
        return facts.kind != Kind.BLANK && facts.kind != Kind.TEST_BLANK;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof HeldPiece piece && piece.facts.equals(facts);
    }

    @Override
    public int hashCode() {
        return facts.hashCode();
    }

    @Override
    public String toString() {
        return facts.kind + " " + facts.name;
    }
}
