package ripwright.internal.proof;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.function.BooleanSupplier;
import ripwright.internal.bound.Column;
import ripwright.internal.bound.Demand;
import ripwright.internal.lp.Simplex;
import ripwright.internal.pricing.PricingProblem;

/**
 * The restricted master program of one set of boards at a node of branch and price: minimize what is left unmade, at a high
 * price for each blank, over the layouts known for these boards, one convexity row a board, with a row for each branch. The
 * boards are paid for already, so a value of 0 (or of offcuts and labor alone) means that the set makes the bill
 * fractionally. A branch copies the program it grows from and starts from its basis. Layouts found serve all sets; each
 * program takes in those of negative reduced cost.
 *
 * @see "C. Barnhart et al., Branch-and-price: column generation for solving huge integer programs, Operations Research 46
 *     (1998) 316-329"
 */
public final class RestrictedMaster {
    private static final double NOTHING = 1e-4; // of 100 for the whole bill; less may come of moved right sides alone
    private static final double PAYS = 1e-7;
    private static final int SHARP_STEPS = 30; // of the pricing problem, to keep a board's layout within the bill
    private static final int MOST_AT_ONCE = 8; // layouts of one board taken in before the program is solved again

    /** What comes of a program. */
    enum Outcome {
        /** No plan from these boards with these branches costs less than was asked. */
        NONE,
        /** The program has a solution. */
        SOME,
        /** The time was up. */
        STOPPED
    }

    /** What all programs of a set share. */
    @SuppressWarnings("ArrayRecordComponent") // never changed once made, never compared
    record Shared(
            Demand demand,
            PricingProblem pricing,
            DualCuts rows,
            List<List<Column>> pool, // layouts of each type of board
            int[] boards, // types of the boards in the set
            long[] missing, // what a blank of each part type left unmade costs, in scaled money
            double unit, // money in one of the programs'
            boolean recorded, // whether the reasons for what is said are kept
            BooleanSupplier stop) {}

    private final Shared shared;
    private final Demand demand;
    private final int[] boards;
    private final double unit;
    private final List<Branch> branches;
    private final int[][] least; // least[s][k]: blanks of type k that board s makes at least
    private final int[][] most; // and at most
    private final Simplex program;
    private final List<Column> columns; // those in the program
    private final List<Integer> boardOf; // their boards
    private final List<Integer> numberOf; // their numbers in the program
    private final BitSet[] in; // in[s]: which of the pool board s has
    private boolean joined; // whether the last asking brought a new layout
    private long lowerBound; // what no plan with these branches costs less than beyond its boards, in scaled money
    private ProofRecord.Node reason = ProofRecord.Leaf.OPEN; // why, where that is kept

    /** A program without branches. */
    RestrictedMaster(Shared shared) {
        this.shared = shared;
        demand = shared.demand;
        boards = shared.boards;
        unit = shared.unit;
        branches = List.of();
        columns = new ArrayList<>();
        boardOf = new ArrayList<>();
        numberOf = new ArrayList<>();
        in = new BitSet[boards.length];
        least = new int[boards.length][parts()];
        most = new int[boards.length][];
        program = new Simplex();
        for (int k = 0; k < parts(); k++)
            program.addAtLeast(demand.wanted[k], shared.missing[k] / unit, 0, new int[0], new double[0]);
        for (int s = 0; s < boards.length; s++) {
            program.addAtMost(1, 0, new int[0], new double[0]);
            in[s] = new BitSet();
            most[s] = demand.wanted.clone();
        }
    }

    /** A program with one branch more. */
    RestrictedMaster(RestrictedMaster from, Branch branch) {
        shared = from.shared;
        demand = from.demand;
        boards = from.boards;
        unit = from.unit;
        branches = new ArrayList<>(from.branches);
        branches.add(branch);
        columns = new ArrayList<>(from.columns);
        boardOf = new ArrayList<>(from.boardOf);
        numberOf = new ArrayList<>(from.numberOf);
        in = new BitSet[boards.length];
        for (int s = 0; s < boards.length; s++) in[s] = (BitSet) from.in[s].clone();
        program = from.program.copy();
        least = new int[boards.length][parts()];
        most = new int[boards.length][];
        limits();
        addRow(branch);
        for (int j = 0; j < columns.size(); j++)
            if (!allowed(columns.get(j), boardOf.get(j))) program.bar(numberOf.get(j), 4.0 * dearest() / unit);
    }

    private double dearest() {
        double all = 0;
        for (int k = 0; k < parts(); k++) all += (double) shared.missing[k] * demand.wanted[k];
        return all;
    }

    private int parts() {
        return demand.wanted.length;
    }

