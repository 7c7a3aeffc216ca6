package ripwright.resume;

import ripwright.sequence.Piece;

/**
 * A piece in hand as it is now.
 *
 * @param id what it is called from now on
 * @param planned what the steps done made of it
 * @param wood where what is left of it lay in its board
 * @param good whether it is what the plan wanted it to be
 * @param usable whether anything of it can be used
 */
public record Now(String id, Held planned, Piece wood, boolean good, boolean usable) {
    /** Whether it is a blank that serves its part. */
    public boolean made() {
        return planned.kind() == Held.Kind.BLANK && good;
    }

    /** Whether it is there to be cut. */
    public boolean inHand() {
        return usable && !made();
    }

    /** The id of the board it was cut from, in the job that was begun. */
    public String board() {
        return wood.board().id();
    }

    Now as(Piece other) {
        return new Now(id, planned, other, false, usable);
    }

    Now spoiled(boolean wholly) {
        return new Now(id, planned, wood, false, !wholly);
    }
}
