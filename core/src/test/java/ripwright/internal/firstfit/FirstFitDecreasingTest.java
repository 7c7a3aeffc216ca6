package ripwright.internal.firstfit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import ripwright.internal.geometry.Layout;
import ripwright.internal.geometry.Layout.Blank;
import ripwright.internal.geometry.Layout.Section;
import ripwright.internal.geometry.Layout.Strip;
import ripwright.job.Job;
import ripwright.stock.Edge;
import ripwright.testing.Feature;
import ripwright.testing.Features;
import ripwright.testing.JobBuilder;
import ripwright.testing.JobSize;
import ripwright.testing.LayoutCheck;
import ripwright.testing.RandomJobs;
import ripwright.testing.Seeds;

class FirstFitDecreasingTest {
    private static final long INCH = 25_400_000;

    @Test
    void the_widest_comes_first_and_each_goes_into_the_first_strip_with_room() {
        Job job = new JobBuilder("hand")
                .stack(JobBuilder.maple("a", "6", "40"), JobBuilder.maple("b", "6", "40"))
                .parts(JobBuilder.part("slat", 3, "19", "2"), JobBuilder.part("rail", 1, "30", "3"))
                .build();
        // 3 and 2 wide with a kerf come to 5 1/8; two slats of 19 with a kerf to 38 1/8; the third slat opens board b.
        assertThat(FirstFitDecreasing.plan(job))
                .containsExactly(
                        new Layout(
                                0,
                                List.of(section(
                                        0,
                                        40,
                                        strip(3, 1, 0),
                                        new Strip(
                                                2 * INCH,
                                                List.of(new Blank(0, 0), new Blank(0, 19 * INCH + INCH / 8)))))),
                        new Layout(1, List.of(section(0, 40, strip(2, 0, 0)))));
    }

    @Test
    void every_layout_can_be_cut() {
        Seeds.each(1_500, RandomJobs::growing, job -> {
            List<Layout> layouts = FirstFitDecreasing.plan(job);
            assertThat(new LayoutCheck(job, layouts).faults()).isEmpty();
        });
    }

    @Test
    void most_jobs_with_enough_wood_are_made_whole() {
        Seeds.each(60, 31, (random, size) -> {
            Job job = RandomJobs.random(
                    random,
                    JobSize.small(random),
                    Features.of(Feature.DEFECTS, Feature.CROOK, Feature.TRIMS, Feature.TAPER));
            return new LayoutCheck(job, FirstFitDecreasing.plan(job)).complete();
        });
    }

    private static Section section(long from, long to, Strip... strips) {
        return new Section(from * INCH, to * INCH, Edge.LEFT, 0, List.of(strips));
    }

    private static Strip strip(long width, int part, long from) {
        return new Strip(width * INCH, List.of(new Blank(part, from * INCH)));
    }
}
