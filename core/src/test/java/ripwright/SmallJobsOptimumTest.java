package ripwright;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import ripwright.job.Job;
import ripwright.plan.Plan;
import ripwright.saw.Labor;
import ripwright.saw.TestRip;
import ripwright.testing.CpSatOptimum;
import ripwright.testing.Feature;
import ripwright.testing.Features;
import ripwright.testing.JobBuilder;
import ripwright.testing.JobSize;
import ripwright.testing.Optimum;
import ripwright.testing.RandomJobs;
import ripwright.testing.Seeds;

/**
 * Small jobs against the optimum that the general solver CP-SAT (OR-Tools) finds and proves on a formulation of its own,
 * made from the contract alone.
 */
class SmallJobsOptimumTest {
    private static final BigDecimal CENT = new BigDecimal("0.01"); // a plan's figures are rounded one by one

    @ParameterizedTest
    @ValueSource(ints = {0, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15, 16, 17, 18, 19})
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
        Job job = RandomJobs.random(random, JobSize.tiny(random), features, 4);
        Optimum optimum = CpSatOptimum.stock(job);
        Plan plan = Planner.plan(job, Options.defaults().withMostRecuts(20_000));
        assertThat(plan.tally().parts()).isEqualTo(optimum.made().rounded());
        assertThat(plan.cost().stock()).isEqualTo(optimum.cost().rounded());
        assertThat(plan.status() == Plan.Status.COMPLETE).isEqualTo(optimum.complete());
        if (optimum.complete())
            assertThat(plan.cost().bound()).isLessThanOrEqualTo(optimum.cost().rounded());
    }

    /** The wood of test blanks, which the reference leaves out, only ever costs more. */
    @Test
    void the_bound_holds_where_settings_are_tested() {
        Seeds.each(6, 3, (random, size) -> {
            Features features = Features.of(Feature.TRIES, Feature.RACK, Feature.SALVAGE, Feature.LABOR, Feature.TRIMS);
            Job job = RandomJobs.random(random, JobSize.tiny(random), features, 8);
            Optimum optimum = CpSatOptimum.net(testRipsPaid(job));
            Plan plan = Planner.plan(job, Options.defaults().withMostRecuts(300));
            if (!optimum.complete() || plan.status() == Plan.Status.SHORT) return false;
            BigDecimal least = optimum.cost().rounded();
            assertThat(plan.testBlanks()).isNotEmpty();
            assertThat(plan.cost().bound()).isLessThanOrEqualTo(least.add(CENT));
            assertThat(plan.cost().net()).isGreaterThanOrEqualTo(least.subtract(CENT));
            return true;
        });
    }

    /** The job without test blanks, a rip more for every setting. */
    private static Job testRipsPaid(Job job) {
        Labor labor = job.laborOrUnpaid();
        Labor paid = new Labor(
                labor.perHour(),
                labor.settingMinutes().add(labor.ripMinutes()),
                labor.ripMinutes(),
                labor.crosscutMinutes());
        return JobBuilder.like(job).testRip(TestRip.NONE).labor(paid).build();
    }
}
