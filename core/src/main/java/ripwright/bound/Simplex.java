package ripwright.bound;

import java.util.Arrays;
import java.util.function.BooleanSupplier;

/**
 * A linear program to be minimized, whose columns are only ever added: the primal simplex with a dense inverse, which
 * starts again where it stopped before. What it answers is a hint and no proof: it reckons in doubles, and its right sides
 * are moved a little so that it does not go round in circles.
 *
 * @see "G. B. Dantzig, W. Orchard-Hays, The product form for the inverse in the simplex method, MTAC 8 (1954) 64-67"
 */
final class Simplex {
    private static final double TINY = 1e-9;
    private static final int PIVOTS_BEFORE_INVERTING_AGAIN = 400;

    private final int rows;
    private final double[] right;
    private final double[][] inverse; // inverse[i]: row of the basic column basis[i]
    private final int[] basis; // basis[i]: the column in place i
    private final double[] basicWeight; // of basis[i]
    private final double[] price; // price[r]: of row r
    private int columns;
    private int[][] rowsOf = new int[256][]; // rowsOf[j]: rows in which column j is not 0
    private double[][] valuesOf = new double[256][];
    private double[] cost = new double[256];
    private double[] norm = new double[256];
    private boolean[] basic = new boolean[256];
    private final double[] direction;
    private int pivots;

    /**
     * Rows that say how much is wanted at least, and rows that say how much there is at most.
     *
     * @param right the right sides, none below zero
     * @param atLeast whether a row wants so much at least; else it allows so much at most
     * @param missing what it costs to leave one of the row unmade, for rows that want at least
     * @param surplus what it costs to make one more of the row than it wants
     */
    Simplex(double[] right, boolean[] atLeast, double[] missing, double[] surplus) {
        rows = right.length;
        this.right = new double[rows];
        inverse = new double[rows][rows];
        basis = new int[rows];
        basicWeight = new double[rows];
        price = new double[rows];
        direction = new double[rows];
        for (int r = 0; r < rows; r++) {
            this.right[r] = right[r] + 1e-7 * (1 + 31 * (r + 1) % 97 / 97.0);
            int[] row = {r};
            if (atLeast[r]) add(row, new double[] {-1}, surplus[r]);
            basis[r] = add(row, new double[] {1}, atLeast[r] ? missing[r] : 0);
            basic[basis[r]] = true;
            inverse[r][r] = 1;
            basicWeight[r] = this.right[r];
            price[r] = cost[basis[r]];
        }
    }

    /** Adds a column and says its number. */
    int add(int[] rows, double[] values, double cost) {
        if (columns == rowsOf.length) {
            int more = 2 * columns;
            rowsOf = Arrays.copyOf(rowsOf, more);
            valuesOf = Arrays.copyOf(valuesOf, more);
            this.cost = Arrays.copyOf(this.cost, more);
            norm = Arrays.copyOf(norm, more);
            basic = Arrays.copyOf(basic, more);
        }
        rowsOf[columns] = rows;
        valuesOf[columns] = values;
        this.cost[columns] = cost;
        double square = 1;
        for (double value : values) square += value * value;
        norm[columns] = Math.sqrt(square);
        return columns++;
    }

    /** Pivots until no column lowers the cost, or {@code stop} says so. */
    void solve(BooleanSupplier stop) {
        int since = 0;
        while ((since++ & 15) != 0 || !stop.getAsBoolean()) {
            int enters = entering();
            if (enters < 0 || !pivot(enters)) return;
            if (++pivots % PIVOTS_BEFORE_INVERTING_AGAIN == 0) invert();
        }
    }

    private int entering() {
        int best = -1;
        double most = TINY;
        for (int j = 0; j < columns; j++) {
            if (basic[j]) continue;
            double gain = -reducedCost(j) / norm[j];
            if (gain <= most) continue;
            most = gain;
            best = j;
        }
        return best;
    }

    private double reducedCost(int j) {
        double reduced = cost[j];
        int[] those = rowsOf[j];
        double[] values = valuesOf[j];
        for (int k = 0; k < those.length; k++) reduced -= price[those[k]] * values[k];
        return reduced;
    }