    /** What the branches leave each board: at most what it may make, less what others must. */
    private void limits() {
        for (int s = 0; s < boards.length; s++) most[s] = demand.wanted.clone();
        for (Branch branch : branches) {
            int s = branch.board();
            int k = branch.partType();
            if (branch.atLeast()) least[s][k] = Math.max(least[s][k], branch.many());
            else most[s][k] = Math.min(most[s][k], branch.many());
        }
        for (int k = 0; k < parts(); k++) {
            int all = 0;
            for (int s = 0; s < boards.length; s++) all += least[s][k];
            for (int s = 0; s < boards.length; s++)
                most[s][k] = Math.min(most[s][k], demand.wanted[k] - all + least[s][k]);
        }
    }

    /** Whether the branches leave a board nothing between its least and its most. */
    private boolean torn() {
        for (int s = 0; s < boards.length; s++)
            for (int k = 0; k < parts(); k++) if (least[s][k] > most[s][k]) return true;
        return false;
    }

    /** Whether a branch says more than the branches so far. */
    boolean narrows(Branch branch) {
        for (Branch other : branches) {
            boolean same = other.board() == branch.board()
                    && other.partType() == branch.partType()
                    && other.atLeast() == branch.atLeast();
            boolean more = branch.atLeast() ? branch.many() > other.many() : branch.many() < other.many();
            if (same && !more) return false;
        }
        return true;
    }

    private void addRow(Branch branch) {
        int k = branch.partType();
        List<Integer> those = new ArrayList<>();
        List<Double> values = new ArrayList<>();
        for (int j = 0; j < columns.size(); j++) {
            int made = columns.get(j).made()[k];
            if (boardOf.get(j) != branch.board() || made == 0) continue;
            those.add(numberOf.get(j));
            values.add((double) made);
        }
        int[] numbers = those.stream().mapToInt(j -> j).toArray();
        double[] made = values.stream().mapToDouble(v -> v).toArray();
        double dear = 2.0 * shared.missing[k] / unit;
        if (branch.atLeast()) program.addAtLeast(branch.many(), dear, 0, numbers, made);
        else program.addAtMost(branch.many(), dear, numbers, made);
    }

    private boolean allowed(Column column, int s) {
        int[] many = sharpens() ? column.made() : column.inSection(); // as the pricing problem has it
        for (int k : column.types()) if (many[k] > most[s][k]) return false;
        return true;
    }

    /**
     * Solves the program as it stands.
     *
     * @param dearest what a plan may cost beyond what its boards are bought for, in scaled money
     */
    Outcome solve(long dearest) {
        if (torn()) {
            reason = ProofRecord.Leaf.TORN;
            return Outcome.NONE;
        }
        boolean sharp = false;
        while (true) {
            program.solve(shared.stop);
            if (shared.stop.getAsBoolean()) return Outcome.STOPPED;
            if (demand.boardsAlone && program.value() < NOTHING) return Outcome.SOME;
            if (takeFromPool()) continue;
            lowerBound = branches.isEmpty() ? askTogether(sharp) : askOneByOne(sharp);
            if (demand.boardsAlone ? lowerBound > 0 : lowerBound >= dearest) return Outcome.NONE;
            if (!joined && (sharp || !sharpens())) return Outcome.SOME;
            sharp = !joined;
        }
    }

    /** Where offcuts and labor count, mixed layouts must be kept within the bill for programs to end in whole ones. */
    private boolean sharpens() {
        return !demand.boardsAlone;
    }

    /** Takes in layouts known already that pay at the program's prices; whether there were any. */
    private boolean takeFromPool() {
        boolean taken = false;
        for (int s = 0; s < boards.length; s++) {
            List<Column> known = shared.pool.get(boards[s]);
            double[] prices = ownPrices(s);
            int n = 0;
            for (int j = in[s].nextClearBit(0); j < known.size() && n < MOST_AT_ONCE; j = in[s].nextClearBit(j + 1)) {
                Column column = known.get(j);
                double reduced = column.beyondBoard(demand, unit) - program.price(parts() + s);
                for (int k : column.types()) reduced -= prices[k] * column.made()[k];
                if (reduced >= -PAYS || !allowed(column, s)) continue;
                add(column, s);
                in[s].set(j);
                n++;
            }
            taken |= n > 0;
        }
        return taken;
    }

    /** What each blank brings in on one board, its branches taken into account. */
    private double[] ownPrices(int s) {
        double[] prices = new double[parts()];
        for (int k = 0; k < prices.length; k++) prices[k] = program.price(k);
        for (int i = 0; i < branches.size(); i++)
            if (branches.get(i).board() == s)
                prices[branches.get(i).partType()] += program.price(parts() + boards.length + i);
        return prices;
    }

