package ripwright.internal.onedimensional;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import ripwright.internal.geometry.Layout;
import ripwright.internal.model.JobNumbers;
import ripwright.internal.model.PricedLayout;
import ripwright.internal.search.Incumbent;
import ripwright.job.Job;
import ripwright.measure.Length;
import ripwright.measure.Money;
import ripwright.saw.Labor;
import ripwright.stock.Defect;
import ripwright.testing.FewestStrips;
import ripwright.testing.JobBuilder;
import ripwright.testing.LayoutCheck;
import ripwright.testing.LayoutCost;
import ripwright.testing.RippedJobs;
import ripwright.testing.Seeds;

public class RippedStockHeuristicTest {
    @Test
    void strips_can_be_cut_and_cost_no_less_than_the_best_of_all_ways_to_share_the_blanks() {
        Seeds.each(300, 180, (random, size) -> {
            Job job = small(random, size);
            Optional<Money> least = FewestStrips.cost(job);
            List<Layout> layouts = layouts(job, random);
            LayoutCheck check = new LayoutCheck(job, layouts);
            assertThat(check.faults()).isEmpty();
            if (!check.complete()) return false;
            assertThat(new LayoutCost(job, layouts).stock()).isGreaterThanOrEqualTo(least.orElseThrow());
            return true;
        });
    }

    @Test
    void nearly_all_small_work_costs_the_least_there_is() {
        int possible = 0;
        int reached = 0;
        for (int seed = 0; seed < 300; seed++) {
            SplittableRandom random = new SplittableRandom(seed);
            Job job = small(random, 17);
            Optional<Money> least = FewestStrips.cost(job);
            if (least.isEmpty()) continue;
            List<Layout> layouts = layouts(job, random);
            possible++;
            boolean complete = new LayoutCheck(job, layouts).complete();
            if (complete && new LayoutCost(job, layouts).stock().equals(least.get())) reached++;
        }
        assertThat(possible).isGreaterThan(100);
        assertThat(reached).isGreaterThan(possible * 95 / 100);
    }

    @Test
    void many_blanks_off_any_grid_can_be_cut() {
        Seeds.each(12, (random, size) -> {
            Job job = RippedJobs.random(random, 30 * size, 10 * size, new Length(25_400));
            List<Layout> layouts = layouts(job, random);
            assertThat(new LayoutCheck(job, layouts).faults()).isEmpty();
            assertThat(layouts).isNotEmpty();
        });
    }

    @Test
    void the_same_seed_gives_the_same_strips() {
        Job job = RippedJobs.random(new SplittableRandom(5), 60, 40);
        assertThat(layouts(job, new SplittableRandom(1))).isEqualTo(layouts(job, new SplittableRandom(1)));
    }

    @Test
    void boards_with_defects_parts_that_belong_together_and_boards_to_be_ripped_are_left_alone() {
        Defect knot = new Defect(
                Length.inches("10"), Length.inches("11"), Length.ZERO, Length.inches("1"), "knot", Defect.Blocks.ALL);
        Job job = new JobBuilder("mixed")
                .stack(
                        JobBuilder.maple("wide", "6", "60"),
                        JobBuilder.maple("knotty", "2", "60").ripped(true).defects(List.of(knot)),
                        JobBuilder.maple("clear", "2", "60").ripped(true))
                .parts(
                        JobBuilder.part("rail", 2, "20", "2"),
                        JobBuilder.part("pair", 2, "10", "2").together("pairs"))
                .build();
        RippedStockHeuristic work = new RippedStockHeuristic(new JobNumbers(job), () -> false);
        assertThat(work.any()).isTrue();
        assertThat(work.all()).isFalse();
        List<Layout> layouts = layouts(job, new SplittableRandom(0));
        assertThat(layouts).extracting(Layout::board).containsExactly(2);
        assertThat(new LayoutCheck(job, layouts).made()).containsExactly(2, 0);
    }

    @Test
    void cuts_at_the_trims_of_a_strip_are_paid() {
        Job job = new JobBuilder("trims")
                .stack(JobBuilder.maple("strip", "2", "60")
                        .ripped(true)
                        .endTrim(Length.inches("1/2"), Length.inches("1/2")))
                .parts(JobBuilder.part("rail", 2, "20", "2"))
                .labor(new Labor(new BigDecimal("60"), BigDecimal.ZERO, BigDecimal.ZERO, BigDecimal.ONE))
                .build();
        @Nullable
        PricedLayout[] layouts =
                new RippedStockHeuristic(new JobNumbers(job), () -> false).layouts(new SplittableRandom(0));
        // Two trims, one cut between the rails, one behind the second: four minutes at 1 a minute.
        assertThat(Incumbent.of(new JobNumbers(job), layouts).net() - new JobNumbers(job).cost(0))
                .isEqualTo(4_000_000);
    }

    private static Job small(SplittableRandom random, int size) {
        return RippedJobs.random(random, 1 + random.nextInt(Math.min(9, 1 + size)), 1 + random.nextInt(5));
    }

    private static List<Layout> layouts(Job job, SplittableRandom random) {
        @Nullable PricedLayout[] layouts = new RippedStockHeuristic(new JobNumbers(job), () -> false).layouts(random);
        return Stream.of(layouts)
                .filter(Objects::nonNull)
                .map(PricedLayout::layout)
                .toList();
    }
}
