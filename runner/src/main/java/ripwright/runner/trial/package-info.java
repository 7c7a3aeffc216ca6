/**
 * Parts tried at several widths: every width planned, and what it comes to beside the others. Read {@link
 * ripwright.runner.trial.WidthTrial} first. Uses {@code core}'s door, {@code csv} and {@code tree} to write, {@code sheet} to
 * draw.
 */
@NullMarked
package ripwright.runner.trial;

import org.jspecify.annotations.NullMarked;
