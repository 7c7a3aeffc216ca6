/**
 * The search for cheap layouts. Read {@link ripwright.internal.search.Search} first. Uses {@code firstfit}, {@code recreate},
 * {@code onedimensional}, {@code bound}, {@code proof}.
 *
 * <p>Internal: not to be called from outside, and free to change.
 */
@NullMarked
package ripwright.internal.search;

import org.jspecify.annotations.NullMarked;
