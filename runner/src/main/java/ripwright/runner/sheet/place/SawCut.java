package ripwright.runner.sheet.place;

import java.util.OptionalInt;

/**
 * The wood one cut turns to dust.
 *
 * @param way how the cut runs
 * @param step the number of the step that makes it; empty when the plan names none
 * @param kerf where it runs; narrower than the saw's kerf where less wood was left
 */
public record SawCut(Way way, OptionalInt step, Region kerf) {
    /** How a cut runs. */
    public enum Way {
        /** Across the whole board, at break-down. */
        ACROSS_BOARD,
        /** Across a strip, or across the wood beside the last one. */
        ACROSS_STRIP,
        /** Along the grain, between strips. */
        RIP,
        /** Along the grain, to get a straight reference edge. */
        STRAIGHTEN
    }
}
