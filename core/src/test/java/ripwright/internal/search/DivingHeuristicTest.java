package ripwright.internal.search;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import ripwright.bill.Part;
import ripwright.internal.bound.LowerBound;
import ripwright.internal.model.JobNumbers;
import ripwright.job.Job;
import ripwright.testing.Constructed;
import ripwright.testing.ConstructedJobs;
import ripwright.testing.Feature;
import ripwright.testing.Features;
import ripwright.testing.JobSize;
import ripwright.testing.LayoutCheck;
import ripwright.testing.RandomJobs;
import ripwright.testing.Seeds;

public class DivingHeuristicTest {
    private static final Feature[] FEATURES = {
        Feature.DEFECTS,
        Feature.EDGES,
        Feature.CROOK,
        Feature.TRIMS,
        Feature.SPECIES,
        Feature.SALVAGE,
        Feature.LABOR,
        Feature.RIPPED,
        Feature.RACK,
        Feature.SHOW
    };

    @Test
    void a_dive_ends_in_layouts_a_shop_could_cut_and_makes_no_part_too_often() {
        Seeds.each(16, (random, size) -> {
            Job job = job(random, size);
            JobNumbers numbers = new JobNumbers(job);
            GreedyHeuristic greedy = new GreedyHeuristic(new RecreateTables(numbers, new Workers(1)), () -> false);
            LowerBound lowerBound = LowerBound.ofWholeBill(numbers, () -> false);
            Incumbent answer = new DivingHeuristic(numbers, greedy, lowerBound, () -> false).answer(random.split());
            check(job, numbers, answer);
        });
    }

    @Test
    void a_few_boards_cut_again_by_the_proof_are_no_dearer_and_could_be_cut() {
        Seeds.each(16, 6, (random, size) -> {
            Job job = job(random, size);
            JobNumbers numbers = new JobNumbers(job);
            Incumbent known =
                    new GreedyHeuristic(new RecreateTables(numbers, new Workers(1)), () -> false).best(random.split());
            if (known.blanks() < Arrays.stream(numbers.wanted()).sum()) return false;
            LowerBound lowerBound = LowerBound.ofWholeBill(numbers, () -> false);
            Incumbent answer = new ExactNeighborhood(numbers, lowerBound, () -> false).better(known, 4, random.split());
            check(job, numbers, answer);
            assertThat(answer.blanks()).isEqualTo(known.blanks());
            assertThat(answer.net()).isLessThanOrEqualTo(known.net());
            return true;
        });
    }

    @Test
    void a_few_boards_cut_again_by_the_proof_end_at_the_known_best_of_a_small_job() {
        Constructed built = ConstructedJobs.constructed(new SplittableRandom(7), new JobSize(20, 8), Features.NONE);
        JobNumbers numbers = new JobNumbers(built.job());
        Incumbent known = new GreedyHeuristic(new RecreateTables(numbers, new Workers(1)), () -> false)
                .best(new SplittableRandom(1));
        LowerBound lowerBound = LowerBound.ofWholeBill(numbers, () -> false);
        Incumbent answer =
                new ExactNeighborhood(numbers, lowerBound, () -> false).better(known, 40, new SplittableRandom(1));
        assertThat(answer.cost()).isEqualByComparingTo(built.best().rounded());
    }

    @Test
    void a_part_tied_to_a_board_hinders_neither_a_dive_nor_the_proof_of_a_few_boards() {
        Job drawn = RandomJobs.random(new SplittableRandom(3), new JobSize(14, 7), Features.NONE);
        List<Part> parts = new ArrayList<>(drawn.parts());
        String board = drawn.boards().get(0).id();
        Part first = parts.get(0);
        parts.set(
                0,
                Part.of(first.name(), first.length(), first.width(), first.thickness())
                        .count(first.count())
                        .boards(Set.of(board))
                        .build());
        Job job = drawn.withParts(parts);
        JobNumbers numbers = new JobNumbers(job);
        GreedyHeuristic greedy = new GreedyHeuristic(new RecreateTables(numbers, new Workers(1)), () -> false);
        LowerBound lowerBound = LowerBound.ofWholeBill(numbers, () -> false);
        Incumbent answer =
                new DivingHeuristic(numbers, greedy, lowerBound, () -> false).answer(new SplittableRandom(1));
        check(job, numbers, answer);
        check(
                job,
                numbers,
                new ExactNeighborhood(numbers, lowerBound, () -> false).better(answer, 20, new SplittableRandom(1)));
    }

    @Test
    void so_does_a_rounding() {
        Seeds.each(16, (random, size) -> {
            Job job = job(random, size);
            JobNumbers numbers = new JobNumbers(job);
            GreedyHeuristic greedy = new GreedyHeuristic(new RecreateTables(numbers, new Workers(1)), () -> false);
            LowerBound lowerBound = LowerBound.ofWholeBill(numbers, () -> false);
            check(job, numbers, new RoundingHeuristic(numbers, greedy, lowerBound).best(random.split()));
        });
    }

    private static Job job(SplittableRandom random, int size) {
        return RandomJobs.random(random, new JobSize(3 + 3 * size, 2 + size), Features.some(random, FEATURES));
    }

    private static void check(Job job, JobNumbers numbers, Incumbent answer) {
        LayoutCheck check = new LayoutCheck(job, answer.cut());
        assertThat(check.faults()).isEmpty();
        int[] wanted = numbers.wanted();
        for (int p = 0; p < wanted.length; p++) assertThat(check.made()[p]).isBetween(0, wanted[p]);
        assertThat(answer.blanks()).isPositive();
    }
}
