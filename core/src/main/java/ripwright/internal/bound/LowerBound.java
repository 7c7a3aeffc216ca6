package ripwright.internal.bound;

import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import java.util.function.LongConsumer;
import ripwright.bill.Part;
import ripwright.internal.model.JobNumbers;
import ripwright.internal.model.PricedLayout;
import ripwright.internal.onedimensional.RippedStock;
import ripwright.internal.pricing.Pattern;
import ripwright.internal.pricing.PricingProblem;
import ripwright.internal.pricing.PricingStopped;
import ripwright.measure.BoardFeet;
import ripwright.measure.Money;
import ripwright.stock.Board;

/**
 * A proven lower bound on the net cost, before anything is rounded, of every plan that makes the whole bill, or of every plan
 * that makes so much finished wood of it: the best Lagrangian bound that column generation finds, or a subgradient method
 * where the linear program would be too large. The duals it uses are floating-point hints; the bound is reckoned again from
 * them in whole numbers ({@link LagrangianBound}), so no rounding makes it too high. Never below 0.
 *
 * @see "A. Neumaier, O. Shcherbina, Safe bounds in linear and mixed-integer linear programming, Mathematical Programming
 *     99 (2004) 283-296"
 */
public final class LowerBound {
    private static final int MOST_ROWS = 600; // of a linear program that is solved to its end
    private static final int STEPS = 500; // for larger ones
    private static final int QUESTIONS = 1_500; // a larger one may ask whether to end; its layouts are then good enough
    private static final double FIRST_PRICE = 1.15; // of a part, against the cheapest wood it could be made of

    /**
     * A layout that the floor rests on.
     *
     * @param layout one of real blanks, feasible by itself, of the first board of its type
     * @param weight how much of it the linear program took, from 0 to the number of boards alike
     */
    public record WeightedLayout(PricedLayout layout, double weight) {}

    private final Demand demand;
    private final PricingProblem pricing;
    private final ColumnGeneration generation;
    private final LagrangianBound lagrangianBound;

    private LowerBound(Demand demand, BooleanSupplier stop, BooleanSupplier abort, Consumer<Money> raised) {
        this.demand = demand;
        pricing = new PricingProblem(demand.numbers, demand.types, demand.money);
        pricing.abortWhen(abort);
        LagrangianBound start = first();
        raised.accept(money(start.money()));
        LongConsumer tell = money -> raised.accept(money(money));
        boolean large = demand.least.isEmpty() && demand.wanted.length + demand.copies.length > MOST_ROWS;
        if (large) start = new Subgradient(demand, pricing, start).run(STEPS, stop, tell);
        generation = new ColumnGeneration(demand, pricing, start);
        lagrangianBound =
                abort.getAsBoolean() ? start : generation.run(large ? new WorkBudget(stop, QUESTIONS) : stop, tell);
    }

    /** What the first prices say; prices of 0 where there was no time for them. */
    private LagrangianBound first() {
        try {
            return LagrangianBound.of(demand, firstPrices(demand), pricing);
        } catch (PricingStopped e) {
            return LagrangianBound.of(demand, new long[demand.wanted.length], new long[demand.copies.length]);
        }
    }

    /** Under every plan that makes the whole bill; when {@code stop} says so, the best that was found by then. */
    public static LowerBound ofWholeBill(JobNumbers numbers, BooleanSupplier stop) {
        return ofWholeBill(numbers, stop, () -> false, raised -> {});
    }

    /**
     * The same.
     *
     * @param stop asked between two pricings
     * @param abort asked in the middle of one, very often; what is being priced then is given up
     * @param raised told of every floor on the way that is higher than those before
     */
    public static LowerBound ofWholeBill(
            JobNumbers numbers, BooleanSupplier stop, BooleanSupplier abort, Consumer<Money> raised) {
        return new LowerBound(Demand.wholeBill(numbers), stop, abort, raised);
    }

