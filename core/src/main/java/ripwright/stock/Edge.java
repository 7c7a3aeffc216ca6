package ripwright.stock;

/** A long edge of a board, seen from its marked end, face side up. */
public enum Edge {
    /** The edge y is measured from. */
    LEFT,
    /** The other. */
    RIGHT
}
