/**
 * Linear programs that grow. Read {@link ripwright.internal.lp.Simplex} first. Uses nothing of ours.
 *
 * <p>Internal: not to be called from outside, and free to change.
 */
@NullMarked
package ripwright.internal.lp;

import org.jspecify.annotations.NullMarked;
