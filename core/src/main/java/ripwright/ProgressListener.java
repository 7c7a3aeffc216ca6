package ripwright;

/**
 * Is told how far a search has come, and how it ended, on the thread that plans: the planning waits for it. What it throws
 * breaks no plan and is told to nobody.
 */
@FunctionalInterface
public interface ProgressListener {
    /**
     * An answer was found, mostly one better than before; where a search begins anew, its first may cost as much or more.
     */
    void progress(Progress progress);

    /** The search goes no further, and why; called once, when the plan is there, and not when none comes. */
    default void ended(Ending ending) {}
}
