package ripwright.bound;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BooleanSupplier;
import ripwright.pattern.Oracle;

/**
 * The linear program over the layouts of one set of boards, with branches: how to make the bill from these boards alone, what
 * is left unmade at a high price. Its boards are paid for already. Layouts it finds are kept for other sets.
 */
final class SetProgram {
    private static final double NOTHING = 1e-6; // of the whole bill

    private final Demand demand;
    private final Oracle oracle;
    private final PriceRows rows;
    private final List<List<Column>> pool; // layouts of each kind of board
    private final int[] boards; // boards[s]: kind of the s-th board
    private final long[] missing; // missing[k]: price of one blank of part kind k left unmade, in coins
    private final double unit;
    private final BooleanSupplier stop;
    private List<Branch> branches = List.of();
    private Simplex program;
    private final List<Column> columns = new ArrayList<>(); // those in the program
    private final List<Integer> boardOf = new ArrayList<>();
    private int firstColumn;

    SetProgram(
            Demand demand,
            Oracle oracle,
            PriceRows rows,
            List<List<Column>> pool,
            int[] boards,
            long[] missing,
            BooleanSupplier stop) {
        this.demand = demand;
        this.oracle = oracle;
        this.rows = rows;
        this.pool = pool;
        this.boards = boards;
        this.missing = missing;
        this.stop = stop;
        double all = 0;
        for (int k = 0; k < missing.length; k++) all += (double) missing[k] * demand.wanted[k];
        unit = Math.max(1, all / 100);
        program = program();
    }

    private int parts() {
        return demand.wanted.length;
    }

    private Simplex program() {
        int n = parts() + boards.length + branches.size();
        double[] right = new double[n];
        boolean[] atLeast = new boolean[n];
        double[] lacking = new double[n];
        for (int k = 0; k < parts(); k++) {
            right[k] = demand.wanted[k];
            atLeast[k] = true;
            lacking[k] = missing[k] / unit;
        }
        for (int s = 0; s < boards.length; s++) right[parts() + s] = 1;
        for (int i = 0; i < branches.size(); i++) {
            int r = parts() + boards.length + i;
            right[r] = branches.get(i).many();
            atLeast[r] = branches.get(i).atLeast();
            lacking[r] = 2.0 * missing[branches.get(i).partKind()] / unit;
        }
        return new Simplex(right, atLeast, lacking, new double[n]);
    }

    /** Sets other branches up, with all layouts known by now. */
    void branch(List<Branch> branches) {
        this.branches = branches;
        columns.clear();
        boardOf.clear();
        program = program();
        firstColumn = program.columns();
        for (int s = 0; s < boards.length; s++) for (Column column : pool.get(boards[s])) add(column, s);
    }

    private void add(Column column, int s) {
        List<Integer> rowList = new ArrayList<>();
        List<Double> values = new ArrayList<>();
        for (int k = 0; k < parts(); k++) {
            if (column.made()[k] == 0) continue;
            rowList.add(k);
            values.add((double) column.made()[k]);
        }
        rowList.add(parts() + s);
        values.add(1.0);
        for (int i = 0; i < branches.size(); i++) {
            Branch branch = branches.get(i);
            if (branch.board() != s || column.made()[branch.partKind()] == 0) continue;
            rowList.add(parts() + boards.length + i);
            values.add((double) column.made()[branch.partKind()]);
        }
        program.add(
                rowList.stream().mapToInt(r -> r).toArray(),
                values.stream().mapToDouble(v -> v).toArray(),
                (column.cost() - demand.cost[boards[s]]) / unit);
        columns.add(column);
        boardOf.add(s);
    }

    /** What comes of a program. */
    enum Outcome {
        /** No plan from these boards with these branches costs less than was asked. */
        NONE,
        /** The program has a solution. */
        SOME,
        /** The time was up. */
        STOPPED
    }

    /**
     * Solves the program as it stands.
     *
     * @param most what a plan may cost beyond what its boards are bought for, in coins
     */
    Outcome solve(long most) {
        while (true) {
            program.solve(stop);
            if (stop.getAsBoolean()) return Outcome.STOPPED;
            if (demand.boardsAlone && program.value() < NOTHING) return Outcome.SOME;
            long floor = branches.isEmpty() ? askTogether() : askOneByOne();
            if (demand.boardsAlone ? floor > 0 : floor >= most) return Outcome.NONE;
            if (!joined) return Outcome.SOME;
        }
    }

    private boolean joined; // whether the last asking brought a new layout

    private long coins(double price) {
        return Math.round(price * unit);
    }

    /** Asks all boards of the job at one price for each blank, so that what they say holds for other sets too. */
    private long askTogether() {
        long[] prices = new long[parts()];
        for (int k = 0; k < prices.length; k++) prices[k] = Math.max(0, coins(program.price(k)));
        oracle.price(prices);
        long[] worths = new long[demand.copies.length];
        for (int b = 0; b < worths.length; b++) worths[b] = oracle.worth(b);
        rows.add(prices, worths);
        long floor = 0;
        for (int k = 0; k < prices.length; k++) floor += prices[k] * demand.wanted[k];
        joined = false;
        for (int s = 0; s < boards.length; s++) {
            floor -= Math.max(0, worths[boards[s]]);
            if (s == 0 || boards[s] != boards[s - 1]) join(s, prices);
        }
        return floor;
    }

    /** Asks each board at the prices its own branches make. */
    private long askOneByOne() {
        long[] prices = new long[parts()];
        long floor = 0;
        for (int k = 0; k < prices.length; k++) {
            prices[k] = Math.max(0, coins(program.price(k)));
            floor += prices[k] * demand.wanted[k];
        }
        joined = false;
        for (int s = 0; s < boards.length; s++) {
            long[] own = prices.clone();
            for (int i = 0; i < branches.size(); i++) {
                Branch branch = branches.get(i);
                if (branch.board() != s) continue;
                long price = coins(program.price(parts() + boards.length + i));
                price = branch.atLeast() ? Math.max(0, price) : Math.min(0, price);
                own[branch.partKind()] += price;
                floor += price * branch.many();
            }
            for (int k = 0; k < own.length; k++) own[k] = Math.max(0, own[k]);
            oracle.price(boards[s], own, demand.wanted);
            floor -= Math.max(0, oracle.worth(boards[s]));
            join(s, own);
        }
        return floor;
    }

    /** Takes the layout a board was just asked for into the program, where it gains something there. */
    private void join(int s, long[] prices) {
        int kind = boards[s];
        if (!oracle.cuts(kind)) return;
        Column column = Column.of(demand, oracle.sketch(kind), prices);
        double reduced = -oracle.worth(kind) / unit - program.price(parts() + s);
        if (reduced >= -1e-7) return;
        joined = true;
        pool.get(kind).add(column);
        for (int other = 0; other < boards.length; other++) if (boards[other] == kind) add(column, other);
    }

    int columns() {
        return columns.size();
    }

    Column column(int j) {
        return columns.get(j);
    }

    /** The place in the set of the board that layout {@code j} is for. */
    int boardOf(int j) {
        return boardOf.get(j);
    }

    /** How much of each layout is taken. */
    double[] weights() {
        double[] all = program.weights();
        double[] weights = new double[columns.size()];
        System.arraycopy(all, firstColumn, weights, 0, weights.length);
        return weights;
    }

    /** What the program costs beyond its boards, in coins. */
    double value() {
        return program.value() * unit;
    }
}
