/**
 * Several jobs from one stack. Read {@link ripwright.shared.SharedPlanner} first. Keeps no state, and what it gives is
 * immutable: safe on any thread. Uses the planner.
 */
@NullMarked
package ripwright.shared;

import org.jspecify.annotations.NullMarked;
