package ripwright.runner.sheet.place;

/**
 * What becomes of a patch of a board.
 *
 * @param fate what becomes of it
 * @param id its id in the plan; for waste, which has none, the id of the piece it is left of
 * @param region where it lies
 */
public record Piece(Fate fate, String id, Region region) {
    /** What becomes of wood. */
    public enum Fate {
        /** It becomes a part. */
        BLANK,
        /** It goes back to the rack. */
        OFFCUT,
        /** It proves rip settings. */
        TEST_BLANK,
        /** It is lost. */
        WASTE
    }
}
