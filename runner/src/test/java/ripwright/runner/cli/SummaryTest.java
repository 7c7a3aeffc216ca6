package ripwright.runner.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import ripwright.job.Job;
import ripwright.json.JobText;
import ripwright.json.Plans;
import ripwright.json.tree.WrongInputException;
import ripwright.plan.Plan;

class SummaryTest {
    private static Job job() throws WrongInputException, IOException {
        return JobText.cabinet()
                .with("\"count\": 2", "\"count\": 5")
                .with("\"in\"", "\"mm\"")
                .with("\"ash-1\"", "\"b\"")
                .board(", \"count\": 2")
                .job();
    }

    @Test
    @Tag("locale")
    void a_short_plan_says_what_to_buy() throws WrongInputException, IOException {
        assertThat(new Summary(job(), Plans.strange()).text()).isEqualTo("""
                Chest </script>: short, 2 of 5 parts.
                  boards        2 of 2 from the stack
                  cost          -3.90 = stock 0.10 - offcuts kept 5.00 + labor 1.00
                  bound         No plan that makes as much can be cheaper; that is proven.
                  yield         0.0 % of 0.0 board feet; 0.0 go to the rack
                  settings      1 rip, 0 stop
                  cuts          0 rips, 2 crosscuts, about 0 min
                  to the rack   <b>&\\: Ahorn äöü, 27 x 120 to 111.1 x 800 mm
                  short         2 x lid: buy 0.1 board feet of any wood that mills to 20 mm, no board under 40 x 400 mm
                                1 x leg: buy 12.5 board feet of beech or oak that mills to 20 mm, no board under 40 x 400 mm
                """);
    }

    @Test
    void a_wood_to_buy_that_may_only_be_misspelled_is_told_with_the_one_there_is()
            throws WrongInputException, IOException {
        Job job = new JobText(JobText.CABINET.replace("\"ash\"", "\"beach\"")).job();
        assertThat(new Summary(job, Plans.strange()).text())
                .contains(
                        "of beech or oak that mills to 20 mm, no board under 40 x 400 mm. No board is of that wood. Did"
                                + " you mean \"beach\"?\n")
                .contains("of any wood that mills to 20 mm, no board under 40 x 400 mm\n");
    }

    @Test
    void a_long_list_ends_with_how_many_more_there_are() throws WrongInputException, IOException {
        Plan plan = Plans.strange();
        Plan much = new Plan(
                plan.job(),
                plan.units(),
                plan.status(),
                plan.cost(),
                plan.tally(),
                plan.boards(),
                plan.settings(),
                plan.testBlanks(),
                plan.steps(),
                Collections.nCopies(15, plan.offcuts().get(0)),
                List.of(),
                plan.cautions());
        assertThat(new Summary(job(), much).text()).contains("                and 3 more, see the sheet\n");
    }
}
