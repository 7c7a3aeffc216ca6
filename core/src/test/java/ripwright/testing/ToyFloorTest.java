package ripwright.testing;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import ripwright.internal.bound.LowerBound;
import ripwright.internal.bound.WorkBudget;
import ripwright.internal.geometry.Layout;
import ripwright.internal.model.JobNumbers;
import ripwright.internal.model.PricedLayout;
import ripwright.internal.proof.OptimalityProof;
import ripwright.job.Job;
import ripwright.measure.Money;

/** Floors and proofs beside the best of every way to cut toys, also where offcuts of crooked, tapered, bad wood fetch money. */
class ToyFloorTest {
    private static final Money A_LOT = Money.of(new BigDecimal("10000"));
    private static final Money TEN_THOUSANDTH = Money.of(new BigDecimal("0.0001"));
    private static final Feature[] SOME = {
        Feature.SALVAGE,
        Feature.LABOR,
        Feature.DEFECTS,
        Feature.TAPER,
        Feature.CROOK,
        Feature.EDGES,
        Feature.TRIMS,
        Feature.ROUGH,
        Feature.RIPPED,
        Feature.SPECIES,
        Feature.RACK,
        Feature.SAW_LIMITS,
        Feature.SNEAK_UP,
        Feature.SHOW
    };

    @Test
    void no_way_to_cut_a_toy_costs_less_than_its_floor_or_its_proof_says() {
        Set<Feature> seen = EnumSet.noneOf(Feature.class);
        int[] proven = new int[1];
        Seeds.each(200, 5, (random, size) -> {
            Features features = Features.some(random, SOME);
            Job toy = ToyJobs.toy(random, features, 5, 3);
            Optimum best = new EveryLayout(toy, ToyJobs.TICK, LayoutCost::net).best();
            if (!best.complete()) return false;
            seen.addAll(features.on());
            Money cost = best.cost().plus(TEN_THOUSANDTH);
            LowerBound lowerBound = LowerBound.ofWholeBill(new JobNumbers(toy), () -> false);
            assertThat(lowerBound.value()).isLessThanOrEqualTo(cost);
            OptimalityProof.Answer answer =
                    new OptimalityProof(lowerBound, new WorkBudget(() -> false, 200)).under(A_LOT);
            assertThat(answer.bound()).isLessThanOrEqualTo(cost);
            if (answer.proven()) proven[0]++;
            if (features.has(Feature.CROOK) || features.has(Feature.TAPER)) return false; // off the toy's grid
            Money least = best.cost().minus(TEN_THOUSANDTH);
            if (answer.proven()) assertThat(answer.bound()).isGreaterThanOrEqualTo(least);
            List<Layout> layouts =
                    answer.layouts().stream().map(PricedLayout::layout).toList();
            if (!layouts.isEmpty())
                assertThat(new LayoutCost(toy, layouts).net()).isGreaterThanOrEqualTo(least);
            return answer.proven();
        });
        assertThat(seen).containsExactlyInAnyOrder(SOME);
        assertThat(proven[0]).isGreaterThan(20);
    }
}
