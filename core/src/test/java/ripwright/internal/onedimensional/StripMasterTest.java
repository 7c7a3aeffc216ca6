package ripwright.internal.onedimensional;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.Optional;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import ripwright.internal.model.JobNumbers;
import ripwright.job.Job;
import ripwright.measure.Money;
import ripwright.testing.FewestStrips;
import ripwright.testing.RippedJobs;
import ripwright.testing.Seeds;

public class StripMasterTest {
    @Test
    void a_floor_is_under_the_best_of_all_ways_to_share_the_blanks() {
        Seeds.each(300, 180, (random, size) -> {
            Job job = RippedJobs.random(random, 1 + random.nextInt(Math.min(8, 1 + size)), 1 + random.nextInt(5));
            Optional<Money> least = FewestStrips.cost(job);
            if (least.isEmpty()) return false;
            long lowerBound = 0;
            for (RippedStock stock : RippedStock.all(new JobNumbers(job)))
                lowerBound += solved(stock).lowerBound(1);
            assertThat(BigDecimal.valueOf(lowerBound - 10, 6))
                    .isLessThanOrEqualTo(BigDecimal.valueOf(least.get().value().doubleValue()));
            return true;
        });
    }

    @Test
    void the_strips_it_takes_fit_their_boards_and_cost_what_its_floor_says() {
        Seeds.each(100, 90, (random, size) -> {
            Job job = RippedJobs.random(random, 4 * size, 8 * size);
            boolean whole = false;
            for (RippedStock stock : RippedStock.all(new JobNumbers(job))) whole |= check(stock);
            return whole;
        });
    }

    /** Whether the whole bill is made. */
    private static boolean check(RippedStock stock) {
        StripMaster program = solved(stock);
        double[] made = new double[stock.parts()];
        double[] used = new double[stock.boards()];
        double cost = 0;
        for (StripMaster.Weighted one : program.strips()) {
            int board = one.strip().boardType();
            int[] types = one.strip().partTypes();
            assertThat(Arrays.stream(types).map(stock::ticks).sum()).isLessThanOrEqualTo(stock.room(board));
            for (int k : types) {
                assertThat(stock.takes(board, k)).isTrue();
                made[k] += one.weight();
            }
            used[board] += one.weight();
            cost += one.weight() * stock.cost(board);
        }
        for (int s = 0; s < used.length; s++) assertThat(used[s]).isLessThan(stock.copies()[s] + 1e-3);
        for (int k = 0; k < made.length; k++) if (made[k] < stock.wanted()[k] - 1e-3) return false;
        assertThat((double) program.lowerBound(1)).isCloseTo(cost, Percentage.withPercentage(0.01));
        return true;
    }

    private static StripMaster solved(RippedStock stock) {
        StripMaster program = new StripMaster(stock);
        program.solve(1, Long.MAX_VALUE, () -> false);
        return program;
    }
}
