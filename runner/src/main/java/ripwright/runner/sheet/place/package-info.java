/**
 * Where every piece and every cut of a plan lies on its board. Read {@link ripwright.runner.sheet.place.BoardMap} first.
 * Uses the records of {@code core}.
 */
@NullMarked
package ripwright.runner.sheet.place;

import org.jspecify.annotations.NullMarked;
