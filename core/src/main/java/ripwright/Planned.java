package ripwright;

import ripwright.plan.Plan;

/**
 * A plan and how it was come by.
 *
 * @param plan the plan
 * @param ending why the search went no further
 */
public record Planned(Plan plan, Ending ending) {}
