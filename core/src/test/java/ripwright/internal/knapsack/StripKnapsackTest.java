package ripwright.internal.knapsack;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import org.junit.jupiter.api.Test;
import ripwright.testing.Seeds;

public class StripKnapsackTest {
    @Test
    void a_strip_is_worth_as_much_as_the_best_of_all_choices_of_its_blanks() {
        Seeds.each(400, (random, size) -> {
            int types = 1 + random.nextInt(4);
            int longest = 1 + random.nextInt(3 * size + 1);
            int[] ticks = random.ints(types, 1, size + 2).toArray();
            StripKnapsack knapsack = new StripKnapsack(ticks, longest);
            for (int again = 0; again < 2; again++) {
                long[] prices = random.longs(types, 0, 9).toArray();
                int[] wanted = random.ints(types, 0, 5).toArray();
                knapsack.price(prices, wanted);
                for (int room = 0; room <= longest; room++) {
                    long best = best(ticks, prices, wanted, 0, room);
                    assertThat(knapsack.worth(room)).isEqualTo(best);
                    check(knapsack.blanks(room), ticks, prices, wanted, room, best);
                }
            }
        });
    }

    private static long best(int[] ticks, long[] prices, int[] wanted, int type, int room) {
        if (type == ticks.length) return 0;
        long best = 0;
        for (int n = 0; n <= wanted[type] && n * ticks[type] <= room; n++)
            best = Math.max(best, n * prices[type] + best(ticks, prices, wanted, type + 1, room - n * ticks[type]));
        return best;
    }

    private static void check(int[] blanks, int[] ticks, long[] prices, int[] wanted, int room, long worth) {
        assertThat(Arrays.stream(blanks).map(k -> ticks[k]).sum()).isLessThanOrEqualTo(room);
        assertThat(Arrays.stream(blanks).mapToLong(k -> prices[k]).sum()).isEqualTo(worth);
        for (int k = 0; k < ticks.length; k++) {
            int type = k;
            assertThat(Arrays.stream(blanks).filter(b -> b == type).count()).isLessThanOrEqualTo(wanted[k]);
        }
    }
}
