/**
 * Measures the planner against the hand rule and plain OptaPlanner. Read {@link ripwright.bench.Bench} first. Uses the door
 * of {@code core} and what its tests draw jobs with.
 */
@NullMarked
package ripwright.bench;

import org.jspecify.annotations.NullMarked;
