package ripwright;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import ripwright.job.Breakdown;
import ripwright.job.Job;
import ripwright.measure.Length;
import ripwright.plan.Plan;
import ripwright.replay.Replay;
import ripwright.testing.CpSatOptimum;
import ripwright.testing.Feature;
import ripwright.testing.Features;
import ripwright.testing.JobSize;
import ripwright.testing.LeftLongJobs;
import ripwright.testing.Optimum;
import ripwright.testing.RandomJobs;
import ripwright.testing.Seeds;

/**
 * Sections left long at their ends: plans of drawn jobs replay, and small ones are held against the optimum that CP-SAT finds on
 * a formulation of its own. {@code -Dripwright.leftLong=1000} draws more jobs.
 */
class LeftLongTest {
    private static final int COUNT = Integer.getInteger("ripwright.leftLong", 60);
    private static final BigDecimal CENT = new BigDecimal("0.01"); // a plan's figures are rounded one by one

    @Test
    void every_plan_replays() {
        Seeds.each(COUNT, (random, size) -> {
            Job job = LeftLongJobs.growing(random, size);
            Plan plan = Planner.plan(job, Options.defaults().withMostRecuts(60));
            assertThat(Replay.faults(job, plan)).isEmpty();
            assertThat(plan.cost().bound()).isLessThanOrEqualTo(plan.cost().net());
        });
    }

    @ParameterizedTest
    @ValueSource(ints = {0, 1, 2, 3, 4, 5})
    void stock_cost_is_the_optimum(int seed) {
        SplittableRandom random = new SplittableRandom(seed);
        Features features = Features.some(
                random,
                Feature.DEFECTS,
                Feature.TAPER,
                Feature.EDGES,
                Feature.CROOK,
                Feature.TRIMS,
                Feature.TOGETHER,
                Feature.SHOW,
                Feature.SAW_LIMITS,
                Feature.SHORT_STOCK);
        Job job = leftLong(RandomJobs.random(random, JobSize.tiny(random), features, 4), random);
        Optimum optimum = CpSatOptimum.stock(job);
        Plan plan = Planner.plan(job, Options.defaults().withMostRecuts(20_000));
        assertThat(plan.tally().parts()).isEqualTo(optimum.made().rounded());
        assertThat(plan.cost().stock()).isEqualTo(optimum.cost().rounded());
        if (optimum.complete())
            assertThat(plan.cost().bound()).isLessThanOrEqualTo(optimum.cost().rounded());
    }

    @Test
    void the_bound_is_no_higher_than_the_optimum_and_the_cost_no_lower() {
        Seeds.each(8, 3, (random, size) -> {
            Features features = random.nextInt(3) > 0
                    ? Features.of(Feature.LABOR, Feature.EDGES, Feature.TRIMS, Feature.RIPPED)
                    : Features.of(Feature.SALVAGE, Feature.LABOR, Feature.EDGES, Feature.TRIMS);
            Job job = leftLong(RandomJobs.random(random, JobSize.tiny(random), features, 8), random);
            if (job.parts().size() > 3) return false; // the solver is slow
            Optimum optimum = CpSatOptimum.net(job);
            Plan plan = Planner.plan(job, Options.defaults().withMostRecuts(300));
            if (!optimum.complete() || plan.status() == Plan.Status.SHORT) return false;
            BigDecimal least = optimum.cost().rounded();
            assertThat(plan.cost().bound()).isLessThanOrEqualTo(least.add(CENT));
            assertThat(plan.cost().net()).isGreaterThanOrEqualTo(least.subtract(CENT));
            return true;
        });
    }

    private static Job leftLong(Job job, SplittableRandom random) {
        Length over = Length.inches(random.nextBoolean() ? "1/2" : "1");
        return job.toBuilder().breakdown(new Breakdown(over)).build();
    }
}
