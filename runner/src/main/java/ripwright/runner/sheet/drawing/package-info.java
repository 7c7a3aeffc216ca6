/**
 * Drawings as plain geometry on paper, and how a board becomes one. Read {@link ripwright.runner.sheet.drawing.Drawing}
 * first. Knows no markup; uses {@code place} and the records of {@code core}.
 */
@NullMarked
package ripwright.runner.sheet.drawing;

import org.jspecify.annotations.NullMarked;
