package ripwright.runner.sheet.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import ripwright.Ending;
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
                        "No plan that makes as much can cost less than 190.00: at most 7.65 could be saved.",
                        "The boards cost 171.20, less 29.85 for the offcuts kept, plus 56.30 for labor. Of 15.82 board"
                                + " feet cut, 6.93 become finished parts, 3.10 go back to the rack, 5.80 are lost.",
                        "Time is an estimate from the job's own figures: 8 minutes for a rip setting, 2 for a rip, 0.75 for"
                                + " a crosscut. All lengths are in inches, to the nearest 1/64.");
    }

    @Test
    void a_floor_of_nothing_says_nothing() {
        assertThat(sentences(Fixtures.windowSeat(), cost("9.00", "0.00", "9.00", "0.00", "1.0000"))
                        .get(0))
                .isEqualTo("How cheap a plan could be is not known.");
    }

    @Test
    void why_the_search_went_no_further_is_said_unless_the_plan_is_proven_cheapest() {
        Cost open = cost("141.35", "0.00", "141.35", "139.40", "0.0138");
        String floor = "No plan that makes as much can cost less than 139.40: at most 1.95 could be saved.";

        assertThat(firstSentence(open, Ending.TIME_OVER))
                .isEqualTo(floor + " The search stopped at the time it was given.");
        assertThat(firstSentence(open, Ending.NOTHING_BETTER))
                .isEqualTo(floor + " The search ended when it had found nothing better for a while.");
        assertThat(firstSentence(open, Ending.STOPPED))
                .isEqualTo(floor + " The search was stopped early: more time may find a cheaper plan.");
        assertThat(firstSentence(
                        new Cost(
                                open.stock(),
                                open.salvage(),
                                open.labor(),
                                open.net(),
                                open.net(),
                                BigDecimal.ZERO,
                                true),
                        Ending.PROVEN))
                .isEqualTo("No plan that makes as much can cost less: this one is proven cheapest.");
    }

    private static String firstSentence(Cost cost, Ending ending) {
        return block(Fixtures.windowSeat(), cost, Optional.of(ending))
                .sentences()
                .get(0);
    }

    private static List<String> sentences(Job job, Cost cost) {
        return block(job, cost, Optional.empty()).sentences();
    }

    private static TitleBlock block(Job job, Cost cost, Optional<Ending> ending) {
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
        return new PageLayout(job, priced, ending).page().title();
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
