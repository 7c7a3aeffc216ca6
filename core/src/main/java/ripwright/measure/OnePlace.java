package ripwright.measure;

/**
 * When two places along a board, or across it, are one: when they lie no more than 0.0005 in apart, which is as closely as a
 * plan is read. Between one place and itself there is nothing to saw off and nothing left over. Whoever counts cuts goes by
 * this, and whoever judges the count.
 */
public final class OnePlace {
    /** How far apart two places may lie that are one, in nanometers: 0.0005 in. */
    public static final long NANOMETERS = 12_700;

    private OnePlace() {}

    /** Whether both are one, each in nanometers from the same end or edge. */
    public static boolean are(long one, long other) {
        return Math.abs(one - other) <= NANOMETERS;
    }
}
