package ripwright.internal.recreate;

import static org.assertj.core.api.Assertions.assertThat;
import static ripwright.testing.JobBuilder.in;
import static ripwright.testing.JobBuilder.maple;
import static ripwright.testing.JobBuilder.part;

import java.util.HashMap;
import java.util.Map;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import ripwright.internal.knapsack.TickGrid;
import ripwright.internal.model.JobNumbers;
import ripwright.job.Job;
import ripwright.testing.JobBuilder;

/** The board of 5 1/8 in takes a strip of 2 in and one of 3 in; only at 50 1/8 in does each come out full. */
public class SectionLengthsTest {
    private static final Job JOB = new JobBuilder("test")
            .stack(maple("b", "5 1/8", "100 3/8"))
            .parts(
                    part("short", 1, "20", "2"),
                    part("long", 1, "30", "2"),
                    part("rail", 1, "50 1/8", "3"),
                    part("odd", 1, "27 3/8", "3"),
                    part("odder", 1, "33 5/8", "2"))
            .build();
    private static final long FULL = in("50 1/8").nanometers();

    private final JobNumbers numbers = new JobNumbers(JOB);
    private final SectionLengths lengths = new SectionLengths(
            numbers,
            new TickGrid(
                    new long[] {in("1/8").nanometers()},
                    numbers.boards[0].length + numbers.crosscutKerf,
                    Integer.MAX_VALUE));

    @Test
    void the_length_at_which_every_strip_comes_out_full_is_drawn_most() {
        Map<Long, Integer> drawn = drawn(in("100 3/8").nanometers());
        int full = drawn.getOrDefault(FULL, 0);
        drawn.remove(FULL);
        assertThat(drawn.values())
                .hasSizeGreaterThan(5)
                .allSatisfy(count -> assertThat(full).isGreaterThan(count));
    }

    @Test
    void no_length_is_over_what_the_section_may_have() {
        long most = in("40").nanometers();
        assertThat(drawn(most).keySet()).allSatisfy(length -> assertThat(length).isBetween(1L, most));
    }

    @Test
    void where_no_blank_is_left_there_is_no_length() {
        BlankPool empty = new BlankPool(new int[5], new double[5], 0);
        long room = in("100 3/8").nanometers();
        assertThat(lengths.draw(numbers.boards[0], room, room, empty, new SplittableRandom(1)))
                .isZero();
    }

    private Map<Long, Integer> drawn(long most) {
        Map<Long, Integer> drawn = new HashMap<>();
        SplittableRandom random = new SplittableRandom(1);
        BlankPool pool = new BlankPool(numbers.wanted(), new double[5], 0);
        for (int i = 0; i < 1_000; i++)
            drawn.merge(
                    lengths.draw(numbers.boards[0], in("100 3/8").nanometers(), most, pool, random), 1, Integer::sum);
        return drawn;
    }
}
