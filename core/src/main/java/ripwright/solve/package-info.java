/**
 * The search for cheap layouts. Read {@link ripwright.solve.Search} first. Uses {@code measure} to {@code bound}.
 */
@NullMarked
package ripwright.solve;

import org.jspecify.annotations.NullMarked;
