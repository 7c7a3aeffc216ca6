package ripwright.internal.knapsack;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import ripwright.testing.Seeds;

/** Against a list of all choices, drawn up type by type. */
class MultisetsTest {
    private static int[] copies(SplittableRandom random, int size) {
        return random.ints(random.nextInt(5), 0, 2 + size / 6).toArray();
    }

    /** How many of each type every choice has. */
    private static List<List<Integer>> all(int[] copies) {
        List<List<Integer>> all = new ArrayList<>(List.of(List.of()));
        for (int most : copies) {
            List<List<Integer>> longer = new ArrayList<>();
            for (List<Integer> choice : all)
                for (int n = 0; n <= most; n++) {
                    List<Integer> with = new ArrayList<>(choice);
                    with.add(n);
                    longer.add(with);
                }
            all = longer;
        }
        return all;
    }

    private static List<Integer> choice(Multisets sets, int m, int[] copies) {
        return IntStream.range(0, copies.length).mapToObj(i -> sets.many(m, i)).toList();
    }

    private static boolean isPart(List<Integer> part, List<Integer> of) {
        return IntStream.range(0, of.size()).allMatch(i -> part.get(i) <= of.get(i));
    }

    @Test
    void every_choice_has_a_number_of_its_own() {
        Seeds.each(300, (random, size) -> {
            int[] copies = copies(random, size);
            Multisets sets = new Multisets(copies);
            Set<List<Integer>> numbered = new HashSet<>();
            for (int m = 0; m < sets.size(); m++) numbered.add(choice(sets, m, copies));
            assertThat(sets.size()).isEqualTo(all(copies).size());
            assertThat(numbered).isEqualTo(new HashSet<>(all(copies)));
            for (int i = 0; i < copies.length; i++) assertThat(sets.copies(i)).isEqualTo(copies[i]);
        });
    }

    @Test
    void a_choice_names_its_kinds_and_weighs_what_they_weigh() {
        Seeds.each(300, (random, size) -> {
            int[] copies = copies(random, size);
            Multisets sets = new Multisets(copies);
            long[] weights = random.longs(copies.length, -9, 10).toArray();
            long[] sums = new long[sets.size()];
            Arrays.fill(sums, 99); // what stood there before
            sets.sums(weights, sums);
            for (int m = 0; m < sets.size(); m++) {
                List<Integer> types = new ArrayList<>();
                long weight = 0;
                for (int i = 0; i < copies.length; i++)
                    for (int n = 0; n < choice(sets, m, copies).get(i); n++) {
                        types.add(i);
                        weight += weights[i];
                    }
                assertThat(Arrays.stream(sets.types(m)).boxed().toList()).isEqualTo(types);
                assertThat(sums[m]).isEqualTo(weight);
            }
        });
    }

    @Test
    void the_parts_of_a_choice_come_each_once_in_rising_order_and_with_their_rest_make_it_up() {
        Seeds.each(200, (random, size) -> {
            int[] copies = copies(random, size / 2);
            Multisets sets = new Multisets(copies);
            for (int m = 0; m < sets.size(); m++) {
                List<Integer> whole = choice(sets, m, copies);
                List<Integer> due = new ArrayList<>();
                for (int part = 0; part < sets.size(); part++)
                    if (isPart(choice(sets, part, copies), whole)) due.add(part);
                List<Integer> parts = new ArrayList<>();
                for (int part = 0; part >= 0; part = sets.nextPart(m, part)) {
                    parts.add(part);
                    for (int i = 0; i < copies.length; i++)
                        assertThat(sets.many(m - part, i)).isEqualTo(whole.get(i) - sets.many(part, i));
                }
                assertThat(parts).isEqualTo(due);
            }
        });
    }

    @Test
    void choices_and_pairs_are_counted_up_to_the_most_that_are_asked_for() {
        Seeds.each(300, (random, size) -> {
            int[] copies = copies(random, size / 2);
            List<List<Integer>> all = all(copies);
            int pairs = 0;
            for (List<Integer> whole : all) for (List<Integer> part : all) if (isPart(part, whole)) pairs++;
            for (int most : new int[] {1, all.size() - 1, all.size(), pairs - 1, pairs, 10_000}) {
                assertThat(Multisets.count(copies, most)).isEqualTo(Math.min(all.size(), most + 1));
                assertThat(Multisets.pairs(copies, most)).isEqualTo(Math.min(pairs, most + 1));
            }
        });
    }

    @Test
    void counts_beyond_all_numbers_are_more_than_the_most() {
        int[] copies = {1_000_000, 1_000_000, 1_000_000, 1_000_000, 1_000_000};
        assertThat(Multisets.count(copies, 3_000)).isEqualTo(3_001);
        assertThat(Multisets.pairs(copies, 3_000)).isEqualTo(3_001);
    }
}
