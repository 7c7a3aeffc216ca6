package ripwright.internal.bound;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import ripwright.internal.model.JobNumbers;
import ripwright.internal.pricing.PricingProblem;
import ripwright.testing.Constructed;
import ripwright.testing.ConstructedJobs;
import ripwright.testing.Feature;
import ripwright.testing.Features;
import ripwright.testing.JobSize;
import ripwright.testing.RandomJobs;
import ripwright.testing.Seeds;

public class SubgradientTest {
    @Test
    void it_comes_near_the_known_best_from_below() {
        Seeds.each(8, (random, size) -> {
            Constructed built =
                    ConstructedJobs.constructed(random, new JobSize(12 + 4 * size, 4 + size), Features.NONE);
            double known = built.best().value().doubleValue();
            LagrangianBound lowerBound = lowerBound(Demand.wholeBill(new JobNumbers(built.job())), new ArrayList<>());
            double value =
                    lowerBound.demand().money.money(lowerBound.money()).value().doubleValue();
            assertThat(value).isBetween(0.97 * known, known * (1 + 1e-9));
        });
    }

    @Test
    void it_is_no_higher_than_the_linear_program_and_rises_on_its_way() {
        Seeds.each(5, 3, (random, size) -> {
            Features features = Features.some(
                    random, Feature.DEFECTS, Feature.CROOK, Feature.SALVAGE, Feature.LABOR, Feature.TRIMS);
            JobNumbers numbers =
                    new JobNumbers(RandomJobs.random(random, new JobSize(6 + 2 * size, 4 + size), features));
            List<Long> raised = new ArrayList<>();
            LagrangianBound lowerBound = lowerBound(Demand.wholeBill(numbers), raised);
            LowerBound program = LowerBound.ofWholeBill(numbers, () -> false);
            assertThat(raised).isSorted();
            if (cannotBeMade(program)) return false; // the higher the floor the better
            assertThat(lowerBound.money())
                    .isLessThanOrEqualTo((long) (program.lagrangianBound().money() * (1 + 1e-6)) + 1);
            return true;
        });
    }

    private static boolean cannotBeMade(LowerBound lowerBound) {
        Demand demand = lowerBound.demand();
        long stack = demand.due;
        for (int b = 0; b < demand.cost.length; b++) stack += demand.cost[b] * demand.copies[b];
        return lowerBound.lagrangianBound().money() > stack;
    }

    private static LagrangianBound lowerBound(Demand demand, List<Long> raised) {
        PricingProblem pricing = new PricingProblem(demand.numbers, demand.types, demand.money);
        LagrangianBound start = LagrangianBound.of(demand, LowerBound.firstPrices(demand), pricing);
        return new Subgradient(demand, pricing, start).run(400, () -> false, raised::add);
    }
}
