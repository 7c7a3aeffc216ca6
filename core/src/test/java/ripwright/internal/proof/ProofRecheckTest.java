package ripwright.internal.proof;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import ripwright.internal.bound.LowerBound;
import ripwright.internal.bound.WorkBudget;
import ripwright.internal.geometry.Layout;
import ripwright.internal.model.JobNumbers;
import ripwright.internal.model.PricedLayout;
import ripwright.internal.model.ScaledMoney;
import ripwright.job.Job;
import ripwright.measure.Money;
import ripwright.testing.Constructed;
import ripwright.testing.ConstructedJobs;
import ripwright.testing.CpSatOptimum;
import ripwright.testing.Feature;
import ripwright.testing.Features;
import ripwright.testing.JobSize;
import ripwright.testing.LayoutCheck;
import ripwright.testing.LayoutCost;
import ripwright.testing.Optimum;
import ripwright.testing.RandomJobs;
import ripwright.testing.Seeds;

/** Every floor that a proof gives, gone over from its rows and columns by {@link ProofCheck}. */
public class ProofRecheckTest {
    static final Money A_LOT = Money.of(new BigDecimal("10000"));
    private static final Money GRAIN = Money.of(new BigDecimal("0.000101")); // what a proof does not tell apart
    private static final int QUESTIONS = 2_000;
    private static final int QUESTIONS_WITH_MONEY = 60; // such proofs end unevenly late

    static Job plain(SplittableRandom random, int parts, int boards) {
        JobSize size = new JobSize(random.nextInt(3, parts + 1), random.nextInt(1, boards + 1));
        return RandomJobs.random(random, size, Features.NONE);
    }

    static OptimalityProof.Recorded proof(Job job, Money known) {
        boolean money = job.labor().isPresent() || job.salvage().signum() > 0;
        WorkBudget stop = new WorkBudget(() -> false, money ? QUESTIONS_WITH_MONEY : QUESTIONS);
        return new OptimalityProof(LowerBound.ofWholeBill(new JobNumbers(job), () -> false), stop).recorded(known);
    }

    /** Whether a proof came to the end, and how many nodes of each sort it took to go over it. */
    private record Checked(boolean proven, Map<Class<?>, Integer> seen) {}

    /** Goes over a proof, and whether what it says is what its record says. */
    private static Checked recheck(Job job, Money known) {
        OptimalityProof.Recorded proof = proof(job, known);
        ProofCheck check = new ProofCheck(job);
        assertThat(check.faults(proof.rests())).isEmpty();
        Money below = new ScaledMoney(job).money(proof.rests().money());
        assertThat(proof.answer().bound()).isLessThanOrEqualTo(below.plus(GRAIN));
        List<Layout> layouts =
                proof.answer().layouts().stream().map(PricedLayout::layout).toList();
        if (!layouts.isEmpty()) {
            LayoutCheck cut = new LayoutCheck(job, layouts);
            assertThat(cut.faults()).isEmpty();
            assertThat(cut.complete()).isTrue();
        }
        if (!proof.answer().proven()) return new Checked(false, check.seen());
        Money cost = layouts.isEmpty() ? known : new LayoutCost(job, layouts).net();
        assertThat(cost.minus(GRAIN)).isLessThanOrEqualTo(below);
        return new Checked(true, check.seen());
    }

    @Test
    void proofs_of_plain_jobs_hold() {
        Map<Class<?>, Integer> seen = new HashMap<>();
        Seeds.each(160, 150, (random, size) -> {
            Job job = plain(random, 18, 8);
            Checked checked = recheck(job, A_LOT);
            checked.seen().forEach((sort, n) -> seen.merge(sort, n, Integer::sum));
            return checked.proven();
        });
        assertThat(seen)
                .containsKeys(
                        ProofRecord.Fork.class,
                        ProofRecord.Closed.class,
                        ProofRecord.Barred.class,
                        ProofRecord.Leaf.class);
    }

    @Test
    void proofs_of_boards_filled_without_a_rest_hold() {
        Seeds.each(40, 36, (random, size) -> {
            JobSize drawn = new JobSize(random.nextInt(4, 15), random.nextInt(1, 6));
            Features features = Features.some(random, Feature.TRIMS, Feature.EDGES, Feature.RIPPED);
            Constructed job = ConstructedJobs.constructed(random, drawn, features);
            if (choices(job.job()) > 5_000) return false;
            return recheck(job.job(), random.nextBoolean() ? A_LOT : job.best()).proven();
        });
    }

