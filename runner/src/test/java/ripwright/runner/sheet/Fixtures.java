package ripwright.runner.sheet;

import ripwright.job.Job;
import ripwright.plan.Plan;

/** The jobs and plans of these tests, for the packages below this one. */
public final class Fixtures {
    private Fixtures() {}

    /** See {@link WindowSeat}. */
    public static Job windowSeat() {
        return WindowSeat.job();
    }

    /** The plan of {@link #windowSeat}. */
    public static Plan windowSeatPlan() {
        return WindowSeat.plan();
    }
}
