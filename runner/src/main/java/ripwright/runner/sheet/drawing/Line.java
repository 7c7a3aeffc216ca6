package ripwright.runner.sheet.drawing;

/**
 * A straight line.
 *
 * @param pen what it is drawn with
 * @param from where it starts
 * @param to where it ends
 */
public record Line(Pen pen, Spot from, Spot to) {
    /** What a line is drawn with. */
    public enum Pen {
        /** Extension and dimension lines. */
        THIN,
        /** From a label to what is too small to hold it. */
        LEADER,
        /** The edge that rides the fence. */
        REFERENCE,
        /** The marked end of a board. */
        MARKED_END
    }
}
