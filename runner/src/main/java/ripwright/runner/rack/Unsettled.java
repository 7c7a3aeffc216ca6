package ripwright.runner.rack;

import java.nio.file.Path;
import java.util.Optional;
import ripwright.plan.Plan;
import ripwright.settle.Settlement;

/**
 * A plan that is not booked any more.
 *
 * @param plan the plan
 * @param settlement what was taken back; empty when a run before had taken it back and was cut off before it was done
 * @param rack the rack's file
 * @param kept the file with the boards left, where somebody has changed it, so that it stays
 */
public record Unsettled(Plan plan, Optional<Settlement> settlement, Path rack, Optional<Path> kept) {}
