package ripwright.internal.onedimensional;

import java.nio.IntBuffer;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.BooleanSupplier;
import ripwright.internal.lp.Simplex;

/**
 * A linear program over strips of ripped stock that make a bill, or what is left of one, found by column generation. No
 * strip holds more of a type than is left: so the less is left, the more the program knows. Its value is a hint for a
 * search; the lower bound proves.
 *
 * @see "P. C. Gilmore, R. E. Gomory, A linear programming approach to the cutting-stock problem, Operations Research 9
 *     (1961) 849-859"
 * @see "A. A. Farley, A note on bounding a class of linear programming problems, including cutting stock problems,
 *     Operations Research 38 (1990) 922-923"
 */
public final class StripMaster {
    private static final double TOO_LITTLE = 1e-7; // of a board, to tell two costs apart
    private static final int STRIPS_AT_ONCE = 8; // that share no blank, for one board type at one price

    /** A strip, and how many of it the program takes. */
    public record Weighted(RippedStock.Strip strip, double weight) {}

    private record Key(int boardType, IntBuffer partTypes) {}

    private final RippedStock stock;
    private final RippedStripPricing best;
    private final int[] wanted; // wanted[k]: blanks of type k
    private final int[] copies; // copies[s]: boards of type s
    private final int[] partRow; // partRow[k]; -1 where none is wanted
    private final int[] boardRow; // boardRow[s]; -1 where there is none
    private final double unit; // millionths in one of the program's
    private final Simplex program = new Simplex();
    private final int firstColumn;
    private final List<RippedStock.Strip> columns = new ArrayList<>();
    private final Set<Key> known = new HashSet<>();
    private double lowerBound; // in units

    /** Over the whole bill and all boards. */
    public StripMaster(RippedStock stock) {
        this(stock, new RippedStripPricing(stock), stock.wanted(), stock.copies());
    }

    private StripMaster(RippedStock stock, RippedStripPricing best, int[] wanted, int[] copies) {
        this.stock = stock;
        this.best = best;
        this.wanted = wanted.clone();
        this.copies = copies.clone();
        unit = unit();
        partRow = new int[wanted.length];
        boardRow = new int[copies.length];
        int rows = 0;
        double dear = 0;
        for (int s = 0; s < copies.length; s++) dear = Math.max(dear, stock.cost(s) / unit);
        for (int k = 0; k < wanted.length; k++) {
            partRow[k] = wanted[k] > 0 ? rows++ : -1;
            if (wanted[k] > 0) program.addAtLeast(wanted[k], 1 + 10 * dear, 0, new int[0], new double[0]);
        }
        for (int s = 0; s < copies.length; s++) {
            boardRow[s] = copies[s] > 0 ? rows++ : -1;
            if (copies[s] > 0) program.addAtMost(copies[s], 0, new int[0], new double[0]);
        }
        firstColumn = program.columns();
    }

    private double unit() {
        double sum = 0;
        for (int s = 0; s < copies.length; s++) sum += stock.cost(s);
        return Math.max(1, sum / copies.length);
    }

    /** The program over what is left, beginning with the strips that are known here. */
    public StripMaster rest(int[] wanted, int[] copies) {
        StripMaster rest = new StripMaster(stock, best, wanted, copies);
        for (RippedStock.Strip strip : columns) rest.offer(strip);
        return rest;
    }

    /** Adds a strip, without the blanks that are not wanted; whether it is new. */
    public boolean offer(RippedStock.Strip strip) {
        if (copies[strip.boardType()] == 0) return false;
        int[] left = new int[strip.partTypes().length];
        int n = 0;
        int same = 0;
        for (int i = 0; i < left.length; i++) {
            int k = strip.partTypes()[i];
            same = i > 0 && strip.partTypes()[i - 1] == k ? same + 1 : 1;
            if (same <= wanted[k]) left[n++] = k;
        }
        int[] types = Arrays.copyOf(left, n);
        if (n == 0 || !known.add(new Key(strip.boardType(), IntBuffer.wrap(types)))) return false;
        add(new RippedStock.Strip(strip.boardType(), types));
        return true;
    }

