package ripwright;

import ripwright.job.Job;
import ripwright.plan.Plan;

/** Plans how a job's boards become its parts: the one door of this library. Keeps no state; safe on any thread. */
public final class Planner {
    private Planner() {}

    /** Plans {@code job} within its limits. On one thread the seed fixes the path of the search, the clock its end. */
    public static Plan plan(Job job) {
        return plan(job, Options.defaults());
    }

    /**
     * Plans {@code job} within its limits and as {@code options} say.
     *
     * @throws ripwright.replay.ReplayException when the plan does not stand up to replay: a fault of ours
     */
    public static Plan plan(Job job, Options options) {
        try (Planning planning = new Planning(job, options)) {
            return planning.plan();
        }
    }
}
