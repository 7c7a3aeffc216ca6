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
}
