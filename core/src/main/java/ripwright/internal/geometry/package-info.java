/**
 * The geometry of boards, once: what edges, crook and taper leave of a length, where pieces and leftovers of a layout
 * lie, what a leftover is worth, how often the saws cut. Read {@link ripwright.internal.geometry.Layout} first. Uses
 * {@code measure} to {@code job}.
 *
 * <p>Internal: not to be called from outside, and free to change.
 */
@NullMarked
package ripwright.internal.geometry;

import org.jspecify.annotations.NullMarked;
