package ripwright.internal.lp;

import java.util.Arrays;
import java.util.function.BooleanSupplier;

/**
 * The revised primal simplex method for a linear program to be minimized, to which columns and rows are only ever added. Each
 * row brings a column of its own that meets it at a price, so that the program always has a feasible basis and starts again
 * from where it stopped. The inverse of the basis is kept dense and reckoned anew now and then; entering columns are chosen
 * by partial pricing from a list of candidates. Right sides are perturbed by about 1e-7 so that degenerate programs do not
 * cycle. It reckons in doubles: what it answers is a hint and no proof. Rows squared steps a pivot.
 *
 * @see "G. B. Dantzig, W. Orchard-Hays, The product form for the inverse in the simplex method, MTAC 8 (1954) 64-67"
 * @see "A. Charnes, Optimality and degeneracy in linear programming, Econometrica 20 (1952) 160-170, for the perturbation"
 */
public final class Simplex {
    private static final double TINY = 1e-9;
    private static final int PIVOTS_BEFORE_INVERTING_AGAIN = 400;
    private static final int CANDIDATES = 32;
    private static final double[] PLUS = {1};
    private static final double[] MINUS = {-1};

    private int rows;
    private double[] right;
    private double[][] inverse; // inverse[i]: row of the basic column basis[i]
    private int[] basis; // basis[i]: the column in place i
    private double[] basicWeight; // of basis[i]
    private double[] price; // price[r]: of row r
    private int columns;
    private int[][] rowsOf; // rowsOf[j]: rows in which column j is not 0
    private double[][] valuesOf;
    private double[] cost;
    private double[] norm;
    private boolean[] basic;
    private double[] direction;
    private int pivots;
    private final int[] candidate = new int[CANDIDATES]; // columns that lowered the cost when last all were looked at
    private final double[] candidateGain = new double[CANDIDATES]; // by how much, then
    private int candidates;
    private int worst; // place of the candidate with the least gain, when there are as many as may be

    /** A program without rows. */
    public Simplex() {
        right = new double[0];
        inverse = new double[0][];
        basis = new int[0];
        basicWeight = new double[0];
        price = new double[0];
        rowsOf = new int[64][];
        valuesOf = new double[64][];
        cost = new double[64];
        norm = new double[64];
        basic = new boolean[64];
        direction = new double[0];
    }

    private Simplex(Simplex other) {
        rows = other.rows;
        right = other.right.clone();
        inverse = new double[rows][];
        for (int i = 0; i < rows; i++) inverse[i] = other.inverse[i].clone();
        basis = other.basis.clone();
        basicWeight = other.basicWeight.clone();
        price = other.price.clone();
        columns = other.columns;
        rowsOf = other.rowsOf.clone();
        valuesOf = other.valuesOf.clone();
        cost = other.cost.clone();
        norm = other.norm.clone();
        basic = other.basic.clone();
        direction = new double[rows];
        pivots = other.pivots;
    }

    /** The same program, which then goes its own way. */
    public Simplex copy() {
        return new Simplex(this);
    }

    /**
     * Adds a row that wants so much at least, over the columns there are.
     *
     * @param right how much, not below zero
     * @param missing what it costs to leave one unmade
     * @param surplus what it costs to make one more than is wanted
     * @param those columns that are not 0 in the row
     * @param values what they are there
     */
    public void addAtLeast(double right, double missing, double surplus, int[] those, double[] values) {
        int r = addRow(right, those, values);
        double has = made(r);
        int more = add(new int[] {r}, MINUS, surplus);
        int lack = add(new int[] {r}, PLUS, missing);
        if (has >= this.right[r]) enter(r, more, -1, has - this.right[r]);
        else enter(r, lack, 1, this.right[r] - has);
    }

    /**
     * Adds a row that allows so much at most, over the columns there are.
     *
     * @param right how much, not below zero
     * @param excess what it costs to take one too many
     * @param those columns that are not 0 in the row
     * @param values what they are there
     */
    public void addAtMost(double right, double excess, int[] those, double[] values) {
        int r = addRow(right, those, values);
        double has = made(r);
        int less = add(new int[] {r}, PLUS, 0);
        if (has <= this.right[r]) {
            enter(r, less, 1, this.right[r] - has);
        } else {
            int over = add(new int[] {r}, MINUS, excess);
            enter(r, over, -1, has - this.right[r]);
        }
    }

