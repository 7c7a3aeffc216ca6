package ripwright.runner.rack;

import java.nio.file.Path;
import ripwright.plan.Plan;
import ripwright.runner.json.Booked;

/**
 * A plan that is booked now.
 *
 * @param plan the plan
 * @param entry what was booked
 * @param left the file with the boards left
 * @param rack the rack's file
 * @param finished whether a run before had booked it already and was cut off before it was done with it
 */
public record Settled(Plan plan, Booked entry, Path left, Path rack, boolean finished) {}
