package ripwright.shared;

import java.util.List;
import java.util.stream.IntStream;
import ripwright.Options;
import ripwright.job.Job;

/**
 * Plans several jobs from one stack. Keeps no state; safe on any thread. The jobs must agree on units, saws, test rip, keep,
 * salvage, labor and prices, and a board that several of them list must be the same in each; no two may have one name, and no
 * part may come from certain boards only. The stack is all boards that any of them lists.
 *
 * <p>A call blocks until all plans are there. When it is cancelled or its thread interrupted, each planning that is still due
 * ends within moments with the best it has, and the plans that come are as whole as any; the thread is still interrupted
 * afterwards. A listener hears of every single planning. What {@link ripwright.Planner#plan} throws comes through.
 */
public final class SharedPlanner {
    private SharedPlanner() {}

    /**
     * Plans them one after the other, as they come: each from what those before it leave, within its own seconds.
     *
     * @param jobs one at least
     * @throws DisagreeingJobsException when they do not agree
     */
    public static SharedPlan inTurn(List<Job> jobs, Options options) {
        new Agreement(jobs).require();
        return new PlanningOrders(jobs, options, 1)
                .oneByOne(IntStream.range(0, jobs.size()).boxed().toList());
    }

    /**
     * Plans them so that all of them together make the most and cost the least: the best of several orders, each with
     * every job planned for itself and with every job planned in view of those after it. It takes up to four times the
     * seconds that the jobs are given.
     *
     * @param jobs one at least
     * @throws DisagreeingJobsException when they do not agree
     */
    public static SharedPlan together(List<Job> jobs, Options options) {
        new Agreement(jobs).require();
        return new BestOrder(jobs, options).best();
    }
}
