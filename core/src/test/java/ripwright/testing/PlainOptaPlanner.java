package ripwright.testing;

import java.time.Duration;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.optaplanner.core.api.score.stream.ConstraintStreamImplType;
import org.optaplanner.core.api.solver.SolverFactory;
import org.optaplanner.core.config.constructionheuristic.ConstructionHeuristicPhaseConfig;
import org.optaplanner.core.config.constructionheuristic.ConstructionHeuristicType;
import org.optaplanner.core.config.localsearch.LocalSearchPhaseConfig;
import org.optaplanner.core.config.localsearch.LocalSearchType;
import org.optaplanner.core.config.score.director.ScoreDirectorFactoryConfig;
import org.optaplanner.core.config.solver.EnvironmentMode;
import org.optaplanner.core.config.solver.SolverConfig;
import org.optaplanner.core.config.solver.monitoring.MonitoringConfig;
import org.optaplanner.core.config.solver.termination.TerminationConfig;
import ripwright.internal.geometry.Layout;
import ripwright.job.Job;

/**
 * Plans as one would use OptaPlanner without a thought to cutting: one planning variable for every copy of every part, the
 * board it comes from; first fit, then late acceptance with the stock moves, change and swap. Each board's copies are cut
 * by a simple rule. The score is the net cost (each board's rip settings by themselves), and for a blank
 * that is not made more than any board, or first fit would make none.
 */
public final class PlainOptaPlanner {
    private PlainOptaPlanner() {}

    /** The layouts found within that time. Parts that did not fit are left out. */
    public static List<Layout> plan(Job job, Duration time, long seed) {
        return plan(job, new TerminationConfig().withSpentLimit(time), seed);
    }

    /** The layouts found with that many plans looked at: same job, number and seed, same layouts. */
    public static List<Layout> plan(Job job, long looks, long seed) {
        return plan(job, new TerminationConfig().withScoreCalculationCountLimit(looks), seed);
    }

    private static List<Layout> plan(Job job, TerminationConfig end, long seed) {
        SolverConfig config = new SolverConfig()
                .withSolutionClass(PlainPlan.class)
                .withEntityClasses(PlainCopy.class)
                .withScoreDirectorFactory(new ScoreDirectorFactoryConfig()
                        .withConstraintProviderClass(PlainConstraints.class)
                        .withConstraintStreamImplType(ConstraintStreamImplType.BAVET))
                .withEnvironmentMode(EnvironmentMode.REPRODUCIBLE)
                .withMoveThreadCount(SolverConfig.MOVE_THREAD_COUNT_NONE)
                .withRandomSeed(seed)
                .withMonitoringConfig(new MonitoringConfig().withSolverMetricList(List.of()))
                .withTerminationConfig(end)
                .withPhases(
                        new ConstructionHeuristicPhaseConfig()
                                .withConstructionHeuristicType(ConstructionHeuristicType.FIRST_FIT),
                        new LocalSearchPhaseConfig().withLocalSearchType(LocalSearchType.LATE_ACCEPTANCE));
        PlainBench bench = new PlainBench(job);
        PlainPlan best = SolverFactory.<PlainPlan>create(config).buildSolver().solve(new PlainPlan(bench));
        return layouts(best, bench);
    }

    /** What the boards make; of a group that comes from several boards only what the first of them makes. */
    private static List<Layout> layouts(PlainPlan plan, PlainBench bench) {
        Map<Integer, List<PlainCopy>> given = new TreeMap<>();
        Map<String, Integer> homes = new HashMap<>();
        for (PlainCopy copy : plan.copies()) {
            Integer board = copy.getBoard();
            if (board == null) continue;
            if (!copy.group().isEmpty()
                    && !homes.computeIfAbsent(copy.group(), any -> board).equals(board)) continue;
            given.computeIfAbsent(board, any -> new ArrayList<>()).add(copy);
        }
        List<Layout> layouts = new ArrayList<>();
        given.forEach((board, copies) -> bench.cut(board, copies).layout().ifPresent(layouts::add));
        return layouts;
    }
}
