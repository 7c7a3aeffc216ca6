package ripwright.runner.sheet.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import ripwright.job.Job;
import ripwright.plan.Cost;
import ripwright.plan.Plan;
import ripwright.runner.sheet.Fixtures;
import ripwright.saw.Labor;

class TitleFactsTest {
    @Test
    void paid_minutes_are_said_to_be_the_jobs_own_and_their_cost_is_told() {
        Job plain = Fixtures.windowSeat();
        Job paid = new Job(
                plain.name(),
                plain.units(),
                plain.saw(),
                plain.testRip(),
                plain.keep(),
                plain.prices(),
                plain.salvage(),
                Optional.of(new Labor(
                        new BigDecimal("40"), new BigDecimal("8.0"), new BigDecimal("2"), new BigDecimal("0.75"))),
                plain.stack(),
                plain.rack(),
                plain.parts(),
                plain.limits());

        assertThat(sentences(paid, cost("141.35", "56.30", "197.65", "190.00", "0.0388")))
                .containsSequence(
                        "No plan that makes as much can cost less than 190.00; at most 3.88 % of this one's cost could be"
                                + " saved. The boards cost 171.20, less 29.85 for the offcuts kept, plus 56.30 for labor.")
                .contains(
                        "Time is an estimate from the job's own figures: 8 minutes for a rip setting, 2 for a rip, 0.75 for"
                                + " a crosscut.");
    }

    @Test
    void a_plan_that_costs_nothing_has_no_share_to_save() {
        assertThat(sentences(Fixtures.windowSeat(), cost("0.00", "0.00", "0.00", "-3.00", "0.0000"))
                        .get(0))
                .startsWith("No plan that makes as much can cost less than -3.00. The boards");
    }

    private static List<String> sentences(Job job, Cost cost) {
        Plan plan = Fixtures.windowSeatPlan();
        Plan priced = new Plan(
                plan.job(),
                plan.units(),
                plan.status(),
                cost,
                plan.tally(),
                plan.boards(),
                plan.settings(),
                plan.testBlanks(),
                plan.steps(),
                plan.offcuts(),
                plan.shortages(),
                plan.cautions());
        return new PageLayout(job, priced).page().title().sentences();
    }

    private static Cost cost(String boards, String labor, String net, String bound, String gap) {
        return new Cost(
                new BigDecimal("171.20"),
                new BigDecimal("171.20").subtract(new BigDecimal(boards)),
                new BigDecimal(labor),
                new BigDecimal(net),
                new BigDecimal(bound),
                new BigDecimal(gap),
                false);
    }
}
