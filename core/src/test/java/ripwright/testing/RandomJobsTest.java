package ripwright.testing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import ripwright.bill.Part;
import ripwright.internal.firstfit.FirstFitDecreasing;
import ripwright.job.Job;
import ripwright.stock.Board;
import ripwright.stock.Defect;

class RandomJobsTest {
    @Test
    void the_same_seed_draws_the_same_job() {
        assertThat(RandomJobs.growing(new SplittableRandom(3), 12))
                .isEqualTo(RandomJobs.growing(new SplittableRandom(3), 12));
    }

    @Test
    void a_plain_job_has_clear_straight_boards_and_plain_parts_on_the_grid() {
        Job job = RandomJobs.random(new SplittableRandom(5), new JobSize(30, 9), Features.NONE);
        assertThat(job.stack()).hasSize(9).allSatisfy(board -> {
            assertThat(board.straightEdges()).isEqualTo(2);
            assertThat(board.defects()).isEmpty();
            assertThat(board.length().nanometers() % 793_750).isZero();
            assertThat(board.width().nanometers() % 793_750).isZero();
        });
        assertThat(job.parts().stream().mapToInt(Part::count).sum()).isEqualTo(30);
        assertThat(job.parts()).allSatisfy(part -> {
            assertThat(part.sneakUp().isZero() && part.edgeAllowance().isZero()).isTrue();
            assertThat(part.length().nanometers() % 793_750).isZero();
        });
        assertThat(job.rack()).isEmpty();
        assertThat(job.labor()).isEmpty();
    }

    @Test
    void every_feature_is_met_within_a_few_dozen_jobs() {
        Set<String> met = new HashSet<>();
        SplittableRandom random = new SplittableRandom(11);
        for (int i = 0; i < 40; i++) note(met, RandomJobs.random(random, new JobSize(20, 6), Features.ALL));
        assertThat(met)
                .contains("bad wood", "sound defect", "taper", "one straight edge", "no straight edge", "crook", "trim")
                .contains("rough", "ripped", "own price", "together", "several species", "any species", "show")
                .contains("hidden", "fitted", "sneak-up", "allowance", "salvage", "labor", "rack", "worthless offcut")
                .contains("longest rip", "shortest rip", "narrowest rip", "shortest crosscut", "tries", "thicknesses")
                .contains("part narrower than the saw rips", "part shorter than the saw crosscuts");
    }

    private static void note(Set<String> met, Job job) {
        job.stack().forEach(board -> note(met, board));
        job.parts().forEach(part -> note(met, job, part));
        if (job.salvage().signum() > 0) met.add("salvage");
        if (job.labor().isPresent()) met.add("labor");
        if (!job.rack().isEmpty()) met.add("rack");
        if (job.rack().stream().anyMatch(offcut -> job.price(offcut).signum() == 0)) met.add("worthless offcut");
        job.saw().longestRip().ifPresent(any -> met.add("longest rip"));
        job.saw().shortestRip().ifPresent(any -> met.add("shortest rip"));
        job.saw().narrowestRip().ifPresent(any -> met.add("narrowest rip"));
        job.saw().shortestCrosscut().ifPresent(any -> met.add("shortest crosscut"));
        if (job.testRip().tries() > 0) met.add("tries");
        if (job.parts().stream().map(Part::thickness).distinct().count() > 1) met.add("thicknesses");
    }

    private static void note(Set<String> met, Board board) {
        for (Defect defect : board.defects())
            met.add(defect.blocks() == Defect.Blocks.ALL ? "bad wood" : "sound defect");
        if (board.tapered()) met.add("taper");
        if (board.straightEdges() < 2) met.add(board.straightEdges() == 1 ? "one straight edge" : "no straight edge");
        if (!board.crook().isZero()) met.add("crook");
        if (!board.endTrim().near().isZero()) met.add("trim");
        if (board.rough()) met.add("rough");
        if (board.ripped()) met.add("ripped");
        if (board.price().isPresent()) met.add("own price");
    }

    private static void note(Set<String> met, Job job, Part part) {
        part.together().ifPresent(any -> met.add("together"));
        if (part.species().size() > 1) met.add("several species");
        if (part.species().isEmpty()) met.add("any species");
        met.add(part.face() == Part.Face.SHOW ? "show" : "hidden");
        if (part.fitted()) met.add("fitted");
        if (!part.sneakUp().isZero()) met.add("sneak-up");
        if (!part.edgeAllowance().isZero()) met.add("allowance");
        if (job.saw()
                .narrowestRip()
                .filter(least -> least.exceeds(part.blankWidth()))
                .isPresent()) met.add("part narrower than the saw rips");
        if (job.saw()
                .shortestCrosscut()
                .filter(least -> least.exceeds(part.blankLength()))
                .isPresent()) met.add("part shorter than the saw crosscuts");
    }

    @Test
    void short_stock_leaves_parts_unmade_by_the_hand_rule_more_often_than_not() {
        List<Boolean> complete = new java.util.ArrayList<>();
        SplittableRandom random = new SplittableRandom(2);
        for (int i = 0; i < 20; i++) {
            Job job = RandomJobs.random(random, new JobSize(30, 9), Features.of(Feature.SHORT_STOCK));
            complete.add(new LayoutCheck(job, FirstFitDecreasing.plan(job)).complete());
        }
        assertThat(complete.stream().filter(done -> !done).count()).isGreaterThan(10);
    }
}
