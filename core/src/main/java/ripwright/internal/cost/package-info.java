/**
 * What a plan costs and takes, and what to buy for what is short. Read {@link ripwright.internal.cost.PlanCost} first.
 * Uses {@code pieces}, {@code testwood}.
 *
 * <p>Internal: not to be called from outside, and free to change.
 */
@NullMarked
package ripwright.internal.cost;

import org.jspecify.annotations.NullMarked;
