/**
 * The rules for the steps and their order. Read {@link ripwright.internal.replay.steps.StepForm} first.
 *
 * <p>Internal: not to be called from outside, and free to change.
 */
@NullMarked
package ripwright.internal.replay.steps;

import org.jspecify.annotations.NullMarked;
