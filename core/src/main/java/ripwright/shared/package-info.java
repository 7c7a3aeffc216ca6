/**
 * Several jobs from one stack. Read {@link ripwright.shared.SharedPlanner} first. Uses the planner.
 */
@NullMarked
package ripwright.shared;

import org.jspecify.annotations.NullMarked;
