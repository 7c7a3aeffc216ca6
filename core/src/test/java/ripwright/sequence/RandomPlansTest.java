package ripwright.sequence;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;
import ripwright.job.Job;
import ripwright.measure.Money;
import ripwright.pattern.Layout;
import ripwright.plan.Plan;
import ripwright.saw.TestRip;
import ripwright.testing.HandRule;
import ripwright.testing.LayoutCost;
import ripwright.testing.RandomJobs;
import ripwright.testing.Seeds;

/** Drawn jobs, cut by the hand rule. */
class RandomPlansTest {
    @Test
    void without_tests_a_plan_costs_what_a_plain_reckoning_of_its_layouts_says() {
        Seeds.each(600, RandomJobs::growing, drawn -> {
            Job job = untested(drawn);
            List<Layout> layouts = HandRule.plan(job);
            LayoutCost plain = new LayoutCost(job, layouts);
            Plan plan = new Sequencer(job, layouts, plain.net()).plan();

            assertThat(plan.cost().stock()).isEqualTo(plain.stock().rounded());
            assertThat(plan.cost().salvage()).isEqualTo(plain.salvage().rounded());
            assertThat(plan.cost().labor()).isEqualTo(plain.labor().rounded());
        });
    }

    /** Widths along a taper are rounded down to the nanometer here: worth less than a millionth. */
    @Test
    void boards_and_settings_add_up_to_the_plain_net_cost() {
        Seeds.each(600, RandomJobs::growing, job -> {
            List<Layout> layouts = HandRule.plan(job);
            SawTime time = new SawTime(job);
            int settings = new Cutting(job, layouts, new Ids(job)).settings().size();
            Money net = time.cost(time.settingMinutes(settings, 0));
            for (Layout layout : layouts) net = net.plus(new BoardCost(job).of(layout));

            BigFraction difference =
                    net.minus(new LayoutCost(job, layouts).net()).value();
            assertThat(difference.abs()).isLessThan(BigFraction.of(1, 1_000_000));
        });
    }

    @Test
    void layouts_in_any_order_give_the_same_plan() {
        Seeds.each(200, RandomJobs::growing, drawn -> {
            Job job = untested(drawn);
            List<Layout> layouts = HandRule.plan(job);
            List<Layout> reversed = new ArrayList<>(layouts);
            Collections.reverse(reversed);

            assertThat(new Sequencer(job, reversed, Money.ZERO).plan())
                    .isEqualTo(new Sequencer(job, layouts, Money.ZERO).plan());
        });
    }

    private static Job untested(Job job) {
        return new Job(
                job.name(),
                job.units(),
                job.saw(),
                TestRip.NONE,
                job.keep(),
                job.prices(),
                job.salvage(),
                job.labor(),
                job.stack(),
                job.rack(),
                job.parts(),
                job.limits());
    }
}