    private void add(Column column, int s) {
        int n = column.types().length;
        int extra = 0;
        for (Branch branch : branches) if (branch.board() == s && column.made()[branch.partType()] > 0) extra++;
        int[] rows = new int[n + 1 + extra];
        double[] values = new double[rows.length];
        for (int i = 0; i < n; i++) {
            rows[i] = column.types()[i];
            values[i] = column.made()[rows[i]];
        }
        rows[n] = parts() + s;
        values[n++] = 1;
        for (int i = 0; i < branches.size(); i++) {
            Branch branch = branches.get(i);
            if (branch.board() != s || column.made()[branch.partType()] == 0) continue;
            rows[n] = parts() + boards.length + i;
            values[n++] = column.made()[branch.partType()];
        }
        numberOf.add(program.add(rows, values, column.beyondBoard(demand, unit)));
        columns.add(column);
        boardOf.add(s);
    }

    private long money(double price) {
        return Math.round(price * unit);
    }

    /** Asks all boards of the job at one price for each blank, so that what they say holds for other sets too. */
    private long askTogether(boolean sharp) {
        long[] prices = new long[parts()];
        long sum = 0;
        for (int k = 0; k < prices.length; k++) {
            prices[k] = Math.max(0, money(program.price(k)));
            sum += prices[k] * demand.wanted[k];
        }
        shared.pricing.price(prices);
        if (sharp) for (int s = 0; s < boards.length; s++) sharpen(s, prices);
        long[] worths = new long[demand.copies.length];
        for (int b = 0; b < worths.length; b++) worths[b] = shared.pricing.worth(b);
        shared.rows.add(prices, worths);
        long[] taken = new long[boards.length];
        joined = false;
        for (int s = 0; s < boards.length; s++) {
            taken[s] = Math.max(0, worths[boards[s]]);
            sum -= taken[s];
            join(s, prices, sharp);
        }
        if (shared.recorded) reason = new ProofRecord.Closed(prices, List.of(), new long[0], taken);
        return sum;
    }

    /** Asks each board at the prices its own branches make. */
    private long askOneByOne(boolean sharp) {
        long[] prices = new long[parts()];
        for (int k = 0; k < prices.length; k++) prices[k] = Math.max(0, money(program.price(k)));
        long[] more = new long[branches.size()];
        for (int i = 0; i < more.length; i++) more[i] = price(i);
        long sum = 0;
        for (int k = 0; k < prices.length; k++) sum += prices[k] * demand.wanted[k];
        for (int i = 0; i < more.length; i++) sum += more[i] * branches.get(i).many();
        long[] worths = new long[boards.length];
        joined = false;
        for (int s = 0; s < boards.length; s++) {
            long[] own = prices.clone();
            for (int i = 0; i < more.length; i++)
                if (branches.get(i).board() == s) own[branches.get(i).partType()] += more[i];
            for (int k = 0; k < own.length; k++) own[k] = Math.max(0, own[k]);
            shared.pricing.price(boards[s], own, most[s]);
            if (sharp) sharpen(s, own);
            worths[s] = Math.max(0, shared.pricing.worth(boards[s]));
            sum -= worths[s];
            join(s, own, sharp);
        }
        if (shared.recorded) reason = new ProofRecord.Closed(prices, branches, more, worths);
        return sum;
    }

    private void sharpen(int s, long[] prices) {
        long enough = money(-program.price(parts() + s));
        shared.pricing.sharpen(boards[s], prices, most[s], SHARP_STEPS, enough, shared.stop);
    }

    /** What a branch makes a blank worth more on its board, or less. */
    private long price(int branch) {
        long price = money(program.price(parts() + boards.length + branch));
        return branches.get(branch).atLeast() ? Math.max(0, price) : Math.min(0, price);
    }

    /** Takes the layout a board was just asked for into the program, where it gains something there. */
    private void join(int s, long[] prices, boolean sharp) {
        int type = boards[s];
        if (!shared.pricing.cuts(type)) return;
        double reduced = -shared.pricing.worth(type) / unit - program.price(parts() + s);
        if (reduced >= -PAYS) return;
        Column column = Column.of(demand, shared.pricing.pattern(type), prices);
        if (!sharp && sharpens() && !allowed(column, s)) return;
        joined = true;
        in[s].set(shared.pool.get(type).size());
        shared.pool.get(type).add(column);
        add(column, s);
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
        for (int j = 0; j < weights.length; j++) weights[j] = all[numberOf.get(j)];
        return weights;
    }

    /** What no plan with these branches costs less than beyond its boards, in scaled money. */
    long lowerBound() {
        return lowerBound;
    }

    /** Why that is so, where reasons are kept. */
    ProofRecord.Node reason() {
        return reason;
    }

    /** Whether the branches leave one board only one number of blanks of a type. */
    boolean settled(int s, int k) {
        return least[s][k] == most[s][k];
    }
}
