package ripwright.solve;

import java.util.List;
import java.util.SplittableRandom;
import java.util.concurrent.Future;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import java.util.function.BooleanSupplier;
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
import ripwright.pattern.JobNumbers;

/**
 * One round of the search: OptaPlanner anneals over recuts for a fixed number of moves.
 *
 * @see "S. Kirkpatrick, C. D. Gelatt, M. P. Vecchi, Optimization by simulated annealing, Science 220 (1983) 671-680"
 */
final class Anneal {
    /** Starting temperatures of successive rounds, as shares of a mean board's price. */
    static final double[] HEATS = {0.02, 0.01, 0.03, 0.005};

    private final Workbench workbench;
    private final JobNumbers numbers;
    private final double heat;
    private final BooleanSupplier stop;
    private final ScheduledExecutorService watch; // looks whether to stop while the round runs

    Anneal(Workbench workbench, double heat, BooleanSupplier stop, ScheduledExecutorService watch) {
        this.workbench = workbench;
        this.heat = heat;
        this.stop = stop;
        this.watch = watch;
        numbers = workbench.numbers();
    }

    Champion from(Champion start, long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        double factor = 1.15 + 0.15 * random.nextInt(4);
        Tariff tariff = new Tariff(numbers, factor);
        Solver<Cutting> solver = solver(random.nextLong());
        Future<?> watching = watch.scheduleWithFixedDelay(
                () -> {
                    if (stop.getAsBoolean()) solver.terminateEarly();
                },
                0,
                10,
                TimeUnit.MILLISECONDS);
        Cutting best = solver.solve(new Cutting(workbench, tariff, start.layouts()));
        watching.cancel(false);
        Champion found = Champion.of(numbers, best.layouts());
        if (found.blanks() == totalWanted()) return found;
        Champion completed = new Greedy(workbench, stop).completed(best.layouts(), best.missing(), random);
        return completed.betterThan(found) ? completed : found;
    }

    private int totalWanted() {
        int total = 0;
        for (int count : numbers.wanted()) total += count;
        return total;
    }

    private Solver<Cutting> solver(long seed) {
        SolverConfig config = new SolverConfig()
                .withSolutionClass(Cutting.class)
                .withEntityClasses(BoardCut.class)
                .withScoreDirectorFactory(new ScoreDirectorFactoryConfig()
                        .withConstraintProviderClass(CutConstraints.class)
                        .withConstraintStreamImplType(ConstraintStreamImplType.BAVET))
                .withEnvironmentMode(EnvironmentMode.REPRODUCIBLE)
                .withRandomSeed(seed)
                .withMonitoringConfig(new MonitoringConfig().withSolverMetricList(List.of()))
                .withPhases(new LocalSearchPhaseConfig()
                        .withMoveSelectorConfig(
                                new MoveIteratorFactoryConfig().withMoveIteratorFactoryClass(RecutMoves.class))
                        .withAcceptorConfig(new LocalSearchAcceptorConfig()
                                .withSimulatedAnnealingStartingTemperature("1hard/" + startingTemperature() + "soft"))
                        .withForagerConfig(new LocalSearchForagerConfig().withAcceptedCountLimit(1))
                        .withTerminationConfig(new TerminationConfig().withScoreCalculationCountLimit(moves())));
        return SolverFactory.<Cutting>create(config).buildSolver();
    }

    private long startingTemperature() {
        double sum = 0;
        for (int b = 0; b < numbers.boards(); b++) sum += numbers.cost(b);
        return Math.max(1, Math.round(heat * sum / numbers.boards()));
    }

    private long moves() {
        return 10_000 + 100L * totalWanted();
    }
}
