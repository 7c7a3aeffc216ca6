package ripwright.testing;

import com.google.ortools.Loader;
import com.google.ortools.sat.CpSolver;
import com.google.ortools.sat.CpSolverStatus;
import com.google.ortools.sat.LinearExpr;
import java.util.List;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;
import ripwright.internal.geometry.Layout;
import ripwright.job.Job;
import ripwright.measure.BoardFeet;
import ripwright.measure.Money;

/**
 * The optimum of a small job, found and proven by the constraint solver CP-SAT on a formulation of its own, made from the
 * contract alone; test blanks are left out. Meant for up to 8 parts and 3 boards on a grid of 1/16 in or coarser. Same job,
 * same answer: one thread, one seed.
 *
 * <p>A short job is solved in two steps: the most board feet of finished parts, then the least cost of just as many. A
 * {@code together} group may then be made in part, from one board.
 */
public final class CpSatOptimum {
    private static final double MOST_WORK = 600; // in the solver's own measure of work, about seconds; never the clock

    private final Ticks ticks;
    private final boolean net;

    private CpSatOptimum(Job job, boolean net) {
        this.ticks = new Ticks(job);
        this.net = net;
        if (net) CutWorth.requireSolvable(ticks);
    }

    /**
     * The least stock cost.
     *
     * @throws IllegalArgumentException when the job is off any grid that the solver can manage, see {@link Ticks}
     */
    public static Optimum stock(Job job) {
        return new CpSatOptimum(job, false).optimum();
    }

    /**
     * The least net cost: stock less salvage and with labor. Defects that matter are beyond it, and where salvage is worth
     * anything, taper and a crook that takes more than the edge loss are.
     *
     * @throws IllegalArgumentException when the job has those, or is off any grid that the solver can manage
     */
    public static Optimum net(Job job) {
        return new CpSatOptimum(job, true).optimum();
    }

    private Optimum optimum() {
        Loader.loadNativeLibraries();
        Attempt whole = new Attempt(true);
        if (whole.minimize(whole.cost)) return whole.answer(true);
        Attempt some = new Attempt(false);
        some.require(some.maximize(some.feet));
        LinearExpr most = some.feet.whole();
        some.cut.model.addGreaterOrEqual(most, some.solver.value(most));
        some.require(some.minimize(some.cost));
        return some.answer(false);
    }

    /** One model, to make all parts or as many as can be. */
    private final class Attempt {
        final CutModel cut;
        final Optional<CutPositions> positions;
        final ExactSum cost = new ExactSum();
        final ExactSum feet = new ExactSum(); // board feet of finished parts
        CpSolver solver = new CpSolver();

        Attempt(boolean all) {
            cut = new CutModel(ticks, all);
            boolean spotted =
                    ticks.boards.stream().anyMatch(board -> !board.defects().isEmpty());
            positions = spotted ? Optional.of(new CutPositions(cut)) : Optional.empty();
            for (int b = 0; b < cut.used.length; b++)
                cost.add(
                        cut.used[b],
                        new LayoutCost(ticks.job, List.of(new Layout(b, List.of())))
                                .stock()
                                .value());
            for (int i = 0; i < cut.made.length; i++)
                feet.add(
                        cut.made[i], ticks.part(ticks.blanks.get(i)).boardFeet().value());
            if (net) new CutWorth(cut).addTo(cost);
        }

        boolean minimize(ExactSum sum) {
            cut.model.minimize(sum.whole());
            return solve();
        }

        boolean maximize(ExactSum sum) {
            cut.model.maximize(sum.whole());
            return solve();
        }

        /** Whether there is an optimum; false when there is nothing at all. */
        private boolean solve() {
            solver = new CpSolver();
            solver.getParameters().setNumWorkers(1).setRandomSeed(1).setMaxDeterministicTime(MOST_WORK);
            CpSolverStatus status = solver.solve(cut.model);
            if (status != CpSolverStatus.OPTIMAL && status != CpSolverStatus.INFEASIBLE)
                throw new IllegalStateException("The solver gave up: " + status);
            return status == CpSolverStatus.OPTIMAL;
        }

        void require(boolean solved) {
            if (!solved) throw new IllegalStateException("Making nothing is no solution?");
        }

        Optimum answer(boolean complete) {
            BigFraction made = BigFraction.ZERO;
            for (int i = 0; i < cut.made.length; i++)
                if (solver.booleanValue(cut.made[i]))
                    made = made.add(ticks.part(ticks.blanks.get(i)).boardFeet().value());
            return new Optimum(
                    complete,
                    new Money(cost.value(solver)),
                    new BoardFeet(made),
                    new CutReading(cut, positions, solver).layouts());
        }
    }
}
