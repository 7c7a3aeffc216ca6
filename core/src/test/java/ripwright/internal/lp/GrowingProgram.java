package ripwright.internal.lp;

import com.google.ortools.Loader;
import com.google.ortools.linearsolver.MPConstraint;
import com.google.ortools.linearsolver.MPObjective;
import com.google.ortools.linearsolver.MPSolver;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/** A {@link Simplex} and beside it the same program in plain lists, by which what it says is judged. */
final class GrowingProgram {
    private static final double TOLERANCE = 1e-6;
    private static final double FAR = 1e9; // dearer than anything: the row must hold

    /** What a row wants, and what one too few and one too many cost. */
    private record Row(double right, double fewer, double more) {}

    private static final class Column {
        private final int number; // in the simplex
        private final List<Double> values; // one per row
        private double cost;

        Column(int number, List<Double> values, double cost) {
            this.number = number;
            this.values = new ArrayList<>(values);
            this.cost = cost;
        }
    }

    final Simplex simplex;
    private final List<Row> rows = new ArrayList<>();
    private final List<Column> columns = new ArrayList<>();

    GrowingProgram() {
        this(new Simplex());
    }

    private GrowingProgram(Simplex simplex) {
        this.simplex = simplex;
    }

    GrowingProgram copy() {
        GrowingProgram copy = new GrowingProgram(simplex.copy());
        copy.rows.addAll(rows);
        for (Column column : columns) copy.columns.add(new Column(column.number, column.values, column.cost));
        return copy;
    }

    int rows() {
        return rows.size();
    }

    int columns() {
        return columns.size();
    }

    void addAtLeast(double right, double missing, double surplus, double... values) {
        join(values);
        int[] those = notZero(values);
        simplex.addAtLeast(right, missing, surplus, numbers(those), at(those, values));
        rows.add(new Row(right, missing, surplus));
    }

    /** What is too many costs something only where there was too many when the row came; else the row must hold. */
    void addAtMost(double right, double excess, double... values) {
        join(values);
        int[] those = notZero(values);
        int before = simplex.columns();
        simplex.addAtMost(right, excess, numbers(those), at(those, values));
        rows.add(new Row(right, 0, simplex.columns() == before + 2 ? excess : FAR));
    }

    void add(double[] values, double cost) {
        int[] those = notZero(values);
        int number = simplex.add(those, at(those, values), cost);
        columns.add(new Column(number, Arrays.stream(values).boxed().toList(), cost));
    }

    void bar(int j, double cost) {
        simplex.bar(columns.get(j).number, cost);
        columns.get(j).cost = cost;
    }

    private void join(double... values) {
        for (int j = 0; j < values.length; j++) columns.get(j).values.add(values[j]);
    }

    private int[] numbers(int... those) {
        return Arrays.stream(those).map(j -> columns.get(j).number).toArray();
    }

    private static int[] notZero(double... values) {
        return IntStream.range(0, values.length).filter(i -> values[i] != 0).toArray();
    }

    private static double[] at(int[] those, double... values) {
        return Arrays.stream(those).mapToDouble(i -> values[i]).toArray();
    }

    double weight(int j) {
        return simplex.weights()[columns.get(j).number];
    }

    /** How many more than its right side a row makes; below zero when fewer. */
    private double over(int r) {
        double over = -rows.get(r).right;
        for (int j = 0; j < columns.size(); j++) over += columns.get(j).values.get(r) * weight(j);
        return over;
    }

    /** What is paid for too few and too many. */
    double penalty() {
        double sum = 0;
        for (int r = 0; r < rows.size(); r++)
            sum += over(r) > 0 ? Math.max(0, over(r) - TOLERANCE) * rows.get(r).more : -over(r) * rows.get(r).fewer;
        return sum;
    }

    /** Whether fewer columns are taken than there are rows, the rows' own among them. */
    boolean isDegenerate() {
        return Arrays.stream(simplex.weights()).filter(weight -> weight > 1e-4).count() < rows.size();
    }

    /**
     * What keeps weights and prices from being an optimum: weights below zero, rows that must hold and do not, prices at
     * which a column or a penalty pays, a value that is not that of the weights, or not that of the prices.
     */
    List<String> faults() {
        List<String> faults = new ArrayList<>();
        double cost = penalty();
        double worth = 0;
        double slack = TOLERANCE; // right sides are moved by up to 2e-7
        for (int r = 0; r < rows.size(); r++) {
            Row row = rows.get(r);
            double price = simplex.price(r);
            if (price > row.fewer + TOLERANCE || price < -row.more - TOLERANCE)
                faults.add("row " + r + ": price " + price + ", " + row);
            if (row.more == FAR && over(r) > TOLERANCE) faults.add("row " + r + ": " + over(r) + " too many");
            worth += price * row.right;
            slack += (Math.abs(price) + row.fewer + (row.more == FAR ? 0 : row.more)) * TOLERANCE;
        }
        for (int j = 0; j < columns.size(); j++) {
            Column column = columns.get(j);
            double reduced = column.cost;
            for (int r = 0; r < rows.size(); r++) reduced -= column.values.get(r) * simplex.price(r);
            if (reduced < -TOLERANCE) faults.add("column " + j + " would pay: " + reduced);
            if (weight(j) < 0) faults.add("column " + j + ": weight " + weight(j));
            cost += column.cost * weight(j);
        }
        if (Math.abs(cost - simplex.value()) > slack) faults.add("value " + simplex.value() + ", not " + cost);
        if (Math.abs(worth - simplex.value()) > slack) faults.add("value " + simplex.value() + ", by prices " + worth);
        return faults;
    }

    /** The least cost, as the linear solver GLOP (OR-Tools) finds it. */
    double optimum() {
        Loader.loadNativeLibraries();
        MPSolver glop = MPSolver.createSolver("GLOP");
        MPObjective objective = glop.objective();
        objective.setMinimization();
        MPConstraint[] all = new MPConstraint[rows.size()];
        for (int r = 0; r < all.length; r++) {
            Row row = rows.get(r);
            all[r] = glop.makeConstraint(row.right, row.right);
            take(glop, all, r, 1, row.fewer);
            if (row.more != FAR) take(glop, all, r, -1, row.more);
        }
        for (Column column : columns) {
            var weight = glop.makeNumVar(0, MPSolver.infinity(), "");
            objective.setCoefficient(weight, column.cost);
            for (int r = 0; r < all.length; r++) all[r].setCoefficient(weight, column.values.get(r));
        }
        if (glop.solve() != MPSolver.ResultStatus.OPTIMAL) throw new IllegalStateException("GLOP found no optimum.");
        double least = objective.value();
        glop.delete();
        return least;
    }

    private static void take(MPSolver glop, MPConstraint[] all, int r, double value, double cost) {
        var own = glop.makeNumVar(0, MPSolver.infinity(), "");
        glop.objective().setCoefficient(own, cost);
        all[r].setCoefficient(own, value);
    }
}
