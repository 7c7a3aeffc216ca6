package ripwright;

import ripwright.job.Job;
import ripwright.plan.Plan;

/**
 * Plans how a job's boards become its parts: the one door of this library. Keeps no state; safe on any thread.
 *
 * <p>A call blocks until the plan is there. What computes on other threads meanwhile, as many as the job allows with the
 * caller's own, has ended by then. When the caller's thread is interrupted, before or meanwhile, the best plan so far comes
 * within moments, as whole as any; the thread is still interrupted afterwards.
 */
public final class Planner {
    private Planner() {}

    /**
     * Plans {@code job} within its limits. Where these name no seconds, the same seed gives the same plan on as many threads.
     *
     * @throws ripwright.replay.ReplayException when the plan does not stand up to replay: a fault of ours
     * @throws IllegalStateException when a thread of the planning failed; its cause says why
     */
    public static Plan plan(Job job) {
        return plan(job, Options.defaults());
    }

    /**
     * Plans {@code job} within its limits and as {@code options} say. What the job cannot make is listed as short; that is no
     * error.
     *
     * @throws ripwright.replay.ReplayException when the plan does not stand up to replay: a fault of ours
     * @throws IllegalStateException when a thread of the planning failed; its cause says why
     */
    public static Plan plan(Job job, Options options) {
        try (Planning planning = new Planning(job, options)) {
            return planning.plan();
        }
    }
}
