/**
 * What the sheet says, as plain texts in tables, in the order of the work. Read {@link ripwright.runner.sheet.page.Page}
 * first. Knows no markup; uses {@code drawing}, {@code place} and the records of {@code core}.
 */
@NullMarked
package ripwright.runner.sheet.page;

import org.jspecify.annotations.NullMarked;
