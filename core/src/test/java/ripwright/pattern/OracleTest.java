package ripwright.pattern;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import org.junit.jupiter.api.Test;
import ripwright.job.Job;
import ripwright.testing.Seeds;

class OracleTest {
    /** The oracle and what it needs, for one job. */
    private record Asked(JobNumbers numbers, Kinds kinds, Coins coins, Oracle oracle) {
        static Asked of(Job job) {
            JobNumbers numbers = new JobNumbers(job);
            Kinds kinds = new Kinds(numbers);
            Coins coins = new Coins(job);
            return new Asked(numbers, kinds, coins, new Oracle(numbers, kinds, coins));
        }

        double worth(double[] prices) {
            oracle.price(inCoins(prices));
            return coins.money(oracle.worth(0)).value().doubleValue();
        }

        long[] inCoins(double[] prices) {
            long[] inCoins = new long[kinds.parts()];
            for (int k = 0; k < inCoins.length; k++)
                inCoins[k] = Math.round(prices[kinds.partsOf(k)[0]] * JobNumbers.MONEY * coins.perMillionth());
            return inCoins;
        }
    }

    @Test
    void a_board_is_worth_as_much_as_the_best_of_all_its_layouts() {
        Seeds.each(3_000, InchBoard::random, board -> {
            double best = board.best();
            double worth = Asked.of(board.job(99)).worth(prices(board));
            if (best < -1e9) assertThat(worth).isLessThan(-1e9);
            else assertThat(worth).isCloseTo(best, within(1e-5));
        });
    }

    private static double[] prices(InchBoard board) {
        return board.blanks().stream().mapToDouble(InchBoard.Blank::price).toArray();
    }

    @Test
    void fewer_blanks_wanted_never_make_a_board_worth_more() {
        Seeds.each(500, InchBoard::random, board -> {
            double before = Double.NEGATIVE_INFINITY;
            for (int count : new int[] {1, 2, 3, 5, 99}) {
                double worth = Asked.of(board.job(count)).worth(prices(board));
                assertThat(worth).isGreaterThanOrEqualTo(before - 1e-5);
                before = worth;
            }
        });
    }

    @Test
    void the_sketch_is_worth_what_the_oracle_says_where_nothing_but_blanks_counts() {
        Seeds.each(500, (random, size) -> {
            InchBoard board = plain(InchBoard.random(random, size + 4));
            Asked asked = Asked.of(board.job(99));
            double worth = asked.worth(prices(board));
            if (!asked.oracle.cuts(0)) return;
            int[] made = asked.oracle.sketch(0).made(asked.kinds.parts());
            double sum = 0;
            for (int k = 0; k < made.length; k++)
                sum += made[k] * prices(board)[asked.kinds.partsOf(k)[0]];
            assertThat(sum).isCloseTo(worth, within(1e-5));
        });
    }

    private static InchBoard plain(InchBoard b) {
        return new InchBoard(
                b.length(),
                b.width(),
                b.near(),
                b.far(),
                b.edgeLoss(),
                b.ripKerf(),
                b.crosscutKerf(),
                b.keepLength(),
                b.keepWidth(),
                0,
                0,
                0,
                b.shortest(),
                b.longest(),
                b.blanks());
    }

    @Test
    void asking_again_gives_the_same_answer() {
        Seeds.each(200, (random, size) -> {
            InchBoard board = InchBoard.random(random, size + 4);
            Asked asked = Asked.of(board.job(2));
            double[] prices = prices(board);
            double[] others = Arrays.stream(prices).map(p -> 3 - p / 2).toArray();
            double first = asked.worth(prices);
            asked.worth(others);
            assertThat(asked.worth(prices)).isEqualTo(first);
        });
    }
}
