/**
 * Exact measures: lengths in whole nanometers, areas, board feet, money. Immutable, safe on any thread. Read {@link
 * ripwright.measure.Length} first. Uses nothing of ours.
 */
@NullMarked
package ripwright.measure;

import org.jspecify.annotations.NullMarked;
