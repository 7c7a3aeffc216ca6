package ripwright.internal.proof;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import ripwright.internal.bound.LowerBound;
import ripwright.internal.geometry.Layout;
import ripwright.internal.model.JobNumbers;
import ripwright.internal.model.PricedLayout;
import ripwright.job.Job;
import ripwright.measure.Money;
import ripwright.testing.Constructed;
import ripwright.testing.ConstructedJobs;
import ripwright.testing.CpSatOptimum;
import ripwright.testing.Feature;
import ripwright.testing.Features;
import ripwright.testing.JobBuilder;
import ripwright.testing.JobSize;
import ripwright.testing.LayoutCheck;
import ripwright.testing.LayoutCost;
import ripwright.testing.Optimum;
import ripwright.testing.RandomJobs;
import ripwright.testing.Seeds;

public class OptimalityProofTest {
    private static final Money A_LOT = Money.of(new BigDecimal("10000"));
    private static final Money TEN_THOUSANDTH = Money.of(new BigDecimal("0.0001"));

    private static OptimalityProof.Answer proof(Job job, Money known) {
        return new OptimalityProof(LowerBound.ofWholeBill(new JobNumbers(job), () -> false), () -> false).under(known);
    }

    private static List<Layout> layouts(OptimalityProof.Answer answer) {
        return answer.layouts().stream().map(PricedLayout::layout).toList();
    }

    @Test
    void what_it_proves_is_the_optimum() {
        Seeds.each(40, 30, (random, size) -> {
            Job job = RandomJobs.random(random, tiny(random), Features.NONE, 8);
            Optimum optimum = CpSatOptimum.stock(job);
            if (!optimum.complete()) return false;
            OptimalityProof.Answer answer = proof(job, A_LOT);
            assertThat(answer.proven()).isTrue();
            assertThat(answer.bound()).isEqualTo(optimum.cost());
            return true;
        });
    }

    @Test
    void what_it_proves_with_features_on_is_the_optimum() {
        Feature[] some = {
            Feature.DEFECTS,
            Feature.TAPER,
            Feature.CROOK,
            Feature.EDGES,
            Feature.TRIMS,
            Feature.RIPPED,
            Feature.TOGETHER,
            Feature.SPECIES,
            Feature.SHOW,
            Feature.SNEAK_UP,
            Feature.SAW_LIMITS,
            Feature.RACK
        };
        Seeds.each(60, 16, (random, size) -> {
            Features features = Features.some(random, some);
            if (features.has(Feature.CROOK)) features = features.without(Feature.TAPER); // off the reference's grid
            Job job = RandomJobs.random(random, tiny(random), features, 8);
            Optimum optimum = CpSatOptimum.stock(job);
            return optimum.complete() && agrees(job, optimum.cost());
        });
    }

    @Test
    void what_it_proves_with_offcuts_and_labor_is_the_optimum() {
        Feature[] some = {Feature.SALVAGE, Feature.LABOR, Feature.TRIMS, Feature.EDGES, Feature.RIPPED, Feature.RACK};
        Seeds.each(40, 16, (random, size) -> {
            Job job = RandomJobs.random(random, tiny(random), Features.some(random, some), 8);
            Optimum optimum = CpSatOptimum.net(job);
            return optimum.complete() && agrees(job, optimum.cost());
        });
    }

    private static JobSize tiny(SplittableRandom random) {
        return new JobSize(random.nextInt(3, 9), random.nextInt(1, 4));
    }

    /** What the proof says fits the optimum, as far as it came; whether it came to the end. */
    private static boolean agrees(Job job, Money optimum) {
        OptimalityProof.Answer answer = proof(job, A_LOT);
        assertThat(answer.bound()).isLessThanOrEqualTo(optimum.plus(TEN_THOUSANDTH));
        if (answer.proven()) assertThat(answer.bound()).isGreaterThanOrEqualTo(optimum.minus(TEN_THOUSANDTH));
        if (answer.layouts().isEmpty()) return answer.proven();
        LayoutCheck check = new LayoutCheck(job, layouts(answer));
        assertThat(check.faults()).isEmpty();
        assertThat(check.complete()).isTrue();
        Money cost = new LayoutCost(job, layouts(answer)).net();
        assertThat(cost).isGreaterThanOrEqualTo(optimum.minus(TEN_THOUSANDTH));
        if (answer.proven()) assertThat(cost).isLessThanOrEqualTo(optimum.plus(TEN_THOUSANDTH));
        return answer.proven();
    }

    @Test
    void a_random_job_of_thirty_parts_is_proven_and_made() {
        Job job = RandomJobs.random(new SplittableRandom(24), new JobSize(30, 11), Features.NONE);
        OptimalityProof.Answer answer = proof(job, A_LOT);
        assertThat(answer.proven()).isTrue();
        LayoutCheck check = new LayoutCheck(job, layouts(answer));
        assertThat(check.faults()).isEmpty();
        assertThat(check.complete()).isTrue();
        assertThat(new LayoutCost(job, layouts(answer)).net()).isEqualTo(answer.bound());
    }

    @Test
    void boards_that_are_filled_without_a_rest_are_found() {
        Seeds.each(10, (random, size) -> {
            Constructed job = ConstructedJobs.constructed(random, new JobSize(12 + size, 6), Features.NONE);
            OptimalityProof.Answer answer = proof(job.job(), A_LOT);
            assertThat(answer.proven()).isTrue();
            assertThat(answer.bound()).isEqualTo(job.best());
        });
    }

    @Test
    void a_plan_that_is_cheapest_already_is_proven_without_another() {
        Constructed job = ConstructedJobs.constructed(new SplittableRandom(1), new JobSize(20, 6), Features.NONE);
        OptimalityProof.Answer answer = proof(job.job(), job.best());
        assertThat(answer).isEqualTo(new OptimalityProof.Answer(List.of(), job.best(), true));
    }

    @Test
    void stopped_at_once_it_proves_no_more_than_the_floor() {
        Job job = RandomJobs.random(new SplittableRandom(24), new JobSize(30, 11), Features.NONE);
        LowerBound lowerBound = LowerBound.ofWholeBill(new JobNumbers(job), () -> false);
        OptimalityProof.Answer answer = new OptimalityProof(lowerBound, () -> true).under(A_LOT);
        assertThat(answer.proven()).isFalse();
        assertThat(answer.layouts()).isEmpty();
        assertThat(answer.bound()).isBetween(lowerBound.value(), A_LOT);
    }

    @Test
    void a_floor_under_short_plans_proves_none() {
        Job job = new JobBuilder("short")
                .stack(JobBuilder.maple("a", "6", "24"))
                .parts(JobBuilder.part("half", 4, "11", "5"))
                .build();
        JobNumbers numbers = new JobNumbers(job);
        OptimalityProof proof =
                new OptimalityProof(LowerBound.ofFeet(numbers, numbers.feet(0), () -> false), () -> false);
        assertThatThrownBy(() -> proof.under(A_LOT)).isInstanceOf(IllegalArgumentException.class);
    }
}
