package ripwright.internal.search;

import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import java.util.function.BooleanSupplier;
import org.optaplanner.core.api.solver.Solver;

/** Looks a hundred times a second whether running rounds are to stop. */
public final class SolverWatch implements AutoCloseable {
    private static final long EVERY_MILLIS = 10;

    private final BooleanSupplier stop;
    private final Workers workers;
    private final ScheduledExecutorService clock = Executors.newSingleThreadScheduledExecutor(work -> {
        Thread thread = new Thread(work, "ripwright-watch");
        thread.setDaemon(true);
        return thread;
    });

    SolverWatch(BooleanSupplier stop, Workers workers) {
        this.stop = stop;
        this.workers = workers;
    }

    boolean stopped() {
        return stop.getAsBoolean();
    }

    /** Lets the solver run to its end, or until it is to stop. */
    CuttingSolution solve(Solver<CuttingSolution> solver, CuttingSolution start) {
        Future<?> looking = clock.scheduleWithFixedDelay(
                () -> {
                    if (stopped()) solver.terminateEarly();
                },
                0,
                EVERY_MILLIS,
                TimeUnit.MILLISECONDS);
        try {
            return solver.solve(start);
        } finally {
            looking.cancel(false);
        }
    }

    @Override
    public void close() {
        workers.end(clock);
    }
}
