package ripwright;

/** Is told how far a search has come. What it throws breaks no plan. */
@FunctionalInterface
public interface ProgressListener {
    /** A better answer was found; called from any thread, one call at a time. */
    void progress(Progress progress);
}
