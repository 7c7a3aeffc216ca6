package ripwright.stock;

import ripwright.measure.Length;

/**
 * Wood given up along the grain where a section reaches for a raw end, the trimming cut's kerf included.
 *
 * @param near at the marked end
 * @param far at the other
 */
public record EndTrim(Length near, Length far) {
    /** Nothing given up. */
    public static final EndTrim NONE = new EndTrim(Length.ZERO, Length.ZERO);

    /** The same once the board is turned end for end. */
    public EndTrim turned() {
        return new EndTrim(/* near= */ far, /* far= */ near);
    }
}
