package ripwright.internal.bound;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.stream.IntStream;
import ripwright.internal.lp.Simplex;
import ripwright.internal.model.PricedLayout;
import ripwright.internal.pricing.Pattern;
import ripwright.internal.pricing.PricingProblem;
import ripwright.internal.pricing.PricingStopped;

/**
 * A floor's linear program once some boards are cut: what is left of the bill, on the boards that are left, priced again
 * from where it stood. Layouts with more of a blank than is left count without it. What it says is a hint and proves
 * nothing. Serves one thread.
 */
public final class ResidualMaster {
    private static final int MOST_COLUMNS = 3_000; // to begin with; those that pay best
    private static final double[] NO_VALUES = {};

    /**
     * What the program comes to.
     *
     * @param cost of what is left, in millionths of the currency, as if boards could be bought in shares
     * @param layouts of boards that are left, of blanks that are missing: those first that the program takes most of
     */
    public record Solution(double cost, List<LowerBound.WeightedLayout> layouts) {}

    /** A layout: {@code made[i]} blanks of part type {@code types[i]}, for so many money. */
    @SuppressWarnings("ArrayRecordComponent") // never changed once made, never compared
    private record Real(PricedLayout layout, int boardType, int[] types, int[] made, double cost) {}

    private final Demand demand;
    private final PricingProblem pricing;
    private final List<Real> known;
    private final double unit; // money in one of the program's
    private final int[] missing; // missing[p]: blanks of part p
    private final int[] wanted; // wanted[k]: of part type k
    private final boolean[] cut; // cut[b]: whether board b is
    private final int[] copies; // copies[k]: boards of type k that are left
    private long[] prices;

    /** Begins with the whole bill and all boards; the floor must be under plans that make the whole bill. */
    public ResidualMaster(LowerBound lowerBound) {
        demand = lowerBound.demand();
        pricing = new PricingProblem(demand.numbers, demand.types, demand.money);
        prices = lowerBound.lagrangianBound().prices().clone();
        missing = demand.numbers.wanted();
        wanted = demand.wanted.clone();
        known = new ArrayList<>();
        for (Column column : lowerBound.columns())
            real(column.pattern(), prices).ifPresent(known::add);
        cut = new boolean[demand.numbers.boards()];
        copies = demand.copies.clone();
        double all = 0;
        for (int k = 0; k < wanted.length; k++) all += (double) prices[k] * wanted[k];
        unit = Math.max(1, all / 100);
    }

    /** Cuts a board so. */
    public void keep(PricedLayout layout) {
        int board = layout.layout().board();
        cut[board] = true;
        copies[demand.types.typeOfBoard(board)]--;
        for (int part : layout.made()) {
            missing[part]--;
            wanted[demand.types.typeOfPart(part)]--;
        }
    }

    /** How many blanks are missing of each part. */
    public int[] missing() {
        return missing.clone();
    }

    /**
     * Solves the program.
     *
     * @param rounds how often all boards are asked at most; more than ten bring little
     */
    public Solution solve(int rounds, BooleanSupplier stop) {
        Simplex program = program();
        int first = program.columns();
        List<Real> columns = new ArrayList<>();
        for (Real column : paying()) {
            add(program, column);
            columns.add(column);
        }
        double near = 0.5;
        program.solve(stop);
        pricing.abortWhen(stop);
        for (int round = 0; round < rounds && !stop.getAsBoolean(); round++) {
            List<Real> joined;
            try {
                joined = ask(program, near);
            } catch (PricingStopped e) {
                break;
            }
            for (Real column : joined) add(program, column);
            columns.addAll(joined);
            known.addAll(joined);
            if (joined.isEmpty() && near == 0) break;
            near = joined.isEmpty() ? 0 : 0.5;
            program.solve(stop);
        }
        double[] weights = program.weights();
        List<LowerBound.WeightedLayout> taken = new ArrayList<>();
        for (int j = 0; j < columns.size(); j++) {
            if (weights[first + j] < 1e-6) continue;
            PricedLayout layout = columns.get(j).layout;
            int board = free(columns.get(j).boardType);
            taken.add(new LowerBound.WeightedLayout(
                    layout.layout().board() == board ? layout : layout.on(board), weights[first + j]));
        }
        taken.sort(Comparator.comparing(layout -> -layout.weight()));
        return new Solution(program.value() * unit / demand.money.perMillionth(), taken);
    }

