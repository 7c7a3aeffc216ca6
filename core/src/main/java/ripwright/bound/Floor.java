package ripwright.bound;

import java.util.Arrays;
import java.util.function.BooleanSupplier;
import ripwright.bill.Part;
import ripwright.measure.BoardFeet;
import ripwright.measure.Money;
import ripwright.pattern.JobNumbers;
import ripwright.pattern.Oracle;
import ripwright.stock.Board;

/**
 * A proven floor under the net cost, before anything is rounded, of every plan that makes the whole bill, or of every
 * plan that makes so much finished wood of it. It is found by column generation, and reckoned by whole numbers from the
 * prices that were found: {@link Certificate}.
 */
public final class Floor {
    private static final double FIRST_PRICE = 1.15; // of a part, against the cheapest wood it could be made of

    private final Demand demand;
    private final Certificate certificate;

    private Floor(Demand demand, BooleanSupplier stop) {
        this.demand = demand;
        Oracle oracle = new Oracle(demand.numbers, demand.kinds, demand.coins);
        Certificate start = Certificate.of(demand, firstPrices(demand), oracle);
        ColumnGeneration g = new ColumnGeneration(demand, oracle, start);
        certificate = g.run(stop);
        stats = g.stats;
    }

    /** Under every plan that makes the whole bill; when {@code stop} says so, the best that was found by then. */
    public static Floor ofWholeBill(JobNumbers numbers, BooleanSupplier stop) {
        return new Floor(Demand.wholeBill(numbers), stop);
    }

    /** Under every plan that makes that much finished wood, in the unit of {@link JobNumbers#feet}. */
    public static Floor ofFeet(JobNumbers numbers, long feet, BooleanSupplier stop) {
        return new Floor(Demand.ofFeet(numbers, feet), stop);
    }

    private static long[] firstPrices(Demand demand) {
        double cheapest = Double.MAX_VALUE; // coins for a board foot
        for (int b = 0; b < demand.copies.length; b++) {
            Board board = demand.numbers.job().boards().get(demand.kinds.boardsOf(b)[0]);
            double feet = BoardFeet.of(board.area(), board.thickness()).value().doubleValue();
            cheapest = Math.min(cheapest, demand.cost[b] / feet);
        }
        long[] prices = new long[demand.wanted.length];
        for (int k = 0; k < prices.length; k++) {
            Part part = demand.numbers.job().parts().get(demand.kinds.partsOf(k)[0]);
            double feet = part.boardFeet().value().doubleValue();
            prices[k] = Math.round(feet * cheapest * FIRST_PRICE);
        }
        return prices;
    }

    /** The floor. */
    public Money value() {
        return demand.coins.money(certificate.coins());
    }

    /** What one blank of each part is worth to the job, in millionths of the currency. */
    public double[] prices() {
        double[] prices = new double[demand.numbers.parts()];
        Arrays.setAll(prices, p -> certificate.prices()[demand.kinds.kindOfPart(p)] / demand.coins.perMillionth());
        return prices;
    }

    String stats() {
        return stats;
    }

    String stats = "";

    Certificate certificate() {
        return certificate;
    }
}
