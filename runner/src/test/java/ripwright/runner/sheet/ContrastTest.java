package ripwright.runner.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class ContrastTest {
    @Test
    void black_on_white_is_as_far_apart_as_can_be_and_a_middle_gray_just_enough_for_reading() {
        assertThat(Contrast.of("rgb(0, 0, 0)", "rgb(255, 255, 255)")).isEqualTo(21, within(1e-9));
        assertThat(Contrast.of("rgb(255, 255, 255)", "rgb(119, 119, 119)")).isEqualTo(4.48, within(0.005));
        assertThat(Contrast.of("rgb(9, 9, 9)", "rgb(9, 9, 9)")).isEqualTo(1);
    }
}
