package ripwright.resume;

import ripwright.bill.Part;
import ripwright.sequence.Piece;
import ripwright.stock.Board;

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

    /** Whether it is large enough for one of those parts, and of its wood. */
    boolean gives(Part part) {
        Board board = wood.board();
        return part.thickness().equals(board.millsTo())
                && part.takes(board.species())
                && part.blankLength().nanometers() <= wood.clearLength()
                && part.blankWidth().nanometers() <= Math.max(wood.widthAt(wood.from()), wood.widthAt(wood.to()));
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
