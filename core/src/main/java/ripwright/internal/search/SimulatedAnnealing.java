package ripwright.internal.search;

import java.util.List;
import java.util.SplittableRandom;
import org.optaplanner.core.api.score.stream.ConstraintStreamImplType;
import org.optaplanner.core.api.solver.Solver;
import org.optaplanner.core.api.solver.SolverFactory;
import org.optaplanner.core.config.heuristic.selector.move.factory.MoveIteratorFactoryConfig;
import org.optaplanner.core.config.localsearch.LocalSearchPhaseConfig;
import org.optaplanner.core.config.localsearch.decider.acceptor.LocalSearchAcceptorConfig;
import org.optaplanner.core.config.localsearch.decider.forager.LocalSearchForagerConfig;
import org.optaplanner.core.config.score.director.ScoreDirectorFactoryConfig;
import org.optaplanner.core.config.solver.EnvironmentMode;
import org.optaplanner.core.config.solver.SolverConfig;
import org.optaplanner.core.config.solver.monitoring.MonitoringConfig;
import org.optaplanner.core.config.solver.termination.TerminationConfig;
import ripwright.internal.model.JobNumbers;

/**
 * One round of the search: OptaPlanner anneals over recuts for a fixed number of moves.
 *
 * @see "S. Kirkpatrick, C. D. Gelatt, M. P. Vecchi, Optimization by simulated annealing, Science 220 (1983) 671-680"
 */
public final class SimulatedAnnealing {
    /** Starting temperatures of successive rounds, as shares of a mean board's price. */
    static final double[] HEATS = {0.005, 0.02, 0.01};

    private static final double SHARE = 0.6; // of a board's cost; 0.4 to 0.8 do as well, 1 gets lost

    private final RecreateTables tables;
    private final JobNumbers numbers;
    private final double heat;
    private final double share;
    private final long moves;
    private final SolverWatch watch;
    private final EnvironmentMode mode;
    private final String moveThreads;

    /**
     * @param heat the temperature to start at, as a share of a mean board's price
     * @param moves how many recuts to try
     */
    SimulatedAnnealing(RecreateTables tables, double heat, long moves, SolverWatch watch) {
        this(tables, heat, 0, moves, watch, EnvironmentMode.REPRODUCIBLE, SolverConfig.MOVE_THREAD_COUNT_NONE);
    }

    private SimulatedAnnealing(
            RecreateTables tables,
            double heat,
            double share,
            long moves,
            SolverWatch watch,
            EnvironmentMode mode,
            String moveThreads) {
        this.tables = tables;
        this.heat = heat;
        this.share = share;
        this.moves = moves;
        this.watch = watch;
        this.mode = mode;
        this.moveThreads = moveThreads;
        numbers = tables.numbers();
    }

    /** The same, checking itself as it goes, on that many move threads. */
    SimulatedAnnealing checked(EnvironmentMode mode, String moveThreads) {
        return new SimulatedAnnealing(tables, heat, share, moves, watch, mode, moveThreads);
    }

    /** The same, with waste gathered on few boards. */
    SimulatedAnnealing wasteGathered() {
        return new SimulatedAnnealing(tables, heat, SHARE, moves, watch, mode, moveThreads);
    }

    Incumbent from(Incumbent start, long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        BlankRewards rewards = rewards(start, random);
        Solver<CuttingSolution> solver = solver(random.nextLong());
        CuttingSolution best =
                watch.solve(solver, new CuttingSolution(tables, rewards.gathering(share), start.layouts()));
        Incumbent found = Incumbent.of(numbers, best.layouts());
        if (found.blanks() == totalWanted()) return found;
        Incumbent completed = new GreedyHeuristic(tables, watch::stopped).completed(best.layouts(), random);
        return completed.betterThan(found) ? completed : found;
    }

    /** While something is short, what counts most is the finished wood that is made. */
    private BlankRewards rewards(Incumbent start, SplittableRandom random) {
        int step = random.nextInt(4);
        boolean complete = start.blanks() == totalWanted();
        return complete || random.nextInt(3) == 0
                ? BlankRewards.byPrice(numbers, 1.15 + 0.15 * step)
                : BlankRewards.byFeet(numbers, 2 << step);
    }

    private int totalWanted() {
        int total = 0;
        for (int count : numbers.wanted()) total += count;
        return total;
    }

    private Solver<CuttingSolution> solver(long seed) {
        SolverConfig config = new SolverConfig()
                .withSolutionClass(CuttingSolution.class)
                .withEntityClasses(BoardCut.class)
                .withScoreDirectorFactory(new ScoreDirectorFactoryConfig()
                        .withConstraintProviderClass(CutConstraints.class)
                        .withConstraintStreamImplType(ConstraintStreamImplType.BAVET))
                .withEnvironmentMode(mode)
                .withMoveThreadCount(moveThreads)
                .withRandomSeed(seed)
                .withMonitoringConfig(new MonitoringConfig().withSolverMetricList(List.of()))
                .withPhases(new LocalSearchPhaseConfig()
                        .withMoveSelectorConfig(
                                new MoveIteratorFactoryConfig().withMoveIteratorFactoryClass(RuinRecreateMoves.class))
                        .withAcceptorConfig(new LocalSearchAcceptorConfig()
                                .withSimulatedAnnealingStartingTemperature("1hard/" + startingTemperature() + "soft"))
                        .withForagerConfig(new LocalSearchForagerConfig().withAcceptedCountLimit(1))
                        .withTerminationConfig(new TerminationConfig().withScoreCalculationCountLimit(moves)));
        return SolverFactory.<CuttingSolution>create(config).buildSolver();
    }

    private long startingTemperature() {
        double sum = 0;
        for (int b = 0; b < numbers.boards(); b++) sum += numbers.cost(b);
        return Math.max(1, Math.round(heat * sum / numbers.boards()));
    }
}
