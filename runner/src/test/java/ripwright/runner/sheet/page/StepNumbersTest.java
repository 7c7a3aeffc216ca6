package ripwright.runner.sheet.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class StepNumbersTest {
    @Test
    void one_step_is_named_alone() {
        assertThat(StepNumbers.of(List.of(7))).isEqualTo("Step 7");
    }

    @Test
    void three_in_a_row_are_a_stretch_and_two_are_not() {
        assertThat(StepNumbers.of(List.of(9, 3, 4, 5, 8, 3))).isEqualTo("Steps 3 to 5, 8, 9");
    }
}
