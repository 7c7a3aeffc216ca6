/**
 * A plan read back from its file, as it was meant, and everything it names. Read {@link
 * ripwright.internal.meant.PlannedPieces} first. Uses {@code measure} to {@code plan}, the geometry and where replay finds
 * test blanks.
 */
@NullMarked
package ripwright.internal.meant;

import org.jspecify.annotations.NullMarked;