    private static double choices(Job job) {
        return job.parts().stream().mapToDouble(part -> part.count() + 1).reduce(1, (a, b) -> a * b);
    }

    @Test
    void proofs_hold_whatever_boards_and_parts_are_like() {
        Set<Feature> money = EnumSet.of(Feature.SALVAGE, Feature.LABOR, Feature.SHORT_STOCK);
        Feature[] some = EnumSet.complementOf(EnumSet.copyOf(money)).toArray(Feature[]::new);
        Seeds.each(120, 90, (random, size) -> {
            JobSize drawn = new JobSize(random.nextInt(3, 13), random.nextInt(1, 6));
            return recheck(RandomJobs.random(random, drawn, Features.some(random, some)), A_LOT)
                    .proven();
        });
    }

    @Test
    void proofs_hold_where_offcuts_and_labor_count() {
        Feature[] some = {
            Feature.SALVAGE,
            Feature.LABOR,
            Feature.DEFECTS,
            Feature.TRIMS,
            Feature.EDGES,
            Feature.RIPPED,
            Feature.RACK,
            Feature.SPECIES,
            Feature.ROUGH,
            Feature.THICKNESSES,
            Feature.SAW_LIMITS,
            Feature.TOGETHER,
            Feature.SNEAK_UP,
            Feature.EDGE_ALLOWANCE
        };
        Seeds.each(60, 20, (random, size) -> {
            JobSize drawn = new JobSize(random.nextInt(3, 8), random.nextInt(1, 3));
            return recheck(RandomJobs.random(random, drawn, Features.some(random, some), 8), A_LOT)
                    .proven();
        });
    }

    /** Crook and taper leave nothing that fetches money of a length at which something turns; without salvage they may. */
    @Test
    void proofs_hold_where_labor_counts_on_crooked_and_tapered_boards() {
        Feature[] some = {Feature.TAPER, Feature.CROOK, Feature.TRIMS, Feature.SAW_LIMITS, Feature.DEFECTS};
        Seeds.each(30, 9, (random, size) -> {
            JobSize drawn = new JobSize(random.nextInt(3, 7), random.nextInt(1, 4));
            Set<Feature> on = new HashSet<>(Features.some(random, some).on());
            on.add(Feature.LABOR);
            return recheck(RandomJobs.random(random, drawn, new Features(on), 8), A_LOT)
                    .proven();
        });
    }

    // That what it reckons a board to give and to earn is neither too much nor too little.

    @Test
    void its_boards_together_cost_what_the_cheapest_plan_costs() {
        Feature[] some = {
            Feature.EDGES, Feature.TRIMS, Feature.SAW_LIMITS, Feature.SNEAK_UP, Feature.RACK, Feature.ROUGH
        };
        Seeds.each(20, 12, (random, size) -> {
            JobSize drawn = new JobSize(random.nextInt(3, 8), random.nextInt(1, 3));
            Job job = RandomJobs.random(random, drawn, Features.some(random, some), 8);
            return agrees(job, CpSatOptimum.stock(job));
        });
    }

    @Test
    void its_boards_together_cost_what_the_cheapest_plan_costs_with_offcuts_and_labor() {
        Feature[] some = {
            Feature.SALVAGE,
            Feature.LABOR,
            Feature.EDGES,
            Feature.TRIMS,
            Feature.SAW_LIMITS,
            Feature.RACK,
            Feature.ROUGH
        };
        Seeds.each(25, 14, (random, size) -> {
            JobSize drawn = new JobSize(random.nextInt(3, 7), random.nextInt(1, 3));
            Job job = RandomJobs.random(random, drawn, Features.some(random, some), 8);
            return agrees(job, CpSatOptimum.net(job));
        });
    }

    /** Whether there is a plan that makes the whole bill, and so a cost to compare. */
    private static boolean agrees(Job job, Optimum optimum) {
        if (!optimum.complete()) return false;
        Money cost = new ScaledMoney(job).money(new ProofCheck(job).cheapest());
        assertThat(cost).isBetween(optimum.cost().minus(GRAIN), optimum.cost().plus(GRAIN));
        return true;
    }
}
