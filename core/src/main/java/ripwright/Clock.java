package ripwright;

import java.math.BigDecimal;
import java.time.Duration;
import java.util.function.BooleanSupplier;
import ripwright.internal.search.Workers;
import ripwright.job.Job;

/** The time one planning may take, from its first moment on, and whether it was cancelled or its thread interrupted. */
final class Clock {
    private static final double SHARE_FOR_WRITING = 0.03; // of the time given, for sequence and replay
    private static final double LEAST_SECONDS_FOR_WRITING = 0.1;

    private final BooleanSupplier cancelled;
    private final Workers workers;
    private final long begun = System.nanoTime();
    private final double seconds;
    private volatile boolean over;

    Clock(Job job, Options options, Workers workers) {
        cancelled = options.cancellation();
        this.workers = workers;
        double given = job.limits().seconds().map(BigDecimal::doubleValue).orElse(Double.POSITIVE_INFINITY);
        seconds = given - Math.max(LEAST_SECONDS_FOR_WRITING, SHARE_FOR_WRITING * given);
    }

    /** Seconds for all but sequence and replay; infinite when the job names no limit. */
    double seconds() {
        return seconds;
    }

    boolean limited() {
        return seconds < Double.POSITIVE_INFINITY;
    }

    double elapsed() {
        return (System.nanoTime() - begun) / 1e9;
    }

    Duration duration() {
        return Duration.ofNanos(System.nanoTime() - begun);
    }

    /** True once that second is over, or all time, or when stopped; whoever asks makes room for work that waits. */
    BooleanSupplier until(double second) {
        double end = Math.min(second, seconds);
        return () -> {
            workers.makeRoom();
            return over || elapsed() >= end || stopped();
        };
    }

    /** Whether it was cancelled, or its thread interrupted. */
    boolean stopped() {
        return workers.interrupted() || cancelled.getAsBoolean();
    }

    /** The plan is there: whatever still computes is to end. */
    void end() {
        over = true;
    }
}
