package ripwright.internal.pricing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import ripwright.internal.geometry.Layout;
import ripwright.internal.model.ItemTypes;
import ripwright.internal.model.JobNumbers;
import ripwright.internal.model.PricedLayout;
import ripwright.internal.model.ScaledMoney;
import ripwright.job.Job;
import ripwright.testing.LayoutCheck;
import ripwright.testing.RandomJobs;
import ripwright.testing.Seeds;

public class PricingProblemTest {
    /** The pricing problem and what it needs, for one job. */
    private record Asked(JobNumbers numbers, ItemTypes types, ScaledMoney money, PricingProblem pricing) {
        static Asked of(Job job) {
            JobNumbers numbers = new JobNumbers(job);
            ItemTypes types = new ItemTypes(numbers);
            ScaledMoney money = new ScaledMoney(job);
            return new Asked(numbers, types, money, new PricingProblem(numbers, types, money));
        }

        /** Below everything when the board cannot be cut. */
        double worth(double[] prices) {
            pricing.price(inCoins(prices));
            if (!pricing.cuts(0)) return Double.NEGATIVE_INFINITY;
            return money.money(pricing.worth(0)).value().doubleValue();
        }

        long[] inCoins(double[] prices) {
            long[] inCoins = new long[types.parts()];
            for (int k = 0; k < inCoins.length; k++)
                inCoins[k] = Math.round(prices[types.partsOf(k)[0]] * JobNumbers.MONEY * money.perMillionth());
            return inCoins;
        }
    }

    /** What is worth no more than the board on the rack is never cut, so there it need not be exact. */
    @Test
    void a_board_is_worth_as_much_as_the_best_of_all_its_layouts() {
        Seeds.each(3_000, 1_100, InchBoard::random, board -> {
            Asked asked = Asked.of(board.job(99));
            double worth = asked.worth(prices(board));
            double uncut = board.salvage() * board.length() * board.width();
            if (asked.pricing.cuts(0))
                assertThat(Math.max(uncut, worth)).isCloseTo(Math.max(uncut, board.best()), within(1e-5));
            else assertThat(board.best()).isLessThanOrEqualTo(uncut);
            return worth > uncut;
        });
    }

    private static double[] prices(InchBoard board) {
        return board.blanks().stream().mapToDouble(InchBoard.Blank::price).toArray();
    }

    @Test
    void a_board_is_worth_no_less_than_the_best_layout_of_what_is_wanted() {
        Seeds.each(1_500, InchBoard::random, board -> {
            for (int count = 1; count <= 2; count++) {
                Asked asked = Asked.of(board.job(count));
                double worth = asked.worth(prices(board));
                double uncut = board.salvage() * board.length() * board.width();
                if (!asked.pricing.cuts(0)) worth = uncut;
                assertThat(Math.max(uncut, worth)).isGreaterThanOrEqualTo(board.best(count) - 1e-5);
            }
        });
    }

    @Test
    void a_board_of_one_section_is_worth_the_best_layout_of_what_is_wanted() {
        Seeds.each(1_500, 600, InchBoard::random, board -> {
            InchBoard whole = board.ofOneSection();
            boolean pays = false;
            for (int count = 1; count <= 2; count++) {
                Asked asked = Asked.of(whole.job(count));
                double worth = asked.worth(prices(whole));
                double uncut = whole.salvage() * whole.length() * whole.width();
                if (!asked.pricing.cuts(0)) continue;
                assertThat(Math.max(uncut, worth)).isCloseTo(Math.max(uncut, whole.best(count)), within(1e-5));
                pays |= worth > uncut;
            }
            return pays;
        });
    }

    @Test
    void asked_sharply_a_board_is_worth_the_best_layout_of_what_is_wanted() {
        Seeds.each(1_500, 550, InchBoard::random, board -> {
            boolean pays = false;
            for (int count = 1; count <= 2; count++) {
                Asked asked = Asked.of(board.job(count));
                int[] most = new int[asked.types.parts()];
                Arrays.fill(most, count);
                asked.worth(prices(board));
                asked.pricing.sharpen(0, asked.inCoins(prices(board)), most, 10_000, 0, () -> false);
                double worth = asked.money.money(asked.pricing.worth(0)).value().doubleValue();
                double uncut = board.salvage() * board.length() * board.width();
                if (!asked.pricing.cuts(0)) continue;
                assertThat(Math.max(uncut, worth)).isCloseTo(Math.max(uncut, board.best(count)), within(1e-5));
                pays |= worth > uncut;
            }
            return pays;
        });
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
        Seeds.each(500, 300, (random, size) -> {
            InchBoard board = plain(InchBoard.random(random, size + 4));
            Asked asked = Asked.of(board.job(99));
            double worth = asked.worth(prices(board));
            if (!asked.pricing.cuts(0)) return false;
            int[] made = asked.pricing.pattern(0).made(asked.types.parts());
            double sum = 0;
            for (int k = 0; k < made.length; k++)
                sum += made[k] * prices(board)[asked.types.partsOf(k)[0]];
            assertThat(sum).isCloseTo(worth, within(1e-5));
            return true;
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

    @Test
    void a_best_layout_can_be_cut_and_keeps_to_what_is_left() {
        Seeds.each(300, 110, (random, size) -> {
            Job job = RandomJobs.growing(random, size);
            JobNumbers numbers = new JobNumbers(job);
            PricingProblem pricing = new PricingProblem(numbers);
            double[] prices = new double[numbers.parts()];
            int[] most = numbers.wanted();
            for (int p = 0; p < prices.length; p++) {
                double feet = job.parts().get(p).boardFeet().value().doubleValue();
                prices[p] = feet * (6 + 8 * random.nextDouble()) * JobNumbers.MONEY;
                most[p] = random.nextInt(most[p] + 1);
            }
            int board = random.nextInt(numbers.boards());
            Optional<PricedLayout> best = pricing.best(board, prices, most);
            if (best.isEmpty()) return false;
            Layout layout = best.get().layout();
            assertThat(new LayoutCheck(job, List.of(layout)).faults()).isEmpty();
            double worth = best.get().cost() - best.get().net();
            for (int part : best.get().made()) {
                worth += prices[part];
                most[part]--;
            }
            for (int left : most) assertThat(left).isNotNegative();
            ScaledMoney money = new ScaledMoney(job);
            double asked = pricing.worth(new ItemTypes(numbers).typeOfBoard(board)) / money.perMillionth();
            assertThat(worth).isLessThanOrEqualTo(asked + 5); // millionths; prices of the layout are rounded
            return true;
        });
    }

    @Test
    void enough_blanks_left_the_best_layout_is_worth_what_the_oracle_says() {
        Seeds.each(300, 175, (random, size) -> {
            InchBoard board = plain(InchBoard.random(random, size + 4));
            Asked asked = Asked.of(board.job(99));
            double[] prices =
                    Arrays.stream(prices(board)).map(p -> p * JobNumbers.MONEY).toArray();
            Optional<PricedLayout> best = asked.pricing.best(0, prices, asked.numbers.wanted());
            if (best.isEmpty()) return false;
            double worth = best.get().cost() - best.get().net();
            for (int part : best.get().made()) worth += prices[part];
            double says = asked.money.money(asked.pricing.worth(0)).value().doubleValue();
            assertThat(worth / JobNumbers.MONEY).isCloseTo(says, within(1e-5));
            return true;
        });
    }
}
