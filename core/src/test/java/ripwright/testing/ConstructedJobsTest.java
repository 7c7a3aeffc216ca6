package ripwright.testing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import ripwright.bill.Part;
import ripwright.internal.firstfit.FirstFitDecreasing;
import ripwright.internal.geometry.Layout;
import ripwright.measure.Money;

class ConstructedJobsTest {
    @Test
    void its_own_layouts_can_be_cut_make_every_part_and_cost_the_best() {
        Seeds.each(400, ConstructedJobsTest::growing, drawn -> {
            LayoutCheck check = new LayoutCheck(drawn.job(), drawn.layouts());
            assertThat(check.faults()).isEmpty();
            assertThat(check.complete()).isTrue();
            assertThat(new LayoutCost(drawn.job(), drawn.layouts()).stock()).isEqualTo(drawn.best());
        });
    }

    @Test
    void its_own_layouts_leave_nothing_over_but_raw_ends_and_rough_edges() {
        Seeds.each(200, ConstructedJobsTest::growing, drawn -> {
            for (Layout layout : drawn.layouts())
                for (Piece piece : new Leftovers(drawn.job(), layout).pieces())
                    assertThat(piece.right().isEmpty() && piece.left() > 0)
                            .as("beside the last strip: " + piece)
                            .isTrue();
        });
    }

    @Test
    void the_hand_rule_never_beats_the_best() {
        Seeds.each(400, 280, ConstructedJobsTest::growing, drawn -> {
            List<Layout> layouts = FirstFitDecreasing.plan(drawn.job());
            assertThat(new LayoutCheck(drawn.job(), layouts).faults()).isEmpty();
            if (!new LayoutCheck(drawn.job(), layouts).complete()) return false;
            assertThat(new LayoutCost(drawn.job(), layouts).stock()).isGreaterThanOrEqualTo(drawn.best());
            return true;
        });
    }

    @Test
    void a_medium_job_has_the_size_of_the_study() {
        SplittableRandom random = new SplittableRandom(1);
        Constructed drawn = ConstructedJobs.constructed(random, JobSize.medium(random), Features.NONE);
        int parts = drawn.job().parts().stream().mapToInt(Part::count).sum();
        assertThat(parts).isBetween(120, 215);
        assertThat(drawn.job().stack()).hasSize(25);
        assertThat(drawn.layouts()).hasSizeBetween(8, 24);
        assertThat(drawn.best()).isGreaterThan(Money.ZERO);
    }

    @Test
    void the_same_seed_builds_the_same_job() {
        assertThat(growing(new SplittableRandom(7), 9)).isEqualTo(growing(new SplittableRandom(7), 9));
    }

    private static Constructed growing(SplittableRandom random, int size) {
        JobSize grown = new JobSize(random.nextInt(1, 3 * size + 2), random.nextInt(1, 2 + size));
        return ConstructedJobs.constructed(random, grown, Features.some(random));
    }
}
