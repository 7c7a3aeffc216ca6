/**
 * A first answer by first-fit decreasing, below which no search falls. Read {@link
 * ripwright.internal.firstfit.FirstFitDecreasing} first. Uses {@code geometry}.
 *
 * <p>Internal: not to be called from outside, and free to change.
 */
@NullMarked
package ripwright.internal.firstfit;

import org.jspecify.annotations.NullMarked;
