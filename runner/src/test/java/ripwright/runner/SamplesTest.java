package ripwright.runner;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import ripwright.Options;
import ripwright.Planner;
import ripwright.job.Job;
import ripwright.job.Limits;
import ripwright.json.JobReader;
import ripwright.measure.Length;
import ripwright.measure.Unit;
import ripwright.plan.CutBoard;
import ripwright.plan.Plan;
import ripwright.saw.Saw;
import ripwright.saw.TestRip;

/** What the samples are there to show. */
class SamplesTest {
    private static final Options BRIEFLY = Options.defaults().withMostRecuts(500);

    /** 3/4 in of crook over 97 in leaves two strips of the whole board, but three of each half. */
    @Test
    void the_crooked_board_pays_only_when_it_is_broken_down() throws Exception {
        Job job = JobReader.read(Path.of("../samples/crooked-board/crooked-board.job.json"));
        Plan plan = Planner.plan(job, BRIEFLY);
        Plan whole = Planner.plan(inOnePiece(job), BRIEFLY);

        assertThat(sectionsOfBent(plan)).isGreaterThan(1);
        assertThat(sectionsOfBent(whole)).isZero(); // which costs twice as much
        assertThat(plan.cost().net()).isLessThan(whole.cost().net());
        assertThat(whole.status()).isEqualTo(Plan.Status.COMPLETE);
    }

    @Test
    void the_toy_chest_is_in_millimeters_and_its_stock_is_rough() throws Exception {
        Job job = JobReader.read(Path.of("../samples/toy-chest-mm/toy-chest-mm.job.json"));

        assertThat(job.units()).isEqualTo(Unit.MILLIMETER);
        assertThat(job.stack()).anyMatch(board -> board.rough());
    }

    private static int sectionsOfBent(Plan plan) {
        return plan.boards().stream()
                .filter(board -> board.board().equals("bent"))
                .map(CutBoard::sections)
                .mapToInt(sections -> sections.size())
                .sum();
    }

    /** The same job at a saw that takes no section under 90 in, more than half of any board. */
    private static Job inOnePiece(Job job) {
        Saw saw = new Saw(
                job.saw().ripKerf(),
                job.saw().crosscutKerf(),
                job.saw().longestRip(),
                Optional.of(Length.inches("90")),
                job.saw().narrowestRip(),
                job.saw().shortestCrosscut());
        return new Job(
                job.name(),
                job.units(),
                saw,
                new TestRip(Length.inches("90"), 0),
                job.keep(),
                job.prices(),
                job.salvage(),
                job.labor(),
                job.stack(),
                job.rack(),
                job.parts(),
                new Limits(Optional.empty(), job.limits().seed(), job.limits().threads()));
    }
}
