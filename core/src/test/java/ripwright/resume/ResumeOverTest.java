package ripwright.resume;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import ripwright.Options;
import ripwright.Planner;
import ripwright.bill.Part;
import ripwright.job.Breakdown;
import ripwright.job.Job;
import ripwright.measure.Length;
import ripwright.plan.Plan;
import ripwright.plan.Step;
import ripwright.stock.Board;
import ripwright.testing.Printed;
import ripwright.testing.RandomJobs;
import ripwright.testing.Seeds;

/** Jobs whose sections are left long at both ends, stopped and resumed. */
class ResumeOverTest {
    private static final Options SHORT_SEARCH = Options.defaults().withMostRecuts(20);
    private static final int JOBS = Integer.getInteger("ripwright.resumesOver", 60);

    private static Job leftLong(Job job) {
        return job.toBuilder().breakdown(new Breakdown(Length.inches("1/2"))).build();
    }

    @Test
    void random_mishaps_at_random_steps_of_jobs_left_long_yield_plans_that_replay_from_the_first_boards() {
        Seeds.each(JOBS, 3 * JOBS / 4, (random, size) -> {
            Job job = leftLong(RandomJobs.growing(random, size / 2));
            return resumed(random, job, Printed.plan(Planner.plan(job, SHORT_SEARCH)), Optional.empty(), 3);
        });
    }

    /** Whether there was anything left to cut, once at least. */
    private static boolean resumed(SplittableRandom random, Job job, Plan plan, Optional<ChainIds> before, int times) {
        Report report = new RandomMishap(random, job, plan).report();
        ChainIds ids = before.orElseGet(() -> ChainIds.of(job, plan));
        Resume resume = new Resume(job, plan, report, ids);
        Optional<Resumed> rest = resume.planned(left -> Planner.plan(left, SHORT_SEARCH));
        if (rest.isEmpty()) return false;
        Job left = rest.get().job();
        assertThat(left.breakdown()).isEqualTo(job.breakdown());
        assertThat(ChainReplay.faults(job, plan, report, rest.get(), ids)).isEmpty();
        nothingGoodIsCutAgain(resume, left);
        if (times > 1)
            resumed(
                    random,
                    left,
                    Printed.plan(rest.get().plan()),
                    Optional.of(rest.get().ids()),
                    times - 1);
        return true;
    }

    private static void nothingGoodIsCutAgain(Resume resume, Job left) {
        Set<String> boards = new HashSet<>();
        left.boards().forEach(board -> boards.add(board.id()));
        for (SizeNow piece : resume.pieces())
            if (piece.made()) assertThat(boards).doesNotContain(piece.id());
    }

    /** 1/2 in at both ends and a kerf between two rails of 20 in: 41 1/8 in, all of the board. */
    private static final Job RAILS = leftLong(Shelf.job(
            List.of(Part.of("rail", Shelf.in("20"), Shelf.in("2"), Shelf.THICK)
                    .count(2)
                    .build()),
            Board.measured("ash", "ash", Shelf.THICK, Shelf.in("2 1/2"), Shelf.in("41 1/8"))
                    .build()));

    @Test
    void a_part_cut_from_a_resumed_strip_does_not_lose_what_is_left_over_twice() {
        Plan plan = Shelf.planned(RAILS);
        List<Integer> done = plan.steps().stream()
                .filter(step -> step.does() != Step.Does.BLANK)
                .map(Step::n)
                .toList();
        Report report = Shelf.report(done);
        Resumed resumed =
                new Resume(RAILS, plan, report).planned(Shelf::planned).orElseThrow();
        assertThat(ChainReplay.faults(RAILS, plan, report, resumed)).isEmpty();
        assertThat(resumed.job().boards()).extracting(Board::squareEnds).contains(1);
        assertThat(resumed.plan().shortages()).isEmpty();
        assertThat(resumed.plan().steps()).extracting(Step::does).doesNotContain(Step.Does.SQUARE);
    }
}
