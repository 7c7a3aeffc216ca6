/**
 * The whole answer, as CONTRACT.md has it. Read {@link ripwright.plan.Plan} first. Its records check nothing: whether a plan
 * holds is for {@code replay}. Lengths are exact, money is to the cent in the currency of the job's prices, board feet are to
 * four decimals. All but the builder is immutable, safe on any thread. Uses {@code measure} to {@code job}.
 */
@NullMarked
package ripwright.plan;

import org.jspecify.annotations.NullMarked;
