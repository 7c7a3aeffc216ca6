package ripwright;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import ripwright.internal.firstfit.FirstFitDecreasing;
import ripwright.internal.geometry.Layout;
import ripwright.internal.model.JobNumbers;
import ripwright.internal.model.PricedLayout;
import ripwright.internal.model.TestWoodCost;
import ripwright.internal.sequence.Sequencer;
import ripwright.internal.testwood.NoTestWoodException;
import ripwright.job.Job;
import ripwright.measure.Money;
import ripwright.plan.Plan;
import ripwright.saw.TestRip;
import ripwright.testing.JobBuilder;
import ripwright.testing.RandomJobs;
import ripwright.testing.Seeds;

/** What the search reckons for test blanks, beside what the plan then pays for them. */
class ProvingTest {
    private static final long CENTS = 30_000; // millionths: the plan's figures are rounded one by one

    @Test
    void the_search_finds_no_wood_where_the_plan_finds_none() {
        int[] proved = new int[2];
        Seeds.each(400, RandomJobs::proved, job -> {
            List<Layout> layouts = FirstFitDecreasing.plan(job);
            boolean found = proving(job, layouts).missing() == 0;
            assertThat(found).isEqualTo(plan(job, layouts).isPresent());
            proved[found ? 1 : 0]++;
        });
        assertThat(proved[0]).isGreaterThan(20);
        assertThat(proved[1]).isGreaterThan(100);
    }

    /** Defects on what is left are not looked at, and the plan looks further: so not exactly. */
    @Test
    void the_search_reckons_about_what_the_plan_pays() {
        int[] alike = new int[2];
        Seeds.each(400, 200, RandomJobs::proved, job -> {
            List<Layout> layouts = FirstFitDecreasing.plan(job);
            Optional<Plan> plan = plan(job, layouts);
            if (plan.isEmpty()) return false;
            long untested = plan(JobBuilder.like(job).testRip(TestRip.NONE).build(), layouts)
                    .orElseThrow()
                    .cost()
                    .net()
                    .movePointRight(6)
                    .longValueExact();
            long tested = plan.get().cost().net().movePointRight(6).longValueExact();
            long difference = tested - untested - proving(job, layouts).millionths() - testRips(job, plan.get());
            alike[Math.abs(difference) <= CENTS ? 1 : 0]++;
            return true;
        });
        assertThat(alike[1]).isGreaterThan(20 * alike[0]);
    }

    private static long testRips(Job job, Plan plan) {
        if (job.testRip().tries() == 0) return 0;
        double perMinute = job.laborOrUnpaid().perHour().doubleValue() / 60 * JobNumbers.MONEY;
        return Math.round(plan.settings().size()
                * perMinute
                * job.laborOrUnpaid().ripMinutes().doubleValue());
    }

    private static TestWoodCost.Cost proving(Job job, List<Layout> layouts) {
        JobNumbers numbers = new JobNumbers(job);
        @Nullable PricedLayout[] all = new @Nullable PricedLayout[numbers.boards()];
        for (Layout layout : layouts) all[layout.board()] = numbers.priced(layout);
        return numbers.proving().of(all);
    }

    private static Optional<Plan> plan(Job job, List<Layout> layouts) {
        try {
            return Optional.of(new Sequencer(job, layouts, Money.ZERO).plan());
        } catch (NoTestWoodException e) {
            return Optional.empty();
        }
    }
}
