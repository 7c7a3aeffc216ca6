package ripwright;

import static org.assertj.core.api.Assertions.assertThat;
import static ripwright.testing.JobBuilder.maple;
import static ripwright.testing.JobBuilder.part;

import java.math.BigDecimal;
import java.util.List;
import org.junit.jupiter.api.Test;
import ripwright.job.Job;
import ripwright.job.Keep;
import ripwright.measure.Length;
import ripwright.testing.JobBuilder;

class SharedSettingsTest {
    private static final Options SHORT_SEARCH = Options.defaults().withMostRecuts(100);

    private static JobBuilder job(String name) {
        return new JobBuilder(name)
                .offcuts(new Keep(Length.inches("12"), Length.inches("2")), new BigDecimal("0.5"));
    }

    private static List<String> rows(Job... jobs) {
        SharedSettings settings = new SharedSettings(SharedPlanner.inTurn(List.of(jobs), SHORT_SEARCH));
        return settings.rows().stream()
                .map(row -> row.run() + ": " + row.width() + " " + row.uses().stream()
                        .map(use -> use.turn() + "x" + use.strips())
                        .toList())
                .toList();
    }

    private static Length in(String inches) {
        return Length.inches(inches);
    }

    @Test
    void a_width_that_two_jobs_need_is_set_once() {
        Job one = job("One")
                .stack(maple("A", "7 1/8", "20"), maple("B", "5 1/8", "30"))
                .parts(part("wide", 1, "20", "4"), part("rail", 1, "20", "3"))
                .build();
        Job two = job("Two").stack(maple("B", "5 1/8", "30")).parts(part("slat", 1, "30", "3"), part("lip", 1, "30", "2")).build();
        assertThat(rows(one, two))
                .containsExactly("1: " + in("4") + " [0x1]", "1: " + in("3") + " [0x1, 1x1]", "1: " + in("2") + " [1x1]");
    }

    /** The first job leaves 4 in beside its strip of 3 in: wood for 4 in comes too late for the run, for 2 in it is in time. */
    @Test
    void wood_beside_a_strip_is_in_time_for_narrower_settings_only() {
        Job one = job("One").stack(maple("A", "7 1/8", "20")).parts(part("rail", 1, "20", "3")).build();
        Job wide = job("Wide").stack(maple("A", "7 1/8", "20")).parts(part("board", 1, "20", "4")).build();
        Job narrow = job("Narrow").stack(maple("A", "7 1/8", "20")).parts(part("slat", 1, "20", "2")).build();
        assertThat(rows(one, wide)).containsExactly("1: " + in("3") + " [0x1]", "2: " + in("4") + " [1x1]");
        assertThat(rows(one, narrow)).containsExactly("1: " + in("3") + " [0x1]", "1: " + in("2") + " [1x1]");
    }

    @Test
    void full_width_offcuts_are_there_from_the_start_and_rests_of_strips_only_after_the_run() {
        Job full = job("Full").stack(maple("A", "4", "60")).parts(part("rail", 1, "20", "3")).build();
        Job after = job("After").stack(maple("A", "4", "60")).parts(part("board", 1, "20", "4")).build();
        assertThat(rows(full, after)).containsExactly("1: " + in("4") + " [1x1]", "1: " + in("3") + " [0x1]");
    }
}
