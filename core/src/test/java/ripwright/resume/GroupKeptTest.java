package ripwright.resume;

import static org.assertj.core.api.Assertions.assertThat;
import static ripwright.resume.Shelf.JOB;
import static ripwright.resume.Shelf.NARROW;
import static ripwright.resume.Shelf.PLAN;
import static ripwright.resume.Shelf.WIDE;
import static ripwright.resume.Shelf.report;
import static ripwright.resume.Shelf.until;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import ripwright.bill.Part;
import ripwright.job.Job;
import ripwright.plan.Plan;
import ripwright.stock.Board;

/** A group that is tied to a board and not begun stays a group, and may still come from another board. */
class GroupKeptTest {
    private static Optional<String> together(Job job) {
        return job.parts().stream()
                .filter(part -> part.name().equals("rail"))
                .findFirst()
                .flatMap(Part::together);
    }

    @Test
    void a_group_that_is_not_begun_stays_together() {
        for (List<Integer> done : List.of(List.of(1), until(WIDE), until(NARROW))) {
            Report report = report(done);
            Resumed resumed =
                    new Resume(JOB, PLAN, report).planned(Shelf::planned).orElseThrow();
            assertThat(ChainReplay.faults(JOB, PLAN, report, resumed)).isEmpty();
            assertThat(together(resumed.job())).contains("rails");
            assertThat(resumed.plan().shortages()).isEmpty();
        }
    }

    @Test
    void a_group_whose_strip_is_spoiled_two_stops_later_comes_from_another_board() {
        Board spare = JOB.stack().get(0).toBuilder().id("spare").build();
        Job job = JOB.toBuilder().stack(List.of(JOB.stack().get(0), spare)).build();
        Plan plan = Shelf.planned(job);
        Resumed once = new Resume(job, plan, report(List.of(1)))
                .planned(Shelf::planned)
                .orElseThrow();
        String section = once.plan().boards().get(0).board();
        Report spoiled =
                new Report(once.job().name(), List.of(), List.of(new Change.Spoiled(section)), Optional.empty());
        Resumed twice = new Resume(once.job(), once.plan(), spoiled, once.ids())
                .planned(Shelf::planned)
                .orElseThrow();
        assertThat(ChainReplay.faults(once.job(), once.plan(), spoiled, twice, once.ids()))
                .isEmpty();
        assertThat(twice.plan().shortages()).isEmpty();
    }
}
