package ripwright.testing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class SeedsTest {
    @Test
    void sizes_start_at_one_and_never_shrink() {
        List<Integer> sizes = new ArrayList<>();
        Seeds.each(101, (random, size) -> sizes.add(size));
        assertThat(sizes).hasSize(101).isSorted().startsWith(1, 2, 2, 2, 3).endsWith(11);
    }

    @Test
    void a_seed_draws_the_same_case_every_time() {
        List<Long> first = new ArrayList<>();
        List<Long> second = new ArrayList<>();
        Seeds.each(20, (random, size) -> first.add(random.nextLong()));
        Seeds.each(30, (random, size) -> second.add(random.nextLong()));
        assertThat(second.subList(0, 20)).isEqualTo(first).doesNotHaveDuplicates();
    }

    @Test
    void a_failure_names_its_seed_and_prints_its_case() {
        assertThatThrownBy(() -> Seeds.each(
                        50,
                        (random, size) -> "case of size " + size,
                        text -> assertThat(text).isNotEqualTo("case of size 3")))
                .isInstanceOf(AssertionError.class)
                .hasMessageStartingWith("Seed 4, size 3 (again alone with -Dripwright.seed=4). ")
                .hasMessageContaining("Case: case of size 3");
    }

    @Test
    void a_property_that_speaks_of_too_few_cases_fails() {
        Seeds.each(50, 25, (random, size) -> size > 5);
        assertThatThrownBy(() -> Seeds.each(50, 26, (random, size) -> size > 5))
                .isInstanceOf(AssertionError.class)
                .hasMessage("Of 50 cases the property spoke of 25; of 26 at least it should.");
        assertThatThrownBy(() -> Seeds.each(50, 1, (random, size) -> size, size -> false))
                .isInstanceOf(AssertionError.class)
                .hasMessage("Of 50 cases the property spoke of 0; of 1 at least it should.");
    }

    @Test
    void a_failure_of_a_property_of_some_cases_names_its_seed_and_prints_its_case_too() {
        assertThatThrownBy(() -> Seeds.each(50, 0, (random, size) -> "case of size " + size, text -> {
                    assertThat(text).isNotEqualTo("case of size 3");
                    return false;
                }))
                .isInstanceOf(AssertionError.class)
                .hasMessageStartingWith("Seed 4, size 3 (again alone with -Dripwright.seed=4). ")
                .hasMessageContaining("Case: case of size 3");
    }

    @Test
    void a_trial_that_throws_is_a_failure_with_its_cause() {
        IllegalStateException cause = new IllegalStateException("no wood");
        assertThatThrownBy(() -> Seeds.each(3, (random, size) -> {
                    throw cause;
                }))
                .isInstanceOf(AssertionError.class)
                .hasMessageStartingWith("Seed 0, size 1")
                .hasCause(cause);
    }
}
