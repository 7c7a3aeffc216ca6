/**
 * Knapsacks and subset sums over whole ticks. Read {@link ripwright.internal.knapsack.TickGrid} first. Uses {@code
 * measure}.
 *
 * <p>Internal: not to be called from outside, and free to change.
 */
@NullMarked
package ripwright.internal.knapsack;

import org.jspecify.annotations.NullMarked;
