package ripwright.resume;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import ripwright.Options;
import ripwright.Planner;
import ripwright.job.Job;
import ripwright.plan.Plan;
import ripwright.replay.Replay;
import ripwright.testing.RandomJobs;
import ripwright.testing.Seeds;

/** Random mishaps at random steps of drawn jobs. */
class ResumeRandomTest {
    private static final Options SHORT_SEARCH = Options.defaults().withMostRecuts(20);

    @Test
    void random_mishaps_at_random_steps_always_yield_a_plan_that_replays() {
        Seeds.each(60, (random, size) -> {
            System.out.println("size " + size);
            Job job = RandomJobs.growing(random, size / 2);
            Plan plan = Planner.plan(job, SHORT_SEARCH);
            resumed(random, job, plan, 2);
        });
    }

    private static void resumed(SplittableRandom random, Job job, Plan plan, int times) {
        RandomMishap mishap = new RandomMishap(random, job, plan);
        Resume resume = new Resume(job, plan, mishap.report());
        Optional<Resumed> rest = resume.planned(left -> Planner.plan(left, SHORT_SEARCH));
        if (rest.isEmpty()) return;
        assertThat(Replay.faults(rest.get().job(), rest.get().plan())).isEmpty();
        assertThat(ChainReplay.faults(job, plan, mishap.report(), rest.get())).isEmpty();
        if (times > 1) resumed(random, rest.get().job(), rest.get().plan(), times - 1);
    }
}
