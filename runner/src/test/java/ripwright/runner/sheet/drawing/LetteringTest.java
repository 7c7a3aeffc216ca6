package ripwright.runner.sheet.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class LetteringTest {
    @Test
    void digits_take_over_half_their_size() {
        assertThat(Lettering.LABEL.width("1234567890")).isEqualTo(5_004); // 10 x 0.556 x 9 pt
    }

    @Test
    void a_text_that_fits_is_left_alone() {
        assertThat(Lettering.LABEL.fitted("seat rail", 4_000)).isEqualTo("seat rail");
    }

    @Test
    void a_text_too_long_is_cut_to_fit_and_says_so() {
        String fitted = Lettering.LABEL.fitted("seat rail of the window seat", 4_000);

        assertThat(fitted).startsWith("seat rail").endsWith("\u2026");
        assertThat(Lettering.LABEL.width(fitted)).isLessThanOrEqualTo(4_000);
    }

    @Test
    void a_text_of_which_too_little_fits_is_left_out() {
        assertThat(Lettering.LABEL.fitted("seat rail", 1_000)).isEmpty();
    }

    @Test
    void a_character_outside_the_basic_plane_is_cut_whole() {
        String fitted = Lettering.LABEL.fitted("\uD83E\uDEB5".repeat(9), 7_000);

        assertThat(fitted).isEqualTo("\uD83E\uDEB5".repeat(5) + "\u2026");
    }
}
