package ripwright.internal.knapsack;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.SplittableRandom;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import ripwright.testing.Seeds;

/** Against the sums of all choices of strips, listed width by width. */
class NormalPatternsTest {
    @SuppressWarnings("ArrayRecordComponent") // never compared
    private record Case(long[] strips, long room) {
        static Case random(SplittableRandom random, int size) {
            long[] strips = random.longs(1 + random.nextInt(4), 2, 6 + 2L * size)
                    .distinct()
                    .toArray();
            return new Case(strips, random.nextLong(1 + 6L * size));
        }

        TreeSet<Long> sums() {
            TreeSet<Long> sums = new TreeSet<>();
            add(sums, 0, 0);
            return sums;
        }

        private void add(TreeSet<Long> sums, int v, long sum) {
            if (v == strips.length) sums.add(sum);
            else for (long more = sum; more <= room; more += strips[v]) add(sums, v + 1, more);
        }

        @Override
        public String toString() {
            return Arrays.toString(strips) + " in " + room;
        }
    }

    @Test
    void the_sums_are_those_of_all_choices_of_strips() {
        Seeds.each(1_000, Case::random, drawn -> {
            NormalPatterns sums = new NormalPatterns(drawn.strips, drawn.room);
            assertThat(listed(sums)).containsExactly(drawn.sums().toArray(Long[]::new));
        });
    }

    private static Long[] listed(NormalPatterns sums) {
        Long[] listed = new Long[sums.count()];
        Arrays.setAll(listed, sums::sum);
        return listed;
    }

    @Test
    void one_strip_more_leads_to_the_sum_that_it_makes() {
        Seeds.each(500, Case::random, drawn -> {
            NormalPatterns sums = new NormalPatterns(drawn.strips, drawn.room);
            for (int v = 0; v < drawn.strips.length; v++)
                for (int i = 0; i < sums.count(); i++) {
                    long more = sums.sum(i) + drawn.strips[v];
                    int next = sums.next(v, i);
                    if (more > drawn.room) assertThat(next).isNegative();
                    else assertThat(sums.sum(next)).isEqualTo(more);
                    assertThat(sums.next(v)[i]).isEqualTo(next);
                }
        });
    }

    @Test
    void within_a_room_the_greatest_sum_is_found() {
        Seeds.each(500, Case::random, drawn -> {
            NormalPatterns sums = new NormalPatterns(drawn.strips, drawn.room);
            assertThat(sums.within(-1)).isNegative();
            for (long room = 0; room <= drawn.room + 3; room++)
                assertThat(sums.sum(sums.within(room))).isEqualTo(drawn.sums().floor(room));
        });
    }

    /** Of strips near 2^20 wide there are too many sums: they are rounded down, so no choice of strips is lost. */
    @Test
    void where_there_are_too_many_sums_whatever_fits_still_does() {
        Seeds.each(60, 20, (random, size) -> {
            long[] strips = random.longs(5, 1 << 20, 1 << 21).toArray();
            long room = (long) (18 + size) << 20;
            NormalPatterns sums = new NormalPatterns(strips, room);
            for (int again = 0; again < 50; again++) {
                int place = 0;
                long sum = 0;
                for (int v = random.nextInt(5); sum + strips[v] <= room; v = random.nextInt(5)) {
                    sum += strips[v];
                    place = sums.next(v, place);
                    assertThat(place).isNotNegative();
                    assertThat(sums.sum(place)).isLessThanOrEqualTo(sum);
                }
            }
            return sums.sum(sums.next(0, 0)) < strips[0];
        });
    }
}
