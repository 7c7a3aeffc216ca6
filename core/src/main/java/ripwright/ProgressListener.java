package ripwright;

/** Is told how far a search has come, and how it ended. What it throws breaks no plan. */
@FunctionalInterface
public interface ProgressListener {
    /** A better answer was found; called from any thread, one call at a time. */
    void progress(Progress progress);

    /** The search goes no further, and why; called once, when the plan is there. */
    default void ended(Ending ending) {}
}