    private void add(RippedStock.Strip strip) {
        int[] types = strip.partTypes();
        int[] rows = new int[types.length + 1];
        double[] values = new double[rows.length];
        int n = 0;
        for (int i = 0; i < types.length; i++) {
            if (i == 0 || types[i] != types[i - 1]) rows[n++] = partRow[types[i]];
            values[n - 1]++;
        }
        rows[n] = boardRow[strip.boardType()];
        values[n++] = 1;
        columns.add(strip);
        program.add(Arrays.copyOf(rows, n), Arrays.copyOf(values, n), stock.cost(strip.boardType()) / unit);
    }

    /**
     * Finds strips until none is worth more than it costs, or what all costs can no longer change by {@code step}, or is at
     * least {@code most} for sure.
     *
     * @param step millionths that every cost is a multiple of
     * @param most millionths
     */
    public void solve(long step, long most, BooleanSupplier stop) {
        while (!stop.getAsBoolean()) {
            program.solve(stop);
            double[] prices = new double[wanted.length];
            for (int k = 0; k < prices.length; k++)
                if (partRow[k] >= 0) prices[k] = Math.max(0, program.price(partRow[k]));
            best.price(prices, wanted);
            lowerBound = Math.max(lowerBound, lowerBound(prices));
            if (lowerBound(step) >= Math.min(most, up(program.value(), step)) || !join(prices)) return;
        }
    }

    /** Prices over what the dearest strip is too dear, boards' rows and all. */
    private double lowerBound(double[] prices) {
        double over = 1;
        double sum = 0;
        double rows = 0;
        for (int s = 0; s < copies.length; s++) {
            if (copies[s] == 0) continue;
            double row = Math.min(0, program.price(boardRow[s]));
            double cost = stock.cost(s) / unit - row;
            if (best.worth(s) > cost) over = Math.max(over, best.worth(s) / cost);
            rows += row * copies[s];
        }
        for (int k = 0; k < prices.length; k++) sum += prices[k] * wanted[k];
        return sum / over + rows;
    }

    private boolean join(double[] prices) {
        boolean joined = false;
        for (int s = 0; s < copies.length; s++)
            if (copies[s] > 0 && gain(s) > TOO_LITTLE) joined |= offer(best.strip(s));
        int[] left = wanted.clone();
        for (int more = 1; more < STRIPS_AT_ONCE && joined; more++) {
            int dearest = dearest();
            if (dearest < 0) break;
            for (int k : best.strip(dearest).partTypes()) left[k]--;
            best.price(prices, left);
            int next = dearest();
            if (next >= 0) offer(best.strip(next));
        }
        return joined;
    }

    private int dearest() {
        int dearest = -1;
        for (int s = 0; s < copies.length; s++)
            if (copies[s] > 0 && gain(s) > TOO_LITTLE && (dearest < 0 || gain(s) > gain(dearest))) dearest = s;
        return dearest;
    }

    private double gain(int s) {
        return best.worth(s) - stock.cost(s) / unit + program.price(boardRow[s]);
    }

    /** What the bill costs at least, as far as the program knows, in millionths: a multiple of {@code step}. */
    public long lowerBound(long step) {
        return up(lowerBound, step);
    }

    private long up(double value, long step) {
        return (long) Math.ceil(value * unit / step - 1e-5) * step;
    }

    /** The strips that the program takes, those first of which it takes most. */
    public List<Weighted> strips() {
        double[] weights = program.weights();
        List<Weighted> strips = new ArrayList<>();
        for (int j = 0; j < columns.size(); j++)
            if (weights[firstColumn + j] > 1e-6) strips.add(new Weighted(columns.get(j), weights[firstColumn + j]));
        strips.sort(Comparator.comparing(strip -> -strip.weight()));
        return strips;
    }
}
