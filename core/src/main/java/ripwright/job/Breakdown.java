package ripwright.job;

import ripwright.measure.Length;

/**
 * How boards are cut into sections before they are ripped.
 *
 * @param over what each end of a section is left long by, to be cut off square once it is ripped; 0 cuts sections to the
 *     exact length of their parts
 */
public record Breakdown(Length over) {
    /** Sections are cut to the exact length of their parts. */
    public static final Breakdown EXACT = new Breakdown(Length.ZERO);

    /** Whether sections are left long, and their strips squared. */
    public boolean leavesOver() {
        return !over.isZero();
    }
}
