/**
 * A proven lower bound under what any plan of a job can cost. Read {@link ripwright.internal.bound.LowerBound} first.
 * Uses {@code pricing}, {@code onedimensional}, {@code lp}.
 *
 * <p>Internal: not to be called from outside, and free to change.
 */
@NullMarked
package ripwright.internal.bound;

import org.jspecify.annotations.NullMarked;
