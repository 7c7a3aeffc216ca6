package ripwright.internal.model;

/**
 * A piece that test blanks can be cut from one end of, one after another.
 *
 * @param thickness which of the job's thicknesses it mills to
 * @param source what is taken first: 0 of the rack, 1 of waste, 2 of fresh wood
 * @param freedBy the width of the rips that free it, in nanometers; {@link Long#MAX_VALUE} when it is there from the start
 * @param widths {@code widths[n]}: how wide the blank after n others is, once straight
 * @param losses {@code losses[n]}: what cutting n + 1 of them loses all together, in millionths
 */
@SuppressWarnings("ArrayRecordComponent") // never changed once made, never compared
public record TestWoodPiece(int thickness, int source, long freedBy, long[] widths, double[] losses) {
    static final int RACK = 0;
    static final int WASTE = 1;
    static final int FRESH = 2;

    /** Whether one more blank than {@code taken} others is there in time to be ripped to {@code width}. */
    boolean proves(long width, long ripKerf, int taken) {
        return freedBy > width && taken < widths.length && widths[taken] >= width + ripKerf;
    }
}
