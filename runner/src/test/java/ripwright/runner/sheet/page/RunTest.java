package ripwright.runner.sheet.page;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import ripwright.measure.Length;
import ripwright.plan.Step;
import ripwright.plan.Step.Does;
import ripwright.runner.sheet.page.Run.Work;

class RunTest {
    @Test
    void steps_at_one_fence_position_are_one_run() {
        assertThat(Run.of(List.of(
                        step(1, Does.TEST, "R1"),
                        step(2, Does.RIP, "R1"),
                        step(3, Does.CHECK, "R1"),
                        step(4, Does.RIP, "R1"),
                        step(5, Does.RIP, "R2"))))
                .extracting(Run::work, Run::key, run -> run.steps().size())
                .containsExactly(tuple(Work.RIP, "R1", 4), tuple(Work.RIP, "R2", 1));
    }

    @Test
    void a_test_blank_cut_before_a_setting_belongs_to_it() {
        assertThat(Run.of(List.of(
                        step(1, Does.RIP, "R1"),
                        step(2, Does.TRIM, ""),
                        step(3, Does.TRIM, ""),
                        step(4, Does.TEST, "R2"),
                        step(5, Does.RIP, "R2"))))
                .extracting(Run::key, run -> run.steps().size())
                .containsExactly(tuple("R1", 1), tuple("R2", 4));
    }

    @Test
    void a_trim_among_the_rips_of_a_setting_stays_there() {
        assertThat(Run.of(List.of(step(1, Does.TEST, "R1"), step(2, Does.TRIM, ""), step(3, Does.RIP, "R1"))))
                .extracting(run -> run.steps().size())
                .containsExactly(3);
    }

    @Test
    void a_trim_after_the_rips_is_a_run_of_its_own() {
        assertThat(Run.of(List.of(step(1, Does.RIP, "R1"), step(2, Does.TRIM, ""), stop(3, "30"), stop(4, "28"))))
                .extracting(Run::work)
                .containsExactly(Work.RIP, Work.TRIM, Work.STOP, Work.STOP);
    }

    @Test
    void blanks_without_a_stop_are_cut_to_fit() {
        assertThat(Run.of(List.of(stop(1, "30"), fit(2), fit(3))))
                .extracting(Run::work, run -> run.steps().size())
                .containsExactly(tuple(Work.STOP, 1), tuple(Work.FIT, 2));
    }

    @Test
    void blanks_that_are_not_cut_are_a_run_of_their_own() {
        assertThat(Run.of(List.of(step(1, Does.BLANK, ""), stop(2, "30"))))
                .extracting(Run::work)
                .containsExactly(Work.WHOLE, Work.STOP);
    }

    private static Step fit(int n) {
        return new Step(
                n,
                Optional.of(Step.Saw.CROSSCUT),
                Does.BLANK,
                Optional.empty(),
                Optional.empty(),
                "strip",
                List.of(),
                Optional.of(Length.ZERO));
    }

    private static Step step(int n, Does does, String setting) {
        Optional<String> id = setting.isEmpty() ? Optional.empty() : Optional.of(setting);
        return new Step(n, Optional.empty(), does, id, Optional.empty(), "piece", List.of(), Optional.empty());
    }

    private static Step stop(int n, String inches) {
        return new Step(
                n,
                Optional.of(Step.Saw.CROSSCUT),
                Does.BLANK,
                Optional.empty(),
                Optional.of(Length.inches(inches)),
                "strip",
                List.of(),
                Optional.empty());
    }
}
