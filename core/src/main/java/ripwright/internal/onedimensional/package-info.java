/**
 * Ripped stock, where only lengths matter: the cutting stock problem in one dimension. Read {@link
 * ripwright.internal.onedimensional.RippedStock} first. Uses {@code model}, {@code knapsack}, {@code lp}.
 *
 * <p>Internal: not to be called from outside, and free to change.
 */
@NullMarked
package ripwright.internal.onedimensional;

import org.jspecify.annotations.NullMarked;
