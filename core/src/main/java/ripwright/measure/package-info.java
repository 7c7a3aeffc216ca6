/** Exact measures: lengths, areas, board feet, money. Read {@link ripwright.measure.Length} first. Uses nothing of ours. */
@NullMarked
package ripwright.measure;

import org.jspecify.annotations.NullMarked;
