/**
 * The shop sheet of a plan: one printable page that stands alone, and its drawings. Read
 * {@link ripwright.runner.sheet.Sheet} first. Data goes one way: {@code place}, {@code drawing}, {@code page}, and last the
 * templates, which alone know markup.
 */
@NullMarked
package ripwright.runner.sheet;

import org.jspecify.annotations.NullMarked;
