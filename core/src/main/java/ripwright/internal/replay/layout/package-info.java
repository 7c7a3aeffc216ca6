/**
 * The rules for sections, strips and blanks. Read {@link ripwright.internal.replay.layout.SectionRules} first.
 *
 * <p>Internal: not to be called from outside, and free to change.
 */
@NullMarked
package ripwright.internal.replay.layout;

import org.jspecify.annotations.NullMarked;
