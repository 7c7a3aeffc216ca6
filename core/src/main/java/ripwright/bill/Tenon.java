package ripwright.bill;

import ripwright.measure.Length;

/**
 * How far a part reaches beyond its shoulders.
 *
 * @param near at the end a plan gives as {@code from}
 * @param far at the other end
 */
public record Tenon(Length near, Length far) {
    /** It ends at its shoulders, or has none. */
    public static final Tenon NONE = new Tenon(Length.ZERO, Length.ZERO);

    /** That long at both ends. */
    public static Tenon both(Length each) {
        return new Tenon(each, each);
    }

    /** Both together. */
    public Length sum() {
        return near.plus(far);
    }
}
