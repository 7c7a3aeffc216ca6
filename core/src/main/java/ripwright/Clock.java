package ripwright;

import java.math.BigDecimal;
import java.time.Duration;
import java.util.function.BooleanSupplier;
import ripwright.job.Job;

/** The time one planning may take, from its first moment on, and whether it was cancelled. */
final class Clock {
    private static final double SHARE_FOR_WRITING = 0.03; // of the time given, for sequence and replay
    private static final double LEAST_SECONDS_FOR_WRITING = 0.1;

    private final BooleanSupplier cancelled;
    private final long begun = System.nanoTime();
    private final double seconds;

    Clock(Job job, Options options) {
        cancelled = options.cancellation();
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

    /** True once that second is over, or all time, or when cancelled. */
    BooleanSupplier until(double second) {
        double end = Math.min(second, seconds);
        return () -> cancelled.getAsBoolean() || elapsed() >= end;
    }
}