    /** Under every plan that makes that much finished wood, in the unit of {@link JobNumbers#feet}. */
    public static LowerBound ofFeet(JobNumbers numbers, long feet, BooleanSupplier stop) {
        return ofFeet(numbers, feet, stop, () -> false);
    }

    /** The same; {@code abort} as above. */
    public static LowerBound ofFeet(JobNumbers numbers, long feet, BooleanSupplier stop, BooleanSupplier abort) {
        return new LowerBound(Demand.ofFeet(numbers, feet), stop, abort, raised -> {});
    }

    static long[] firstPrices(Demand demand) {
        long[] byLength = pricesByLength(demand);
        if (Arrays.stream(byLength).allMatch(price -> price > 0)) return byLength;
        double cheapest = Double.MAX_VALUE; // money for a board foot
        for (int b = 0; b < demand.copies.length; b++) {
            Board board = demand.numbers.job().boards().get(demand.types.boardsOf(b)[0]);
            double feet = BoardFeet.of(board.area(), board.thickness()).value().doubleValue();
            cheapest = Math.min(cheapest, demand.cost[b] / feet);
        }
        long[] prices = new long[demand.wanted.length];
        for (int k = 0; k < prices.length; k++) {
            Part part = demand.numbers.job().parts().get(demand.types.partsOf(k)[0]);
            double feet = part.boardFeet().value().doubleValue();
            prices[k] = Math.round(feet * cheapest * FIRST_PRICE);
        }
        return prices;
    }

    /**
     * Of parts that come from clear ripped stock alone, what their lengths cost on the boards where they are cheapest: as long
     * as strips can be filled, no prices give a higher floor. 0 of others.
     */
    private static long[] pricesByLength(Demand demand) {
        long[] prices = new long[demand.wanted.length];
        for (RippedStock stock : RippedStock.all(demand.numbers)) {
            for (int k = 0; k < stock.parts() && stock.alone(); k++) {
                double millionths = stock.leastCost(k);
                prices[demand.types.typeOfPart(stock.partsOf(k)[0])] =
                        (long) (millionths * demand.money.perMillionth());
            }
        }
        return prices;
    }

    /** The floor; never below 0, as no plan fetches money. */
    public Money value() {
        return money(lagrangianBound.money());
    }

    private Money money(long money) {
        return demand.money.money(Math.max(0, money));
    }

    /** What one blank of each part is worth to the job, in millionths of the currency. */
    public double[] prices() {
        double[] prices = new double[demand.numbers.parts()];
        Arrays.setAll(prices, p -> lagrangianBound.prices()[demand.types.typeOfPart(p)] / demand.money.perMillionth());
        return prices;
    }

    /**
     * The layouts that were found on the way, those first that the linear program took most of. What the pricing problem reckoned too
     * high for real blanks is left out, and so is what a defect is in the way of.
     */
    public List<WeightedLayout> layouts() {
        double[] weights = generation.weights();
        Map<PricedLayout, Double> found = new LinkedHashMap<>();
        for (int j = 0; j < weights.length; j++) {
            Pattern pattern = generation.columns().get(j).pattern();
            int board = demand.types.boardsOf(pattern.boardType())[0];
            double weight = weights[j];
            pricing.place(board, pattern, lagrangianBound.prices(), demand.numbers.wanted())
                    .ifPresent(layout -> found.merge(layout, weight, Double::sum));
        }
        return found.entrySet().stream()
                .map(entry -> new WeightedLayout(entry.getKey(), entry.getValue()))
                .sorted(Comparator.comparing(weighted -> -weighted.weight()))
                .toList();
    }

    public Demand demand() {
        return demand;
    }

    public PricingProblem pricing() {
        return pricing;
    }

    /** Everything that was asked on the way. */
    public List<LagrangianBound> asked() {
        return generation.asked();
    }

    /** The layouts that were found on the way, as they were reckoned. */
    public List<Column> columns() {
        return generation.columns();
    }

    public LagrangianBound lagrangianBound() {
        return lagrangianBound;
    }
}