    /** Takes column {@code j} in; false when nothing would ever stop it, which only rounding can bring about. */
    private boolean pivot(int j) {
        int[] those = rowsOf[j];
        double[] values = valuesOf[j];
        for (int i = 0; i < rows; i++) {
            double sum = 0;
            double[] row = inverse[i];
            for (int k = 0; k < those.length; k++) sum += row[those[k]] * values[k];
            direction[i] = sum;
        }
        int leaves = leaving();
        if (leaves < 0) return false;
        double reduced = reducedCost(j);
        double[] pivotRow = inverse[leaves];
        double by = 1 / direction[leaves];
        for (int r = 0; r < rows; r++) pivotRow[r] *= by;
        double step = basicWeight[leaves] * by;
        for (int i = 0; i < rows; i++) {
            double d = direction[i];
            if (i == leaves || d == 0) continue;
            double[] row = inverse[i];
            for (int r = 0; r < rows; r++) row[r] -= d * pivotRow[r];
            basicWeight[i] = Math.max(0, basicWeight[i] - step * d);
        }
        for (int r = 0; r < rows; r++) price[r] += reduced * pivotRow[r];
        basicWeight[leaves] = step;
        basic[basis[leaves]] = false;
        basis[leaves] = j;
        basic[j] = true;
        return true;
    }

    private int leaving() {
        int leaves = -1;
        double least = Double.MAX_VALUE;
        for (int i = 0; i < rows; i++) {
            double d = direction[i];
            if (d <= 1e-8) continue;
            double ratio = basicWeight[i] / d;
            boolean tied = ratio < least + 1e-12;
            if (ratio < least - 1e-12 || (tied && leaves >= 0 && d > direction[leaves])) {
                least = Math.min(least, ratio);
                leaves = i;
            }
        }
        return leaves;
    }

    /** Works the inverse out from the basic columns again, to be rid of what pivots rounded. */
    private void invert() {
        double[][] left = new double[rows][rows];
        for (int i = 0; i < rows; i++) {
            int[] those = rowsOf[basis[i]];
            for (int k = 0; k < those.length; k++) left[those[k]][i] = valuesOf[basis[i]][k];
        }
        double[][] into = new double[rows][rows];
        for (int r = 0; r < rows; r++) into[r][r] = 1;
        for (int c = 0; c < rows; c++) {
            int pivot = c;
            for (int r = c + 1; r < rows; r++) if (Math.abs(left[r][c]) > Math.abs(left[pivot][c])) pivot = r;
            if (Math.abs(left[pivot][c]) < 1e-11) return; // hopeless: go on with the old one
            swap(left, c, pivot);
            swap(into, c, pivot);
            eliminate(left, into, c);
        }
        for (int i = 0; i < rows; i++) System.arraycopy(into[i], 0, inverse[i], 0, rows);
        Arrays.fill(price, 0);
        for (int i = 0; i < rows; i++) {
            double sum = 0;
            for (int r = 0; r < rows; r++) {
                sum += inverse[i][r] * right[r];
                price[r] += cost[basis[i]] * inverse[i][r];
            }
            basicWeight[i] = Math.max(0, sum);
        }
    }

    private static void swap(double[][] matrix, int a, int b) {
        double[] row = matrix[a];
        matrix[a] = matrix[b];
        matrix[b] = row;
    }

    private void eliminate(double[][] left, double[][] into, int c) {
        double by = 1 / left[c][c];
        for (int k = 0; k < rows; k++) {
            left[c][k] *= by;
            into[c][k] *= by;
        }
        for (int r = 0; r < rows; r++) {
            double factor = left[r][c];
            if (r == c || factor == 0) continue;
            for (int k = c; k < rows; k++) left[r][k] -= factor * left[c][k];
            for (int k = 0; k < rows; k++) into[r][k] -= factor * into[c][k];
        }
    }

    /** How many columns there are. */
    int columns() {
        return columns;
    }

    /** What the columns cost now. */
    double value() {
        double sum = 0;
        for (int i = 0; i < rows; i++) sum += basicWeight[i] * cost[basis[i]];
        return sum;
    }

    /** What one more of row {@code r} would cost. */
    double price(int r) {
        return price[r];
    }

    /** How much of every column is taken. */
    double[] weights() {
        double[] weights = new double[columns];
        for (int i = 0; i < rows; i++) weights[basis[i]] = basicWeight[i];
        return weights;
    }
}
