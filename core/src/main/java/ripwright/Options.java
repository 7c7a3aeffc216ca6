package ripwright;

import java.util.function.BooleanSupplier;

/**
 * How to plan, beyond what the job says. Immutable, so that one may serve many plannings on many threads; the listener and
 * the cancellation it holds must then be safe on them too. More may come: begin with {@link #defaults} and alter that.
 */
public final class Options {
    private static final Options DEFAULTS = new Options(progress -> {}, () -> false, 0);

    private final ProgressListener listener;
    private final BooleanSupplier cancellation;
    private final long mostRecuts;

    private Options(ProgressListener listener, BooleanSupplier cancellation, long mostRecuts) {
        this.listener = listener;
        this.cancellation = cancellation;
        this.mostRecuts = mostRecuts;
    }

    /** Nobody listens, nobody cancels, the job's limits end the search. */
    public static Options defaults() {
        return DEFAULTS;
    }

    /** With that listener, told how far the search has come, on the thread that plans, which waits for it. */
    public Options withListener(ProgressListener listener) {
        return new Options(listener, cancellation, mostRecuts);
    }

    /**
     * With that cancellation: asked often, from any thread of the planning, several at once; true ends it with the best plan
     * so far. It must be quick, stay true once it was, and throw nothing: that would end the planning without a plan.
     */
    public Options withCancellation(BooleanSupplier cancellation) {
        return new Options(listener, cancellation, mostRecuts);
    }

    /**
     * With an end after that many recuts (boards cut again) on each thread, so that the same plan comes out whatever the
     * clock, as long as the job's seconds are not over first; 0 for no such end.
     *
     * @throws IllegalArgumentException when it is negative
     */
    public Options withMostRecuts(long mostRecuts) {
        if (mostRecuts < 0)
            throw new IllegalArgumentException("mostRecuts is " + mostRecuts + "; it cannot be negative.");
        return new Options(listener, cancellation, mostRecuts);
    }

    /** Who is told how far the search has come. */
    public ProgressListener listener() {
        return listener;
    }

    /** What is asked whether to end. */
    public BooleanSupplier cancellation() {
        return cancellation;
    }

    /** After how many recuts on each thread to end; 0: no such end. */
    public long mostRecuts() {
        return mostRecuts;
    }
}
