package ripwright.testing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import ripwright.internal.geometry.Layout;
import ripwright.job.Job;

class PlainOptaPlannerTest {
    private static final long LOOKS = 3_000;

    @Test
    void every_layout_can_be_cut() {
        Seeds.each(60, RandomJobs::growing, job -> {
            List<Layout> layouts = PlainOptaPlanner.plan(job, LOOKS / 10, 1);
            assertThat(new LayoutCheck(job, layouts).faults()).isEmpty();
        });
    }

    @Test
    void the_same_seed_gives_the_same_layouts() {
        Job job = RandomJobs.random(new SplittableRandom(4), new JobSize(30, 9), Features.NONE);
        assertThat(PlainOptaPlanner.plan(job, LOOKS, 1)).isEqualTo(PlainOptaPlanner.plan(job, LOOKS, 1));
        assertThat(PlainOptaPlanner.plan(job, LOOKS, 2)).isNotEqualTo(PlainOptaPlanner.plan(job, LOOKS, 1));
    }

    @Test
    void it_makes_every_part_where_there_is_wood_and_never_beats_the_best() {
        Seeds.each(
                10,
                (random, size) -> ConstructedJobs.constructed(random, JobSize.small(random), Features.NONE),
                drawn -> {
                    List<Layout> layouts = PlainOptaPlanner.plan(drawn.job(), LOOKS, 1);
                    assertThat(new LayoutCheck(drawn.job(), layouts).faults()).isEmpty();
                    assertThat(new LayoutCheck(drawn.job(), layouts).complete()).isTrue();
                    assertThat(new LayoutCost(drawn.job(), layouts).stock()).isGreaterThan(drawn.best());
                });
    }

    @Test
    void a_longer_search_is_no_dearer_than_a_short_one() {
        Job job = RandomJobs.random(new SplittableRandom(9), new JobSize(30, 12), Features.NONE);
        List<Layout> brief = PlainOptaPlanner.plan(job, LOOKS / 3, 1);
        List<Layout> longer = PlainOptaPlanner.plan(job, 10 * LOOKS, 1);
        assertThat(new LayoutCost(job, longer).stock()).isLessThan(new LayoutCost(job, brief).stock());
    }
}
