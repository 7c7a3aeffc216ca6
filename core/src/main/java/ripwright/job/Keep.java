package ripwright.job;

import ripwright.measure.Length;

/**
 * The smallest leftover worth a place on the rack.
 *
 * @param length along the grain, raw end trim not counted
 * @param width across, at the narrow end
 */
public record Keep(Length length, Length width) {
    /**
     * Refuses what has no size.
     *
     * @throws IllegalArgumentException when the length or the width is 0
     */
    public Keep {
        if (length.isZero()) throw new IllegalArgumentException("length is 0; it must be more.");
        if (width.isZero()) throw new IllegalArgumentException("width is 0; it must be more.");
    }
}
