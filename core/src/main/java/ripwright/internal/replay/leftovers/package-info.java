/**
 * The rules for what is left of boards, sections and strips. Read {@link
 * ripwright.internal.replay.leftovers.OffcutRules} first.
 *
 * <p>Internal: not to be called from outside, and free to change.
 */
@NullMarked
package ripwright.internal.replay.leftovers;

import org.jspecify.annotations.NullMarked;
