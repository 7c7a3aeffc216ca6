/**
 * Turns the layouts a search found into the whole plan: order of work, offcuts, cautions. Read {@link
 * ripwright.internal.sequence.Sequencer} first. Uses {@code geometry}, {@code pieces}, {@code testwood}, {@code cost}.
 *
 * <p>Internal: not to be called from outside, and free to change.
 */
@NullMarked
package ripwright.internal.sequence;

import org.jspecify.annotations.NullMarked;
