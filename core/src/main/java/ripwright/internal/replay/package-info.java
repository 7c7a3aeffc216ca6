/**
 * A plan as replay looks at it: everything by its id, and where it lies. Shares no arithmetic with what plans. Read
 * {@link ripwright.internal.replay.ReplayIndex} first. Uses {@code measure} to {@code job} and {@code plan}.
 *
 * <p>Internal: not to be called from outside, and free to change.
 */
@NullMarked
package ripwright.internal.replay;

import org.jspecify.annotations.NullMarked;
