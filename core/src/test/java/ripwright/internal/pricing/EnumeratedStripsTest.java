package ripwright.internal.pricing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import ripwright.internal.model.ItemTypes;
import ripwright.internal.model.JobNumbers;
import ripwright.internal.model.ScaledLabor;
import ripwright.internal.model.ScaledMoney;
import ripwright.measure.Length;
import ripwright.testing.Seeds;

class EnumeratedStripsTest {
    private static final long INCH = Length.inches("1").nanometers();

    /** What is asked, of whom, and what it should say. */
    private static final class Asked {
        private final EveryStrips due;
        private final JobNumbers numbers;
        private final ItemTypes types;
        private final ScaledMoney money;
        private final BoardClass wood;
        private final StripPricing strips;
        private final boolean suited;

        Asked(EveryStrips due) {
            this.due = due;
            numbers = new JobNumbers(due.job());
            types = new ItemTypes(numbers);
            money = new ScaledMoney(due.job());
            ScaledLabor charges = ScaledLabor.of(numbers, money);
            wood = BoardClass.all(numbers, types, money, charges).get(0);
            int[] wanted = new int[types.parts()];
            for (int k = 0; k < wanted.length; k++) wanted[k] = types.wanted(k);
            suited = EnumeratedStrips.suit(wood, 0, wanted, charges);
            strips = EnumeratedStrips.of(wood, 0, wanted, charges);
        }

        EveryStrips.Blank blank(int type) {
            return due.blanks().get(types.partsOf(type)[0]);
        }

        void price(double times) {
            long[] prices = new long[types.parts()];
            int[] most = new int[types.parts()];
            for (int k = 0; k < prices.length; k++) {
                prices[k] = Math.round(blank(k).price() * times * JobNumbers.MONEY * money.perMillionth());
                most[k] = blank(k).most();
            }
            strips.price(prices, most);
        }

        /** Inches that a section of so many ticks has. */
        int section(int ticks) {
            return (int) (ticks * wood.lengthTick / INCH) - due.kerf();
        }

        void worth(int count, int ticks) {
            assertThat(money(strips.best(count, ticks)))
                    .as("%d strips, %d ticks", count, ticks)
                    .isCloseTo(due.best(count, section(ticks)), within(1e-5));
        }

        private double money(long worth) {
            return money.money(worth).value().doubleValue();
        }

        void blanks(int count, int ticks) {
            List<int[]> given = strips.blanks(count, ticks);
            int[] made = new int[due.blanks().size()];
            double worth = 0;
            for (int[] strip : given) {
                List<Integer> lengths =
                        Arrays.stream(strip).mapToObj(k -> blank(k).length()).toList();
                int[] counts = due.counted(lengths, section(ticks)).orElseThrow();
                for (int i = 0; i < made.length; i++) made[i] += counts[i];
                worth += due.worth(counts, section(ticks));
            }
            assertThat(given).hasSize(count);
            for (int i = 0; i < made.length; i++)
                assertThat(made[i]).isLessThanOrEqualTo(due.blanks().get(i).allowed());
            assertThat(worth)
                    .as("%d strips, %d ticks", count, ticks)
                    .isCloseTo(due.best(count, section(ticks)), within(1e-5));
        }

        void inTurn() {
            for (int t = 1; t <= wood.length; t++)
                for (int count = 1; count <= strips.told(); count++) {
                    worth(count, t);
                    blanks(count, t);
                }
        }

        void inAnyOrder(SplittableRandom random) {
            for (int i = 0; i < 30; i++) {
                int t = 1 + random.nextInt(wood.length);
                int count = 1 + random.nextInt(strips.told());
                if (random.nextBoolean()) worth(count, t);
                else blanks(count, t);
            }
        }

        void rises() {
            boolean[] marked = new boolean[wood.length + 1];
            strips.markRises(marked);
            for (int t = 1; t < wood.length; t++)
                for (int count = 1; count <= strips.told(); count++)
                    if (strips.best(count, t + 1) > strips.best(count, t))
                        assertThat(marked[t + 1]).isTrue();
        }
    }

    /** Whether two strips of that case are worth more than one. */
    private static boolean asked(EveryStrips drawn, boolean ends, SplittableRandom random) {
        boolean fits = drawn.blanks().stream().allMatch(blank -> blank.length() <= drawn.length());
        boolean counts = drawn.crosscut() > 0 || (drawn.salvage() > 0 && drawn.width() >= drawn.keepWidth());
        if (!fits || counts != ends) return false;
        Asked asked = new Asked(drawn);
        if (!asked.suited) return false;
        asked.price(3);
        asked.strips.best(1, asked.wood.length);
        asked.price(1); // the tables are those of the last prices
        asked.worth(1, asked.wood.length);
        asked.inAnyOrder(random);
        asked.inTurn();
        asked.rises();
        return asked.strips.told() > 1 && drawn.best(2, drawn.length()) > drawn.best(1, drawn.length());
    }

    @Test
    void strips_whose_ends_count_for_nothing_are_worth_the_best_of_all_choices() {
        Seeds.each(300, 75, (random, size) -> asked(EveryStrips.random(random, size, false), false, random));
    }

    @Test
    void strips_whose_ends_fetch_something_or_save_a_cut_are_worth_the_best_of_all_choices() {
        Seeds.each(250, 100, (random, size) -> asked(EveryStrips.random(random, size, true), true, random));
    }
}
