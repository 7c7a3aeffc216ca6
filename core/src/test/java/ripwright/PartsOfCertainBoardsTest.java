package ripwright;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import ripwright.bill.Part;
import ripwright.job.Job;
import ripwright.plan.Plan;
import ripwright.replay.Fault;
import ripwright.replay.Replay;
import ripwright.testing.RandomJobs;
import ripwright.testing.Seeds;

class PartsOfCertainBoardsTest {
    private static final Options SHORT_SEARCH = Options.defaults().withMostRecuts(40);

    /** Drawn jobs, every other line of whose bills comes from the first board alone. */
    private static Job tied(Job job) {
        List<Part> parts = new ArrayList<>();
        for (Part part : job.parts()) {
            boolean tied = parts.size() % 2 == 0;
            parts.add(part.toBuilder()
                    .boards(tied ? Set.of(job.boards().get(0).id()) : Set.of())
                    .build());
        }
        return job.withParts(parts);
    }

    @Test
    void plans_keep_parts_to_the_boards_they_may_come_from() {
        Seeds.each(60, (random, size) -> {
            Job job = tied(RandomJobs.growing(random, size));
            assertThat(Replay.faults(job, Planner.plan(job, SHORT_SEARCH))).isEmpty();
        });
    }

    @Test
    void a_blank_from_another_board_is_refused() {
        Seeds.each(40, 5, (random, size) -> {
            Job job = RandomJobs.growing(random, size);
            Plan plan = Planner.plan(job, SHORT_SEARCH);
            long elsewhere = plan.boards().stream()
                    .filter(cut -> !cut.board().equals(job.boards().get(0).id()))
                    .flatMap(cut -> cut.sections().stream())
                    .flatMap(section -> section.strips().stream())
                    .flatMap(strip -> strip.blanks().stream())
                    .filter(blank -> tied(job).parts().stream()
                            .anyMatch(part -> part.name().equals(blank.part())
                                    && !part.boards().isEmpty()))
                    .count();
            assertThat(Replay.faults(tied(job), plan).stream()
                            .map(Fault::rule)
                            .filter("2.boards"::equals)
                            .count())
                    .isEqualTo(elsewhere);
            return elsewhere > 0;
        });
    }
}
