/** The whole answer, as CONTRACT.md has it. Read {@link ripwright.plan.Plan} first. Uses {@code measure} to {@code job}. */
@NullMarked
package ripwright.plan;

import org.jspecify.annotations.NullMarked;
