package ripwright;

import java.util.function.BooleanSupplier;

/**
 * How to plan, beyond what the job says.
 *
 * @param listener is told how far the search has come
 * @param cancellation asked often, from any thread; true ends the search with the best plan so far
 * @param mostRecuts after how many recuts on each thread to end, so that the same plan comes out whatever the clock; 0: no
 *     such end
 */
public record Options(ProgressListener listener, BooleanSupplier cancellation, long mostRecuts) {
    /** Refuses a negative number of recuts. */
    public Options {
        if (mostRecuts < 0)
            throw new IllegalArgumentException("mostRecuts is " + mostRecuts + "; it cannot be negative.");
    }

    /** Nobody listens, nobody cancels, the job's limits end the search. */
    public static Options defaults() {
        return new Options(progress -> {}, () -> false, 0);
    }

    /** With that listener. */
    public Options withListener(ProgressListener listener) {
        return new Options(listener, cancellation, mostRecuts);
    }

    /** With that cancellation. */
    public Options withCancellation(BooleanSupplier cancellation) {
        return new Options(listener, cancellation, mostRecuts);
    }

    /** With an end after that many recuts on each thread. */
    public Options withMostRecuts(long mostRecuts) {
        return new Options(listener, cancellation, mostRecuts);
    }
}
