package ripwright.internal.bound;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BooleanSupplier;
import java.util.function.LongConsumer;
import ripwright.internal.lp.Simplex;
import ripwright.internal.pricing.PricingProblem;
import ripwright.internal.pricing.PricingStopped;

/**
 * Column generation for the linear relaxation: minimize the cost of layouts (columns) subject to demand for each item type
 * and the number of boards of each type. The duals of the restricted master price the blanks; the pricing problem gives each
 * board type's best layout; those of negative reduced cost join. Dual smoothing after Wentges: what is asked lies halfway
 * between the duals of the best bound so far and the master's, which keeps them from swinging; once nothing joins, the
 * master's own are asked. Every vector asked gives a Lagrangian bound, the best is kept. Ends when no column has a negative
 * reduced cost, or the bound has met the master's value to {@value #CLOSE}.
 *
 * @see "P. C. Gilmore, R. E. Gomory, A linear programming approach to the cutting-stock problem, Operations Research 9
 *     (1961) 849-859"
 * @see "P. Wentges, Weighted Dantzig-Wolfe decomposition for linear mixed-integer programming, International Transactions
 *     in Operational Research 4 (1997) 151-162"
 */
public final class ColumnGeneration {
    private static final double CLOSE = 1e-7; // the floor has all but met the program

    private static final int[] NO_COLUMNS = {};
    private static final double[] NO_VALUES = {};

    private final Demand demand;
    private final PricingProblem pricing;
    private final double unit; // money in one of the program's
    private final Simplex program;
    private final List<Column> columns = new ArrayList<>();
    private final int firstColumn;
    private final int parts;
    private final int feetRow; // or -1
    private final List<LagrangianBound> asked = new ArrayList<>();
    private LagrangianBound best;

    ColumnGeneration(Demand demand, PricingProblem pricing, LagrangianBound start) {
        this.demand = demand;
        this.pricing = pricing;
        best = start;
        asked.add(start);
        parts = demand.wanted.length;
        int boards = demand.copies.length;
        feetRow = demand.least.isPresent() ? parts + boards : -1;
        double all = 0;
        for (int b = 0; b < boards; b++) all += (double) demand.cost[b] * demand.copies[b];
        double count = 0;
        for (int copies : demand.copies) count += copies;
        unit = Math.max(1, all / count);
        program = program(start);
        firstColumn = feetRow < 0 ? program.columns() : missing();
    }

    private Simplex program(LagrangianBound start) {
        Simplex rows = new Simplex();
        double dear = 0;
        for (int k = 0; k < parts; k++) dear = Math.max(dear, start.prices()[k] / (double) demand.feet[k]);
        for (int k = 0; k < parts; k++) {
            double surplus = demand.share[k] / unit; // so that nothing is left out twice for its share
            rows.addAtLeast(demand.wanted[k], 1 + 20 * dear * demand.feet[k] / unit, surplus, NO_COLUMNS, NO_VALUES);
        }
        for (int copies : demand.copies) rows.addAtMost(copies, 0, NO_COLUMNS, NO_VALUES);
        if (feetRow >= 0) {
            double unmade = (demand.allFeet() - demand.least.orElseThrow()) / feetUnit();
            rows.addAtMost(unmade, 0, NO_COLUMNS, NO_VALUES);
        }
        return rows;
    }

    private double feetUnit() {
        return Math.max(1, demand.allFeet() / 100.0);
    }

    /** Columns that leave parts unmade, where that is allowed; how many columns there are then. */
    private int missing() {
        for (int k = 0; k < parts; k++)
            program.add(new int[] {k, feetRow}, new double[] {1, demand.feet[k] / feetUnit()}, -demand.share[k] / unit);
        return program.columns();
    }

    /** Raises the floor until it cannot be raised further, or {@code stop} says so; tells every higher one. */
    LagrangianBound run(BooleanSupplier stop, LongConsumer raised) {
        try {
            raise(stop, raised);
        } catch (PricingStopped e) {
            // The best so far stands.
        }
        return best;
    }

    private void raise(BooleanSupplier stop, LongConsumer raised) {
        join(best.prices(), best.prices());
        double near = 0.5; // how near to the best prices so far
        while (!stop.getAsBoolean()) {
            program.solve(stop);
            double met = program.value() * unit + settledShare();
            if (best.money() >= met - Math.abs(met) * CLOSE) break;
            long[] prices = programPrices();
            long[] middle = between(prices, best.prices(), near);
            LagrangianBound now = LagrangianBound.of(demand, middle, pricing);
            asked.add(now);
            boolean joined = join(middle, prices);
            if (now.money() > best.money()) {
                best = now;
                raised.accept(best.money());
            }
            if (!joined && near == 0) break;
            near = joined ? 0.5 : 0;
        }
    }

    /** What the program leaves out: the shares of all parts, and what is due for settings. */
    private double settledShare() {
        double sum = demand.due;
        for (int k = 0; k < parts; k++) sum += (double) demand.share[k] * demand.wanted[k];
        return sum;
    }

    private long[] programPrices() {
        long[] prices = new long[parts];
        for (int k = 0; k < parts; k++) prices[k] = Math.max(0, Math.round(program.price(k) * unit));
        return prices;
    }

    private static long[] between(long[] a, long[] b, double towardsB) {
        long[] prices = new long[a.length];
        for (int k = 0; k < prices.length; k++) prices[k] = a[k] + Math.round((b[k] - a[k]) * towardsB);
        return prices;
    }

    /** Adds the layouts just asked for that are worth more than they cost at the program's prices. */
    private boolean join(long[] asked, long[] prices) {
        boolean joined = false;
        for (int b = 0; b < demand.copies.length; b++) {
            if (!pricing.cuts(b)) continue;
            Column column = Column.of(demand, pricing.pattern(b), asked);
            double reduced = column.cost() / unit - program.price(parts + b);
            for (int k = 0; k < parts; k++) reduced -= column.made()[k] * (prices[k] / unit);
            if (reduced >= -1e-7) continue;
            add(column);
            joined = true;
        }
        return joined;
    }

    private void add(Column column) {
        int n = 1;
        for (int made : column.made()) if (made > 0) n++;
        int[] rows = new int[n];
        double[] values = new double[n];
        int at = 0;
        for (int k = 0; k < parts; k++) {
            if (column.made()[k] == 0) continue;
            rows[at] = k;
            values[at++] = column.made()[k];
        }
        rows[at] = parts + column.pattern().boardType();
        values[at] = 1;
        program.add(rows, values, column.cost() / unit);
        columns.add(column);
    }

    /** Everything that was asked. */
    List<LagrangianBound> asked() {
        return asked;
    }

    /** All layouts that joined. */
    List<Column> columns() {
        return columns;
    }

    /** How much of each of {@link #columns} the program takes. */
    double[] weights() {
        if (columns.isEmpty()) return NO_VALUES;
        double[] all = program.weights();
        double[] weights = new double[columns.size()];
        System.arraycopy(all, firstColumn, weights, 0, weights.length);
        return weights;
    }
}
