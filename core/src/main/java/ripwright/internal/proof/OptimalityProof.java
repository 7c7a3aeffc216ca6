package ripwright.internal.proof;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BooleanSupplier;
import java.util.stream.IntStream;
import ripwright.internal.bound.Column;
import ripwright.internal.bound.Demand;
import ripwright.internal.bound.LagrangianBound;
import ripwright.internal.bound.LowerBound;
import ripwright.internal.model.PricedLayout;
import ripwright.internal.pricing.PricingProblem;
import ripwright.internal.pricing.PricingStopped;
import ripwright.measure.Money;

/**
 * Proves a plan the cheapest, or finds a cheaper one, for small jobs: sets of whole boards one after another, always one that
 * may be the cheapest, until one makes the bill. Most sets die by what former prices say about them, of the others many by a
 * linear program of their own; the rest are searched by branch and price. So each set that is done with raises the floor.
 *
 * <p>Where the pricing problem does not know a board to the last (defects, taper, crook, coarse grids) a set may stay open; the floor
 * then stops below it.
 */
public final class OptimalityProof {
    /**
     * How far a proof came.
     *
     * @param layouts of a plan cheaper than the one that was known; none when no cheaper one was found
     * @param bound what no plan costs less than
     * @param proven whether the plan found, or else the one known, is the cheapest there is
     */
    public record Answer(List<PricedLayout> layouts, Money bound, boolean proven) {
        /** Keeps a copy of the list. */
        public Answer {
            layouts = List.copyOf(layouts);
        }
    }

    private final LowerBound lowerBound;
    private final Demand demand;
    private final PricingProblem pricing;
    private final DualCuts rows;
    private final List<List<Column>> pool = new ArrayList<>();
    private final long[] missing;
    private final double unit; // money in one of the linear programs'
    private final BooleanSupplier stop;
    private List<PricedLayout> best = List.of();

    /**
     * For the job of a floor under its whole bill.
     *
     * @param stop asked often; true ends the proof as far as it came
     */
    public OptimalityProof(LowerBound lowerBound, BooleanSupplier stop) {
        this(lowerBound, stop, () -> false);
    }

    /** The same; {@code abort} is asked in the middle of a pricing, very often, and ends the proof too. */
    public OptimalityProof(LowerBound lowerBound, BooleanSupplier stop, BooleanSupplier abort) {
        this.lowerBound = lowerBound;
        lowerBound.pricing().abortWhen(abort);
        this.stop = stop;
        demand = lowerBound.demand();
        pricing = lowerBound.pricing();
        rows = new DualCuts(demand);
        for (LagrangianBound asked : lowerBound.asked()) rows.add(asked.prices(), asked.worths());
        for (int b = 0; b < demand.copies.length; b++) pool.add(new ArrayList<>());
        for (Column column : lowerBound.columns())
            pool.get(column.pattern().boardType()).add(column);
        long[] prices = lowerBound.lagrangianBound().prices();
        long dear = IntStream.range(0, prices.length)
                .mapToLong(k -> prices[k] / demand.feet[k])
                .max()
                .orElse(0);
        missing = new long[prices.length];
        for (int k = 0; k < missing.length; k++)
            missing[k] = demand.boardsAlone
                    ? Math.max(prices[k], dear * demand.feet[k] / 4)
                    : 4 * Math.max(prices[k], dear * demand.feet[k]);
        double all = 0;
        for (int k = 0; k < missing.length; k++) all += (double) missing[k] * demand.wanted[k];
        unit = Math.max(1, all / 100);
    }

    /**
     * Proves or improves on a plan that makes the whole bill and costs {@code known}.
     *
     * @throws IllegalArgumentException when the floor is not under plans that make the whole bill
     */
    public Answer under(Money known) {
        return under(known, false).answer;
    }

    /** What a proof says, and what that rests on. */
    record Recorded(Answer answer, ProofRecord rests) {}

    /** As {@link #under}, with what it rests on. */
    Recorded recorded(Money known) {
        return under(known, true);
    }

    private Recorded under(Money known, boolean recorded) {
        if (demand.least.isPresent()) throw new IllegalArgumentException("The floor is under plans that are short.");
        long upper = demand.money.up(known.value().doubleValue() * 1e6);
        long least = lowerBound.lagrangianBound().money();
        long open = Long.MAX_VALUE; // what plans of sets left open cost at least
        BoardSets sets = new BoardSets(demand, rows, stop);
        List<ProofRecord.Tried> tried = new ArrayList<>();
        while (true) {
            int[] many = sets.next(upper - demand.grain);
            if (many == null) break;
            long here = rows.least(many, many.length);
            BranchAndPrice search = new BranchAndPrice(new RestrictedMaster.Shared(
                    demand, pricing, rows, pool, boards(many), missing, unit, recorded, stop));
            CompleteLayouts made;
            try {
                made = search.cheapest(upper).orElse(null);
            } catch (PricingStopped e) {
                open = Math.min(open, here);
                break;
            }
            if (recorded) tried.add(new ProofRecord.Tried(many, search.root()));
            if (made != null) {
                upper = made.money();
                best = made.layouts();
            }
            if (search.open()) open = Math.min(open, here);
            if (stop.getAsBoolean()) break;
        }
        long bound = Math.max(least, Math.min(open, sets.least()));
        boolean proven = bound >= upper - demand.grain;
        Money below = proven ? cheapest(known, Math.min(bound, upper)) : demand.money.money(bound);
        ProofRecord rests =
                new ProofRecord(recorded ? rows.recorded() : List.of(), tried, Math.min(bound, upper - demand.grain));
        return new Recorded(new Answer(best, below, proven), rests);
    }

    /** What the cheapest plan costs: the one found, or else the one known. */
    private Money cheapest(Money known, long money) {
        if (best.isEmpty()) return known;
        if (!demand.boardsAlone) return demand.money.money(money);
        return best.stream()
                .map(layout -> demand.numbers.job().boards().get(layout.layout().board()))
                .map(demand.numbers.job()::cost)
                .reduce(Money.ZERO, Money::plus);
    }

    private static int[] boards(int[] many) {
        return IntStream.range(0, many.length)
                .flatMap(type -> IntStream.generate(() -> type).limit(many[type]))
                .toArray();
    }
}
