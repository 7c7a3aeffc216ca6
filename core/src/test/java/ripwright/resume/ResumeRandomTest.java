package ripwright.resume;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import java.util.SplittableRandom;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;
import ripwright.Options;
import ripwright.Planner;
import ripwright.internal.geometry.Piece;
import ripwright.job.Job;
import ripwright.plan.Plan;
import ripwright.stock.Board;
import ripwright.testing.RandomJobs;
import ripwright.testing.Seeds;

/** Random mishaps at random steps of drawn jobs, and again in what was resumed. */
class ResumeRandomTest {
    private static final Options SHORT_SEARCH = Options.defaults().withMostRecuts(20);

    @Test
    void random_mishaps_at_random_steps_always_yield_a_plan_that_replays_from_the_first_boards() {
        Seeds.each(60, 45, (random, size) -> {
            Job job = RandomJobs.growing(random, size / 2);
            return resumed(random, job, Planner.plan(job, SHORT_SEARCH), 2);
        });
    }

    /** Whether there was anything left to cut, once at least. */
    private static boolean resumed(SplittableRandom random, Job job, Plan plan, int times) {
        Report report = new RandomMishap(random, job, plan).report();
        Resume resume = new Resume(job, plan, report);
        Optional<Resumed> rest = resume.planned(left -> Planner.plan(left, SHORT_SEARCH));
        if (rest.isEmpty()) return false;
        assertThat(ChainReplay.faults(job, plan, report, rest.get())).isEmpty();
        if (times > 1) resumed(random, rest.get().job(), rest.get().plan(), times - 1);
        return true;
    }

    @Test
    void pieces_in_hand_blanks_and_dust_are_all_the_wood_of_the_boards_opened() {
        Seeds.each(60, (random, size) -> {
            Job job = RandomJobs.growing(random, size / 2);
            Plan plan = Planner.plan(job, SHORT_SEARCH);
            Resume resume = new Resume(job, plan, new RandomMishap(random, job, plan).report());
            for (String id : resume.spent().boards()) {
                Board board = job.boards().stream()
                        .filter(one -> one.id().equals(id))
                        .findFirst()
                        .orElseThrow();
                assertThat(wood(resume, id)).as(id).isEqualTo(board.area().squareNanometers());
            }
        });
    }

    private static BigFraction wood(Resume resume, String board) {
        BigFraction sum = BigFraction.ZERO;
        for (HeldPiece piece : resume.held())
            if (piece.wood().board().id().equals(board)) sum = sum.add(area(piece.wood()));
        for (Losses dust : resume.dust()) if (dust.wood().board().id().equals(board)) sum = sum.add(area(dust.wood()));
        return sum;
    }

    /** Exact, also where it reaches to a tapered edge. */
    private static BigFraction area(Piece piece) {
        if (piece.right().isPresent())
            return BigFraction.of(piece.right().getAsLong() - piece.left()).multiply(piece.length());
        BigFraction mean = edge(piece.board(), piece.from())
                .add(edge(piece.board(), piece.to()))
                .divide(2)
                .subtract(piece.left());
        return mean.multiply(piece.length());
    }

    private static BigFraction edge(Board board, long x) {
        long near = board.width().nanometers();
        return BigFraction.of(board.widthAtFarEnd().nanometers() - near)
                .multiply(x)
                .divide(board.length().nanometers())
                .add(near);
    }
}
