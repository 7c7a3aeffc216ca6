package ripwright.internal.search;

import static org.assertj.core.api.Assertions.assertThat;
import static ripwright.testing.JobBuilder.maple;
import static ripwright.testing.JobBuilder.part;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.optaplanner.core.config.solver.EnvironmentMode;
import ripwright.internal.model.JobNumbers;
import ripwright.job.Job;
import ripwright.measure.Length;
import ripwright.saw.TestRip;
import ripwright.testing.JobBuilder;

public class SearchTest {
    private static final Job SHELVES = new JobBuilder("test")
            .stack(
                    maple("a", "8", "61"),
                    maple("b", "6 3/4", "72"),
                    maple("c", "9 1/4", "48 1/2"),
                    maple("d", "5 1/2", "90"))
            .parts(
                    part("rail", 6, "23", "2 1/4"),
                    part("stile", 4, "30 1/2", "2 1/4").together("face"),
                    part("shelf", 3, "29", "3 1/2"),
                    part("cleat", 5, "17 1/4", "1 1/2"))
            .build();

    private static final Job TIGHT = new JobBuilder("tight")
            .testRip(new TestRip(Length.inches("12"), 2))
            .stack(JobBuilder.maple("a", "6 1/4", "60 1/4"), JobBuilder.maple("b", "6 1/4", "60 1/4"))
            .parts(JobBuilder.part("rail", 12, "20", "2"))
            .build();

    @Test
    void the_same_seed_finds_the_same() {
        assertThat(layouts(best(7, 1))).isEqualTo(layouts(best(7, 1)));
        assertThat(layouts(best(7, 2))).isEqualTo(layouts(best(7, 2)));
    }

    @Test
    void everything_is_made_where_the_stack_is_ample() {
        assertThat(best(1, 1).blanks()).isEqualTo(18);
    }

    @Test
    void a_search_told_to_stop_at_once_still_answers() {
        Search.Effort effort = new Search.Effort(1, 2, Long.MAX_VALUE, 1_000, 20);
        Incumbent answer = new Search(
                        new JobNumbers(SHELVES), effort, new Workers(2), Optional::empty, () -> true, incumbent -> {})
                .best();
        assertThat(answer.blanks()).isPositive();
    }

    @Test
    void a_search_told_to_stop_later_ends_with_the_best_it_told_of() {
        AtomicInteger asked = new AtomicInteger();
        List<Incumbent> told = new ArrayList<>();
        Search.Effort effort = new Search.Effort(1, 1, Long.MAX_VALUE, 1_000_000, 20);
        Incumbent answer = new Search(
                        new JobNumbers(SHELVES),
                        effort,
                        new Workers(2),
                        Optional::empty,
                        () -> asked.incrementAndGet() > 60,
                        told::add)
                .best();
        assertThat(answer.net()).isEqualTo(told.get(told.size() - 1).net());
    }

    @ParameterizedTest
    @CsvSource({"FULL_ASSERT, NONE", "FULL_ASSERT, 2"})
    void recuts_leave_no_trace_when_undone(EnvironmentMode mode, String moveThreads) {
        leaveNoTrace(SHELVES, mode, moveThreads);
        leaveNoTrace(TIGHT, mode, moveThreads);
    }

    private static void leaveNoTrace(Job job, EnvironmentMode mode, String moveThreads) {
        Workers workers = new Workers(1);
        RecreateTables tables = new RecreateTables(new JobNumbers(job), workers);
        Incumbent start = new GreedyHeuristic(tables, () -> false).best(new java.util.SplittableRandom(3));
        try (SolverWatch watch = new SolverWatch(() -> false, workers)) {
            Incumbent found = new SimulatedAnnealing(tables, 0.02, 1_500, watch)
                    .checked(mode, moveThreads)
                    .from(start, 5);
            assertThat(found.blanks()).isBetween(1, 18);
        }
    }

    /** Filled as full as can be, the boards have no wood for test blanks; the search leaves some. */
    @Test
    void wood_for_test_blanks_is_left() {
        for (int seed = 0; seed < 5; seed++) {
            Search.Effort effort = new Search.Effort(seed, 1, 1_000, 9, 20);
            Incumbent best = new Search(
                            new JobNumbers(TIGHT),
                            effort,
                            new Workers(2),
                            Optional::empty,
                            () -> false,
                            incumbent -> {})
                    .best();
            assertThat(best.blanks()).isEqualTo(12);
            assertThat(best.unproved()).isZero();
        }
    }

    private static Incumbent best(long seed, int threads) {
        return new Search(
                        new JobNumbers(SHELVES),
                        new Search.Effort(seed, threads, 2_000, 9, 20),
                        new Workers(threads),
                        Optional::empty,
                        () -> false,
                        incumbent -> {})
                .best();
    }

    private static List<Object> layouts(Incumbent incumbent) {
        return new ArrayList<>(incumbent.cut());
    }
}
