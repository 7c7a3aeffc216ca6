package ripwright.internal.geometry;

/**
 * What is left of a board, a section or a strip, kept or wasted.
 *
 * @param of what it is left of
 * @param section the section's place in the layout; -1 when it is left of the board
 * @param strip the strip's place in the section; -1 when it is left of the board or of the section
 * @param piece where it lies
 * @param nearEnd whether its near end can be cut off before any blank is cut
 * @param farEnd whether its far end can
 */
public record Leftover(Of of, int section, int strip, Piece piece, boolean nearEnd, boolean farEnd) {
    /** What a leftover is left of. */
    public enum Of {
        /** A full-width piece beside a board's sections. */
        BOARD,
        /** The piece beside a section's last strip. */
        SECTION,
        /** A piece beside a strip's blanks, or a strip without any. */
        STRIP
    }

    static Leftover ofBoard(Piece piece) {
        return new Leftover(Of.BOARD, -1, -1, piece, true, true);
    }

    static Leftover ofSection(int section, Piece piece) {
        return new Leftover(Of.SECTION, section, -1, piece, true, true);
    }
}
