/**
 * The pieces of a plan, under the ids they get. Read {@link ripwright.internal.pieces.CutPieces} first. Uses {@code
 * geometry} and {@code plan}.
 *
 * <p>Internal: not to be called from outside, and free to change.
 */
@NullMarked
package ripwright.internal.pieces;

import org.jspecify.annotations.NullMarked;