    /** The same, which then goes its own way; the layouts found on either way serve both. */
    public ResidualMaster copy() {
        return new ResidualMaster(this);
    }

    private ResidualMaster(ResidualMaster other) {
        demand = other.demand;
        pricing = other.pricing;
        known = other.known;
        unit = other.unit;
        missing = other.missing.clone();
        wanted = other.wanted.clone();
        cut = other.cut.clone();
        copies = other.copies.clone();
        prices = other.prices.clone();
    }

    private int free(int type) {
        for (int board : demand.types.boardsOf(type)) if (!cut[board]) return board;
        throw new IllegalStateException("No board of type " + type + " is left.");
    }

    private Simplex program() {
        Simplex program = new Simplex();
        double dear = 0;
        for (int k = 0; k < wanted.length; k++) dear = Math.max(dear, prices[k] / (double) demand.feet[k]);
        for (int k = 0; k < wanted.length; k++)
            program.addAtLeast(wanted[k], 1e-3 + 4 * dear * demand.feet[k] / unit, 0, new int[0], NO_VALUES);
        for (int each : copies) program.addAtMost(each, 0, new int[0], NO_VALUES);
        return program;
    }

    /** The layouts known that may still be cut and pay best at the last prices. */
    private List<Real> paying() {
        record Ranked(Real column, double reduced) {}
        List<Ranked> ranked = new ArrayList<>();
        for (Real column : known) {
            if (copies[column.boardType] == 0) continue;
            double worth = 0;
            boolean fits = true;
            for (int i = 0; i < column.types.length; i++) {
                fits &= column.made[i] <= wanted[column.types[i]];
                worth += (double) column.made[i] * prices[column.types[i]];
            }
            if (fits) ranked.add(new Ranked(column, column.cost - worth));
        }
        if (ranked.size() > MOST_COLUMNS) ranked.sort(Comparator.comparingDouble(Ranked::reduced));
        return ranked.stream().limit(MOST_COLUMNS).map(Ranked::column).toList();
    }

    private void add(Simplex program, Real column) {
        int n = column.types.length;
        int[] rows = Arrays.copyOf(column.types, n + 1);
        double[] values = new double[n + 1];
        for (int i = 0; i < n; i++) values[i] = column.made[i];
        rows[n] = wanted.length + column.boardType;
        values[n] = 1;
        program.add(rows, values, column.cost / unit);
    }

    /** Asks all boards that are left for their best layouts, and returns those that pay at the program's prices. */
    private List<Real> ask(Simplex program, double near) {
        long[] asked = new long[wanted.length];
        for (int k = 0; k < asked.length; k++) {
            long now = Math.max(0, Math.round(program.price(k) * unit));
            asked[k] = wanted[k] == 0 ? 0 : now + Math.round((prices[k] - now) * near);
        }
        prices = asked;
        pricing.price(asked, wanted);
        List<Real> joined = new ArrayList<>();
        for (int b = 0; b < copies.length; b++) {
            if (copies[b] == 0 || !pricing.cuts(b)) continue;
            Optional<Real> found = real(pricing.pattern(b), asked);
            if (found.isEmpty()) continue;
            Real column = found.get();
            double reduced = column.cost / unit - program.price(wanted.length + b);
            for (int i = 0; i < column.types.length; i++) reduced -= column.made[i] * program.price(column.types[i]);
            if (reduced < -1e-7) joined.add(column);
        }
        return joined;
    }

    private Optional<Real> real(Pattern pattern, long[] asked) {
        int board = demand.types.boardsOf(pattern.boardType())[0];
        return pricing.place(board, pattern, asked, missing)
                .filter(layout -> layout.made().length > 0)
                .map(layout -> real(layout, pattern.boardType()));
    }

    private Real real(PricedLayout layout, int boardType) {
        int[] many = new int[wanted.length];
        for (int part : layout.made()) many[demand.types.typeOfPart(part)]++;
        int[] types = IntStream.range(0, many.length).filter(k -> many[k] > 0).toArray();
        int[] made = Arrays.stream(types).map(k -> many[k]).toArray();
        return new Real(layout, boardType, types, made, layout.net() * demand.money.perMillionth());
    }
}
