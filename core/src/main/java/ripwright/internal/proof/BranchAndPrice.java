package ripwright.internal.proof;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import org.jspecify.annotations.Nullable;
import ripwright.internal.bound.Demand;
import ripwright.internal.pricing.Pattern;
import ripwright.internal.pricing.PricingProblem;

/**
 * Whether one set of boards makes the bill: branch and price on how many blanks of a type a board makes. Depth first, the
 * branch first that the program leans to, as it is more likely to end in a plan.
 *
 * @see "C. Barnhart et al., Branch-and-price: column generation for solving huge integer programs, Operations Research 46
 *     (1998) 316-329"
 */
public final class BranchAndPrice {
    private static final double WHOLE = 1e-4; // weights this near to a whole number are

    private final Demand demand;
    private final PricingProblem pricing;
    private final int[] boards; // types
    private final RestrictedMaster.Shared shared;
    private final BooleanSupplier stop;
    private final long bought; // what the boards cost, and what is due anyway
    private boolean open; // whether something was left undecided
    private long known; // what a plan must cost less than to be taken, in scaled money
    private long most; // what a plan must cost less than to be looked for
    private Optional<CompleteLayouts> found = Optional.empty();
    private ProofRecord.Node root = ProofRecord.Leaf.OPEN;

    BranchAndPrice(RestrictedMaster.Shared shared) {
        this.shared = shared;
        demand = shared.demand();
        pricing = shared.pricing();
        boards = shared.boards();
        stop = shared.stop();
        long cost = demand.due;
        for (int type : boards) cost += demand.cost[type];
        bought = cost;
    }

    /**
     * The cheapest layouts of these boards that make the bill; empty when none cost less, or none were found. What costs a
     * {@link Demand#grain} less may be left out.
     *
     * @param known what a plan may cost, in scaled money, less than that
     */
    Optional<CompleteLayouts> cheapest(long known) {
        this.known = known;
        most = known - demand.grain;
        root = search(new RestrictedMaster(shared));
        return found;
    }

    /** Why no plan from these boards is cheaper, where reasons are kept. */
    ProofRecord.Node root() {
        return root;
    }

    /** Whether there may be a cheaper plan than was found. */
    boolean open() {
        return open;
    }

    private ProofRecord.Node search(RestrictedMaster program) {
        if (done()) return ProofRecord.Leaf.OPEN;
        RestrictedMaster.Outcome outcome =
                stop.getAsBoolean() ? RestrictedMaster.Outcome.STOPPED : program.solve(most - bought);
        if (outcome == RestrictedMaster.Outcome.NONE) return program.reason();
        if (outcome == RestrictedMaster.Outcome.STOPPED) return leftOpen();
        double[][] many = many(program);
        int board = -1;
        int type = -1;
        double furthest = 0.01;
        for (int s = 0; s < many.length; s++) {
            for (int k = 0; k < many[s].length; k++) {
                double off = Math.abs(many[s][k] - Math.rint(many[s][k])) * Math.sqrt((double) demand.feet[k]);
                if (Math.abs(many[s][k] - Math.rint(many[s][k])) < 0.01 || off <= furthest) continue;
                furthest = off;
                board = s;
                type = k;
            }
        }
        if (board < 0) return whole(program, many);
        int down = (int) Math.floor(many[board][type]);
        boolean upFirst = many[board][type] - down > 0.4;
        List<ProofRecord.Way> ways = new ArrayList<>();
        for (int n = 0; n < 2; n++) {
            boolean up = upFirst == (n == 0);
            Branch branch = new Branch(board, type, up, up ? down + 1 : down);
            if (program.narrows(branch)) ways.add(way(program, branch));
            else leftOpen(); // the program left the branch unkept, at a high price
        }
        return fork(ways);
    }

    private ProofRecord.Node leftOpen() {
        open = true;
        return ProofRecord.Leaf.OPEN;
    }

    private ProofRecord.Node fork(List<ProofRecord.Way> ways) {
        return shared.recorded() ? new ProofRecord.Fork(ways) : ProofRecord.Leaf.OPEN;
    }

    private ProofRecord.Way way(RestrictedMaster program, Branch branch) {
        return new ProofRecord.Way(List.of(branch), search(new RestrictedMaster(program, branch)));
    }

    /** Where nothing but boards costs money, one plan is as cheap as another. */
    private boolean done() {
        return demand.boardsAlone && found.isPresent();
    }

    /** How many blanks of each type the program makes of each board. */
    private double[][] many(RestrictedMaster program) {
        double[][] many = new double[boards.length][demand.wanted.length];
        double[] weights = program.weights();
        for (int j = 0; j < weights.length; j++) {
            if (weights[j] < 1e-9) continue;
            int[] made = program.column(j).made();
            for (int k = 0; k < made.length; k++) many[program.boardOf(j)][k] += weights[j] * made[k];
        }
        return many;
    }

