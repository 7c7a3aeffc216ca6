/**
 * Which test blanks prove which settings, and what wood they come from. Read {@link
 * ripwright.internal.testwood.TestPlan} first. Uses {@code pieces} and {@code geometry}.
 *
 * <p>Internal: not to be called from outside, and free to change.
 */
@NullMarked
package ripwright.internal.testwood;

import org.jspecify.annotations.NullMarked;
