package ripwright.internal.knapsack;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashSet;
import java.util.Set;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

public class StripFillTest {
    private final StripFill fill = new StripFill();

    @Test
    void a_fullest_filling_is_as_full_as_the_best_of_all_subsets() {
        for (int seed = 0; seed < 3_000; seed++) {
            SplittableRandom random = new SplittableRandom(seed);
            int[] blanks = random.ints(1 + seed / 300, 1, 5 + seed / 10).toArray();
            int capacity = random.nextInt(10 + seed);
            int filled = fill.fill(blanks, blanks.length, capacity);
            assertThat(filled).as("seed %d", seed).isEqualTo(fullestOfAllSubsets(blanks, capacity));
            assertThat(sumOfChosen(blanks)).as("seed %d", seed).isEqualTo(filled);
        }
    }

    @Test
    void a_filling_as_long_as_its_interval_leaves_nothing() {
        assertThat(fill.fill(new int[] {64, 64, 1}, 3, 129)).isEqualTo(129);
        assertThat(fill.chosenCount()).isEqualTo(3);
    }

    @Test
    void blanks_longer_than_the_interval_are_left() {
        assertThat(fill.fill(new int[] {130, 200}, 2, 129)).isZero();
        assertThat(fill.chosenCount()).isZero();
    }

    /** K7 of the trade facts, an identity: 96 in, parts of 22 1/2 in, kerf 1/8 in; 4 parts, in eighths of an inch. */
    @Test
    void four_parts_of_22_and_a_half_inches_come_out_of_96() {
        int withKerf = 22 * 8 + 4 + 1;
        assertThat(fill.fill(new int[] {withKerf, withKerf, withKerf, withKerf, withKerf}, 5, 96 * 8 + 1))
                .isEqualTo(4 * withKerf);
    }

    private int sumOfChosen(int[] blanks) {
        Set<Integer> distinct = new HashSet<>();
        int sum = 0;
        for (int i = 0; i < fill.chosenCount(); i++) {
            assertThat(distinct.add(fill.chosen(i))).isTrue();
            sum += blanks[fill.chosen(i)];
        }
        return sum;
    }

    private static int fullestOfAllSubsets(int[] blanks, int capacity) {
        int fullest = 0;
        for (int subset = 0; subset < 1 << blanks.length; subset++) {
            int sum = 0;
            for (int i = 0; i < blanks.length; i++) if ((subset >>> i & 1) != 0) sum += blanks[i];
            if (sum <= capacity) fullest = Math.max(fullest, sum);
        }
        return fullest;
    }
}
