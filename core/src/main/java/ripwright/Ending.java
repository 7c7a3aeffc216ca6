package ripwright;

/** Why a search ended where it did. */
public enum Ending {
    /** Nothing is left to find: the plan is proven cheapest. */
    PROVEN,
    /** The time the job gives was over. */
    TIME_OVER,
    /** It had found nothing better for a while. */
    NOTHING_BETTER,
    /** It was cancelled, its thread was interrupted, or it had made as many recuts as it was to make. */
    STOPPED
}
