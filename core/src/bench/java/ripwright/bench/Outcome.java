package ripwright.bench;

import java.math.BigDecimal;
import java.util.Optional;
import ripwright.plan.Cost;

/**
 * What came of one job. A net cost is absent where some parts were not made.
 *
 * @param hand the hand rule's net cost
 * @param plain plain OptaPlanner's
 * @param ours the planner's
 * @param cost the planner's cost as the plan has it
 * @param known the best net cost known
 * @param toBest after how many seconds the planner had its best answer
 * @param elapsed after how many seconds the planner gave its plan
 * @param heap the most heap in use while it planned, in MB, garbage included
 */
record Outcome(
        Optional<BigDecimal> hand,
        Optional<BigDecimal> plain,
        Optional<BigDecimal> ours,
        Cost cost,
        Optional<BigDecimal> known,
        double toBest,
        double elapsed,
        double heap) {
    /** What a part not made costs: more than any wood. */
    static final double SHORT = Double.POSITIVE_INFINITY;

    /** Refuses what cannot be: a whole bill made for less than the best known, or a bound above it. */
    Outcome {
        if (known.isPresent() && ours.isPresent()) {
            if (ours.get().compareTo(known.get()) < 0)
                throw new IllegalStateException("Net " + ours.get() + " is under the best, " + known.get() + ".");
            if (cost.bound().compareTo(known.get()) > 0)
                throw new IllegalStateException("Bound " + cost.bound() + " is over the best, " + known.get() + ".");
        }
    }

    /** A cost as a number. */
    static double number(Optional<BigDecimal> cost) {
        return cost.map(BigDecimal::doubleValue).orElse(SHORT);
    }

    /** How much a cost is over the best known, else over the bound, in percent of that. */
    double over(Optional<BigDecimal> net) {
        if (known.isEmpty() && ours.isEmpty()) return SHORT; // the bound is one for less than the whole bill
        double best = known.orElse(cost.bound()).doubleValue();
        return 100 * (number(net) / best - 1);
    }
}
