package ripwright.replay;

import java.util.List;
import ripwright.job.Job;
import ripwright.plan.Plan;

/**
 * A job and a plan for it that was made by hand.
 *
 * @param job the job
 * @param plan its plan
 */
record Sample(Job job, Plan plan) {
    List<String> faults() {
        return messages(Replay.faults(job, plan));
    }

    static List<String> messages(List<Fault> faults) {
        return faults.stream().map(Fault::message).toList();
    }
}
