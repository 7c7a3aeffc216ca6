/**
 * Proves a plan the cheapest by branch and price over sets of boards, or finds a cheaper one. Read {@link
 * ripwright.internal.proof.OptimalityProof} first. Uses {@code bound}, {@code pricing}, {@code lp}.
 *
 * <p>Internal: not to be called from outside, and free to change.
 */
@NullMarked
package ripwright.internal.proof;

import org.jspecify.annotations.NullMarked;
