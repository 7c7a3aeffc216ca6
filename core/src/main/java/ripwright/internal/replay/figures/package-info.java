/**
 * The rules for a plan's figures. Read {@link ripwright.internal.replay.figures.FigureRules} first.
 *
 * <p>Internal: not to be called from outside, and free to change.
 */
@NullMarked
package ripwright.internal.replay.figures;

import org.jspecify.annotations.NullMarked;
