/**
 * The pricing problem: the best layout of every board when each blank has a price. Read {@link
 * ripwright.internal.pricing.PricingProblem} first. Uses {@code model}, {@code knapsack}.
 *
 * <p>Internal: not to be called from outside, and free to change.
 */
@NullMarked
package ripwright.internal.pricing;

import org.jspecify.annotations.NullMarked;
