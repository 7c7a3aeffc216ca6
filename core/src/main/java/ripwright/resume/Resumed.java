package ripwright.resume;

import java.util.Map;
import ripwright.job.Job;
import ripwright.plan.Plan;

/**
 * The rest of a job and how it is made.
 *
 * @param job the pieces in hand, as its stack and rack, and the parts not made yet
 * @param plan how those come from these
 * @param pieces what each board of the job is, by its id
 * @param ids those that the chain has used, this plan's too
 */
public record Resumed(Job job, Plan plan, Map<String, SizeNow> pieces, ChainIds ids) {
    /** Keeps a copy of the map. */
    public Resumed {
        pieces = Map.copyOf(pieces);
    }

    /** The first of its chain that is known. */
    public Resumed(Job job, Plan plan, Map<String, SizeNow> pieces) {
        this(job, plan, pieces, ChainIds.of(job, plan));
    }
}
