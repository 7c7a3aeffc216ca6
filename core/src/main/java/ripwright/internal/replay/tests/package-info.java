/**
 * The rules for rip settings and the test blanks that prove them. Read {@link
 * ripwright.internal.replay.tests.SettingRules} first.
 *
 * <p>Internal: not to be called from outside, and free to change.
 */
@NullMarked
package ripwright.internal.replay.tests;

import org.jspecify.annotations.NullMarked;
