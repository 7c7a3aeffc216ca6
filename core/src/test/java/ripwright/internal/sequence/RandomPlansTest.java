package ripwright.internal.sequence;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import ripwright.internal.firstfit.FirstFitDecreasing;
import ripwright.internal.geometry.Layout;
import ripwright.internal.testwood.NoTestWoodException;
import ripwright.job.Job;
import ripwright.measure.Money;
import ripwright.plan.Plan;
import ripwright.replay.Replay;
import ripwright.saw.TestRip;
import ripwright.testing.JobBuilder;
import ripwright.testing.LayoutCost;
import ripwright.testing.RandomJobs;
import ripwright.testing.Seeds;

/** Drawn jobs, cut by first-fit decreasing. */
public class RandomPlansTest {
    @Test
    void every_plan_can_be_made_and_reckons_as_the_contract_says() {
        Seeds.each(1_000, 300, RandomPlansTest::proved, job -> {
            Optional<Plan> plan = plan(job);
            plan.ifPresent(there -> assertThat(Replay.faults(job, there)).isEmpty());
            return plan.filter(there -> !there.testBlanks().isEmpty()).isPresent();
        });
    }

    @Test
    void without_tests_a_plan_costs_what_a_plain_reckoning_of_its_layouts_says() {
        Seeds.each(600, RandomJobs::growing, drawn -> {
            Job job = untested(drawn);
            List<Layout> layouts = FirstFitDecreasing.plan(job);
            LayoutCost plain = new LayoutCost(job, layouts);
            Plan plan = new Sequencer(job, layouts, plain.net()).plan();

            assertThat(plan.cost().stock()).isEqualTo(plain.stock().rounded());
            assertThat(plan.cost().salvage()).isEqualTo(plain.salvage().rounded());
            assertThat(plan.cost().labor()).isEqualTo(plain.labor().rounded());
        });
    }

    @Test
    void layouts_in_any_order_give_the_same_plan() {
        Seeds.each(200, RandomJobs::growing, drawn -> {
            Job job = untested(drawn);
            List<Layout> layouts = FirstFitDecreasing.plan(job);
            List<Layout> reversed = new ArrayList<>(layouts);
            Collections.reverse(reversed);

            assertThat(new Sequencer(job, reversed, Money.ZERO).plan())
                    .isEqualTo(new Sequencer(job, layouts, Money.ZERO).plan());
        });
    }

    /** A drawn job, every other one with all settings tested. */
    private static Job proved(SplittableRandom random, int size) {
        return random.nextBoolean() ? RandomJobs.growing(random, size) : RandomJobs.proved(random, size);
    }

    /** Empty when first-fit decreasing leaves no wood to prove a setting on. */
    private static Optional<Plan> plan(Job job) {
        try {
            return Optional.of(new Sequencer(job, FirstFitDecreasing.plan(job), Money.ZERO).plan());
        } catch (NoTestWoodException e) {
            return Optional.empty();
        }
    }

    private static Job untested(Job job) {
        return JobBuilder.like(job).testRip(TestRip.NONE).build();
    }
}
