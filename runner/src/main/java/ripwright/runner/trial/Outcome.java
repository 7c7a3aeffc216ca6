package ripwright.runner.trial;

import java.math.BigDecimal;
import java.util.HashSet;
import java.util.Set;
import ripwright.measure.Length;
import ripwright.plan.Plan;
import ripwright.plan.Shortage;
import ripwright.plan.Step;

/**
 * What a job comes to with the parts on trial at one width.
 *
 * @param width their finished width
 * @param partsWanted how many parts the bill has
 * @param plan the plan
 */
public record Outcome(Length width, int partsWanted, Plan plan) {
    /** How many parts are made. */
    int partsMade() {
        return partsWanted - plan.shortages().stream().mapToInt(Shortage::count).sum();
    }

    /** Whether every part is made. */
    boolean complete() {
        return plan.status() == Plan.Status.COMPLETE;
    }

    /** How many boards are cut, offcuts from the rack counted too. */
    int boards() {
        return plan.boards().size();
    }

    int ripSettings() {
        return plan.settings().size();
    }

    int stopSettings() {
        Set<Length> stops = new HashSet<>();
        for (Step step : plan.steps()) step.stop().ifPresent(stops::add);
        return stops.size();
    }

    int offcuts() {
        return plan.offcuts().size();
    }

    BigDecimal net() {
        return plan.cost().net();
    }

    BigDecimal bound() {
        return plan.cost().bound();
    }
}
