package ripwright;

import java.util.function.BooleanSupplier;

/**
 * How to plan, beyond what the job says.
 *
 * @param listener is told how far the search has come
 * @param cancellation asked often, from any thread; true ends the search with the best plan so far
 * @param mostRounds after how many rounds to end, so that the same plan comes out whatever the clock; 0: no such end
 */
public record Options(ProgressListener listener, BooleanSupplier cancellation, int mostRounds) {
    /** Refuses a negative number of rounds. */
    public Options {
        if (mostRounds < 0)
            throw new IllegalArgumentException("mostRounds is " + mostRounds + "; it cannot be negative.");
    }

    /** Nobody listens, nobody cancels, the job's limits end the search. */
    public static Options defaults() {
        return new Options(progress -> {}, () -> false, 0);
    }

    /** With that listener. */
    public Options withListener(ProgressListener listener) {
        return new Options(listener, cancellation, mostRounds);
    }

    /** With that cancellation. */
    public Options withCancellation(BooleanSupplier cancellation) {
        return new Options(listener, cancellation, mostRounds);
    }

    /** With an end after that many rounds. */
    public Options withMostRounds(int mostRounds) {
        return new Options(listener, cancellation, mostRounds);
    }
}
