package ripwright.stock;

import ripwright.measure.Length;
import ripwright.measure.Name;

/**
 * A rectangle of a board that some parts must avoid, in the board's frame: x along the grain from the marked end, y
 * across from the board's own left edge.
 *
 * @param from where it starts along the grain
 * @param to where it ends along the grain
 * @param left where it starts across
 * @param right where it ends across
 * @param kind what it is, in the shop's words
 * @param blocks which parts must avoid it
 */
public record Defect(Length from, Length to, Length left, Length right, String kind, Blocks blocks) {
    /** Which parts a defect bars. */
    public enum Blocks {
        /** Only parts that show: the wood is sound. */
        SHOW,
        /** Every part. */
        ALL
    }

    /**
     * Refuses a defect without length or width. Whether it lies on its board is for {@link Board}.
     *
     * @throws IllegalArgumentException when {@code kind} is no {@link Name}, {@code to} is not beyond {@code from}, or
     *     {@code right} not beyond {@code left}
     */
    public Defect {
        Name.require("kind of a defect", kind);
        if (!to.exceeds(from))
            throw new IllegalArgumentException("The defect ends at " + to + ", not beyond its start at " + from + ".");
        if (!right.exceeds(left))
            throw new IllegalArgumentException(
                    "The defect's right side is at " + right + ", not beyond its left side at " + left + ".");
    }
}
