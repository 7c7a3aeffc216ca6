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