    private int addRow(double side, int[] those, double[] values) {
        int r = rows++;
        right = Arrays.copyOf(right, rows);
        right[r] = side + 1e-7 * (1 + 31 * (r + 1) % 97 / 97.0);
        for (int k = 0; k < those.length; k++) {
            int j = those[k];
            rowsOf[j] = Arrays.copyOf(rowsOf[j], rowsOf[j].length + 1);
            valuesOf[j] = Arrays.copyOf(valuesOf[j], rowsOf[j].length);
            rowsOf[j][rowsOf[j].length - 1] = r;
            valuesOf[j][rowsOf[j].length - 1] = values[k];
        }
        basis = Arrays.copyOf(basis, rows);
        basicWeight = Arrays.copyOf(basicWeight, rows);
        price = Arrays.copyOf(price, rows);
        direction = new double[rows];
        inverse = Arrays.copyOf(inverse, rows);
        for (int i = 0; i < r; i++) inverse[i] = Arrays.copyOf(inverse[i], rows);
        inverse[r] = new double[rows];
        return r;
    }

    /** What the basic columns make of the newest row. */
    private double made(int r) {
        double has = 0;
        for (int i = 0; i < r; i++) has += basicWeight[i] * valueIn(basis[i], r);
        return has;
    }

    private double valueIn(int j, int r) {
        int last = rowsOf[j].length - 1;
        return last >= 0 && rowsOf[j][last] == r ? valuesOf[j][last] : 0;
    }

    /** Makes column {@code j}, which is {@code sign} in the newest row and else 0, basic there. */
    private void enter(int r, int j, double sign, double weight) {
        double[] row = inverse[r];
        for (int i = 0; i < r; i++) {
            double value = valueIn(basis[i], r);
            if (value == 0) continue;
            for (int c = 0; c < r; c++) row[c] -= sign * value * inverse[i][c];
        }
        row[r] = sign;
        basis[r] = j;
        basic[j] = true;
        basicWeight[r] = weight;
        for (int c = 0; c <= r; c++) price[c] += cost[j] * row[c];
    }

    /** Adds a column and says its number. */
    public int add(int[] rows, double[] values, double cost) {
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

    /** Makes a column so dear that it is left out. */
    public void bar(int j, double cost) {
        if (this.cost[j] == cost) return;
        this.cost[j] = cost;
        if (basic[j]) reprice();
    }

    private void reprice() {
        Arrays.fill(price, 0);
        for (int i = 0; i < rows; i++)
            if (cost[basis[i]] != 0) for (int r = 0; r < rows; r++) price[r] += cost[basis[i]] * inverse[i][r];
    }

    /** Pivots until no column lowers the cost, or {@code stop} says so. */
    public void solve(BooleanSupplier stop) {
        int since = 0;
        while ((since++ & 15) != 0 || !stop.getAsBoolean()) {
            int enters = entering();
            if (enters < 0 || !pivot(enters)) return;
            if (++pivots % Math.max(PIVOTS_BEFORE_INVERTING_AGAIN, 4 * rows) == 0) invert();
        }
    }

    /** A column that lowers the cost: the best of the few that did so lately, or when none of those does any more, of all. */
    private int entering() {
        int best = bestCandidate();
        if (best >= 0) return best;
        candidates = 0;
        for (int j = 0; j < columns; j++) {
            if (basic[j]) continue;
            double gain = -reducedCost(j) / norm[j];
            if (gain > TINY) offer(j, gain);
        }
        return bestCandidate();
    }

    private int bestCandidate() {
        int best = -1;
        double most = TINY;
        for (int c = 0; c < candidates; c++) {
            int j = candidate[c];
            double gain = basic[j] ? 0 : -reducedCost(j) / norm[j];
            if (gain <= TINY) {
                candidate[c--] = candidate[--candidates];
            } else if (gain > most) {
                most = gain;
                best = j;
            }
        }
        return best;
    }

    /** Keeps a column among the candidates, in place of the worst of them when there are enough. */
    private void offer(int j, double gain) {
        int at = candidates < CANDIDATES ? candidates++ : worst;
        if (at == worst && candidates == CANDIDATES && candidateGain[worst] >= gain) return;
        candidate[at] = j;
        candidateGain[at] = gain;
        if (candidates < CANDIDATES) return;
        worst = 0;
        for (int c = 1; c < candidates; c++) if (candidateGain[c] < candidateGain[worst]) worst = c;
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
        for (int i = 0; i < rows; i++) {
            double sum = 0;
            for (int r = 0; r < rows; r++) sum += inverse[i][r] * right[r];
            basicWeight[i] = Math.max(0, sum);
        }
        reprice();
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

    /** How many columns there are, those of the rows' own included. */
    public int columns() {
        return columns;
    }

    /** What the columns cost now. */
    public double value() {
        double sum = 0;
        for (int i = 0; i < rows; i++) sum += basicWeight[i] * cost[basis[i]];
        return sum;
    }

    /** What one more of row {@code r} would cost. */
    public double price(int r) {
        return price[r];
    }

    /** How much of every column is taken. */
    public double[] weights() {
        double[] weights = new double[columns];
        for (int i = 0; i < rows; i++) weights[basis[i]] = basicWeight[i];
        return weights;
    }
}