    /** All boards make whole numbers of blanks: either each from one layout, or the mixed ones must be proved possible. */
    private ProofRecord.Node whole(RestrictedMaster program, double[][] many) {
        @Nullable Pattern[] patterns = new @Nullable Pattern[boards.length];
        double[] weights = program.weights();
        for (int j = 0; j < weights.length; j++)
            if (weights[j] > 1 - WHOLE)
                patterns[program.boardOf(j)] = program.column(j).pattern();
        int[] left = demand.wanted.clone();
        for (int s = 0; s < boards.length; s++) {
            if (patterns[s] == null) continue;
            int[] made = patterns[s].made(left.length);
            for (int k = 0; k < left.length; k++) left[k] -= made[k];
        }
        for (int s = 0; s < boards.length; s++) {
            if (patterns[s] != null) continue;
            int[] made = new int[left.length];
            for (int k = 0; k < made.length; k++) made[k] = Math.max(0, Math.min(left[k], (int) Math.rint(many[s][k])));
            if (Arrays.stream(made).sum() == 0) continue;
            PricingProblem.Given given = pricing.holding(boards[s], made);
            if (given.pattern().isEmpty()) return given.sure() ? without(program, s, made) : leftOpen();
            patterns[s] = given.pattern().get();
            for (int k = 0; k < left.length; k++) left[k] -= made[k];
        }
        if (make(program, patterns)) return program.reason();
        return demand.boardsAlone
                ? leftOpen() // a board does not give what the pricing problem thought it does
                : split(program, many);
    }

    /** Takes a plan of real blanks; whether none with these branches is cheaper. */
    private boolean make(RestrictedMaster program, @Nullable Pattern[] patterns) {
        Optional<CompleteLayouts> made = CompleteLayouts.of(demand, pricing, patterns);
        if (made.isEmpty()) return false;
        if (made.get().money() < (found.isPresent() ? most : known)) {
            most = made.get().money();
            found = made;
        }
        return demand.boardsAlone || made.get().money() <= bought + program.lowerBound() + demand.grain;
    }

    /**
     * All boards make whole numbers of blanks, but from mixed layouts: one board may make fewer of a type, more, or just as
     * many. In the end all of its layouts make the same.
     */
    private ProofRecord.Node split(RestrictedMaster program, double[][] many) {
        for (int s = 0; s < boards.length; s++) {
            for (int k = 0; k < many[s].length; k++) {
                if (program.settled(s, k)) continue;
                int n = (int) Math.rint(many[s][k]);
                Branch most = new Branch(s, k, false, n);
                Branch least = new Branch(s, k, true, n);
                RestrictedMaster atMost = program.narrows(most) ? new RestrictedMaster(program, most) : program;
                RestrictedMaster both = atMost.narrows(least) ? new RestrictedMaster(atMost, least) : atMost;
                return fork(List.of(
                        new ProofRecord.Way(List.of(most, least), search(both)),
                        way(program, new Branch(s, k, false, n - 1)),
                        way(program, new Branch(s, k, true, n + 1))));
            }
        }
        return leftOpen();
    }

    /** The board does not give all these blanks together: so it makes fewer of one type or another. */
    private ProofRecord.Node without(RestrictedMaster program, int board, int[] made) {
        int[] fewest = fewer(board, made);
        RestrictedMaster all = program;
        List<Branch> as = new ArrayList<>(); // as many as it does not give
        List<ProofRecord.Way> ways = new ArrayList<>();
        for (int k = 0; k < fewest.length && !done(); k++) {
            if (fewest[k] == 0) continue;
            Branch fewer = new Branch(board, k, false, fewest[k] - 1);
            List<Branch> branches = new ArrayList<>(as);
            branches.add(fewer);
            ways.add(new ProofRecord.Way(branches, search(new RestrictedMaster(all, fewer))));
            as.add(new Branch(board, k, true, fewest[k]));
            all = new RestrictedMaster(all, as.get(as.size() - 1));
        }
        if (done()) return ProofRecord.Leaf.OPEN;
        ways.add(new ProofRecord.Way(as, new ProofRecord.Barred(board, fewest)));
        return fork(ways);
    }

    /** Takes blanks out as long as the board still does not give the rest. */
    private int[] fewer(int board, int[] made) {
        int[] fewest = made.clone();
        for (int k = 0; k < fewest.length; k++) {
            while (fewest[k] > 0) {
                fewest[k]--;
                PricingProblem.Given given = pricing.holding(boards[board], fewest);
                if (given.pattern().isEmpty() && given.sure()) continue;
                fewest[k]++;
                break;
            }
        }
        return fewest;
    }
}
