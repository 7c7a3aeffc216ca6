package ripwright;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import ripwright.bill.Part;
import ripwright.internal.firstfit.FirstFitDecreasing;
import ripwright.internal.geometry.Layout;
import ripwright.internal.sequence.Sequencer;
import ripwright.internal.testwood.NoTestWoodException;
import ripwright.job.Job;
import ripwright.measure.BoardFeet;
import ripwright.measure.Money;
import ripwright.plan.Blank;
import ripwright.plan.Plan;
import ripwright.plan.Shortage;
import ripwright.replay.Replay;
import ripwright.testing.OddJobs;
import ripwright.testing.Seeds;

/** Plans of jobs that no shop would draw, some within next to no time. {@code -Dripwright.oddJobs=2000} draws more of them. */
class OddJobsTest {
    private static final int COUNT = Integer.getInteger("ripwright.oddJobs", 300);
    private static final List<String> SECONDS = List.of("0.02", "0.02", "0.1", "0.3");
    private static final int MOST_BOARDS_HELD_BACK = 14;

    @Test
    void every_plan_replays_and_says_of_every_part_what_is_made_and_what_is_short() {
        Seeds.each(COUNT, (random, size) -> {
            Job drawn = OddJobs.growing(random, size);
            Job job = OddJobs.within(drawn, SECONDS.get(random.nextInt(SECONDS.size())), 1 + random.nextInt(2));
            Plan plan = Planner.plan(job);
            assertThat(Replay.faults(job, plan)).isEmpty();
            assertThat(plan.cost().bound())
                    .isBetween(BigDecimal.ZERO, plan.cost().net());
            assertThat(plan.cost().gap()).isBetween(BigDecimal.ZERO, BigDecimal.ONE);
            Map<String, Integer> told = made(plan);
            for (Shortage shortage : plan.shortages()) told.merge(shortage.part(), shortage.count(), Integer::sum);
            for (Part part : job.parts()) assertThat(told).containsEntry(part.name(), part.count());
            assertThat(finished(job, made(plan)).compareTo(byFirstFit(job))).isNotNegative();
        });
    }

    private static Map<String, Integer> made(Plan plan) {
        Map<String, Integer> made = new HashMap<>();
        plan.boards().stream()
                .flatMap(board -> board.sections().stream())
                .flatMap(section -> section.strips().stream())
                .flatMap(strip -> strip.blanks().stream())
                .map(Blank::part)
                .forEach(part -> made.merge(part, 1, Integer::sum));
        return made;
    }

    private static BoardFeet finished(Job job, Map<String, Integer> made) {
        BoardFeet finished = BoardFeet.ZERO;
        for (Part part : job.parts())
            for (int i = made.getOrDefault(part.name(), 0); i > 0; i--) finished = finished.plus(part.boardFeet());
        return finished;
    }

    /** The most finished wood that first-fit decreasing makes with all boards, or with one of them held back for test wood. */
    private static BoardFeet byFirstFit(Job job) {
        BoardFeet most = BoardFeet.ZERO;
        int held = job.testRip().tries() == 0
                ? 0
                : Math.min(MOST_BOARDS_HELD_BACK, job.boards().size());
        for (int b = -1; b < held; b++) {
            if (b >= 0 && job.boards().size() == 1) break;
            BoardFeet made =
                    provable(job, b < 0 ? FirstFitDecreasing.plan(job) : FirstFitDecreasing.holdingBack(job, b));
            if (made.compareTo(most) > 0) most = made;
        }
        return most;
    }

    /** The finished wood in those layouts; none where they leave a rip setting without test wood. */
    private static BoardFeet provable(Job job, List<Layout> layouts) {
        try {
            return finished(job, made(new Sequencer(job, layouts, Money.ZERO).plan()));
        } catch (NoTestWoodException e) {
            return BoardFeet.ZERO;
        }
    }
}
