package ripwright.replay;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class GoodPlansTest {
    @Test
    void one_clear_board_cut_in_three_strips_holds() {
        assertThat(BenchRails.sample().faults()).isEmpty();
    }

    @Test
    void tapered_rough_crooked_and_ripped_boards_with_test_rips_and_fitted_parts_hold() {
        assertThat(HallBench.sample().faults()).isEmpty();
    }

    @Test
    void a_short_plan_in_millimeters_holds() {
        assertThat(ShortShelves.sample().faults()).isEmpty();
    }

    @Test
    void a_test_blank_trimmed_off_a_strip_between_two_settings_holds() {
        assertThat(DrawerBox.sample().faults()).isEmpty();
    }

    @Test
    void a_strip_off_a_tapered_board_holds() {
        assertThat(TaperedLeg.sample().faults()).isEmpty();
    }
}
