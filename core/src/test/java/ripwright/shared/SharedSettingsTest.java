package ripwright.shared;

import static org.assertj.core.api.Assertions.assertThat;
import static ripwright.testing.JobBuilder.maple;
import static ripwright.testing.JobBuilder.part;

import java.math.BigDecimal;
import java.util.List;
import org.junit.jupiter.api.Test;
import ripwright.Options;
import ripwright.job.Job;
import ripwright.job.Keep;
import ripwright.measure.Length;
import ripwright.testing.JobBuilder;

public class SharedSettingsTest {
    private static final Options SHORT_SEARCH = Options.defaults().withMostRecuts(100);

    private static JobBuilder job(String name) {
        return new JobBuilder(name).offcuts(new Keep(Length.inches("12"), Length.inches("2")), new BigDecimal("0.5"));
    }

    private static List<String> rows(Job... jobs) {
        SharedSettings settings = new SharedSettings(SharedPlanner.inTurn(List.of(jobs), SHORT_SEARCH));
        return settings.rows().stream()
                .map(row -> row.run() + ": " + row.width() + " "
                        + row.uses().stream()
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
        Job two = job("Two")
                .stack(maple("B", "5 1/8", "30"))
                .parts(part("slat", 1, "30", "3"), part("lip", 1, "30", "2"))
                .build();
        assertThat(rows(one, two))
                .containsExactly(
                        "1: " + in("4") + " [0x1]", "1: " + in("3") + " [0x1, 1x1]", "1: " + in("2") + " [1x1]");
    }

    /** Both jobs need 3 in; the second one's is cut from what lies beside the first one's strip. */
    @Test
    void wood_beside_a_strip_is_in_time_for_settings_no_wider() {
        Job one = job("One")
                .stack(maple("A", "7 1/8", "20"))
                .parts(part("rail", 1, "20", "3"))
                .build();
        Job same = job("Same")
                .stack(maple("A", "7 1/8", "20"))
                .parts(part("slat", 1, "20", "3"))
                .build();
        assertThat(rows(one, same)).containsExactly("1: " + in("3") + " [0x1, 1x1]");
    }

    /** The second job finds only the 4 in beside the first one's strip of 3 in, and rips that to 4 and 2 1/2 in. */
    @Test
    void wood_that_comes_too_late_for_a_setting_gets_a_run_of_its_own() {
        Job one = job("One")
                .stack(maple("A", "7 1/8", "20"), maple("B", "5 1/8", "30"))
                .parts(part("rail", 1, "20", "3"), part("slat", 1, "30", "3"), part("lip", 1, "30", "2"))
                .build();
        Job two = job("Two")
                .stack(maple("C", "5 1/8", "30"))
                .parts(part("board", 1, "20", "4"), part("slat", 1, "30", "3"), part("lip", 1, "30", "2"))
                .build();
        assertThat(rows(one, two))
                .containsExactly(
                        "1: " + in("3") + " [0x2, 1x1]", "1: " + in("2") + " [0x1, 1x1]", "2: " + in("4") + " [1x1]");
    }

    @Test
    void a_rest_of_a_strip_wanted_as_wide_as_it_is_needs_no_setting_again() {
        Job one = job("One")
                .stack(maple("A", "4", "60").ripped(false))
                .parts(part("rail", 1, "20", "4"))
                .build();
        Job two = job("Two")
                .stack(maple("A", "4", "60"))
                .parts(part("rail", 1, "20", "4"))
                .build();
        assertThat(rows(one, two)).containsExactly("1: " + in("4") + " [0x1, 1x1]");
    }

    @Test
    void where_nothing_is_saved_it_is_job_by_job() {
        Job one = job("One")
                .stack(maple("A", "3", "20"))
                .parts(part("rail", 1, "20", "3"))
                .build();
        Job two = job("Two")
                .stack(maple("B", "4", "20"))
                .parts(part("board", 1, "20", "4"))
                .build();
        assertThat(rows(one, two)).containsExactly("1: " + in("3") + " [0x1]", "2: " + in("4") + " [1x1]");
    }
}
