package ripwright.resume;

import ripwright.bill.Part;
import ripwright.internal.geometry.Piece;
import ripwright.measure.Length;
import ripwright.stock.Board;

/** A piece in hand as it is now. Two are equal when they say the same. */
public final class SizeNow {
    private record Facts(String id, HeldPiece planned, Piece wood, boolean good, boolean usable) {}

    private final Facts facts;

    /**
     * @param id what it is called from now on
     * @param planned what the steps done made of it
     * @param wood where what is left of it lay in its board
     * @param good whether it is what the plan wanted it to be
     * @param usable whether anything of it can be used
     */
    SizeNow(String id, HeldPiece planned, Piece wood, boolean good, boolean usable) {
        facts = new Facts(id, planned, wood, good, usable);
    }

    /** What it is called from now on. */
    public String id() {
        return facts.id;
    }

    /** What the steps done made of it. */
    public HeldPiece planned() {
        return facts.planned;
    }

    /** Where what is left of it lay in its board. */
    Piece wood() {
        return facts.wood;
    }

    /** Whether it is what the plan wanted it to be. */
    public boolean good() {
        return facts.good;
    }

    /** Whether anything of it can be used. */
    public boolean usable() {
        return facts.usable;
    }

    /** Whether it is a blank that serves its part. */
    public boolean made() {
        return planned().kind() == HeldPiece.Kind.BLANK && good();
    }

    /** Whether it is there to be cut: usable, and no blank that serves its part. */
    public boolean inHand() {
        return usable() && !made();
    }

    /** Whether it is large enough for that part, of its wood, and cut at all; {@code over} is cut off at ends not square. */
    boolean gives(Part part, Length over) {
        Piece wood = wood();
        if (wood.board().testOnly()) return false;
        Board board = wood.board();
        return part.thickness().equals(board.millsTo())
                && part.takes(board.species())
                && part.blankLength().nanometers() <= clear(over.nanometers())
                && part.blankWidth().nanometers() <= Math.max(wood.widthAt(wood.from()), wood.widthAt(wood.to()));
    }

    private long clear(long over) {
        Piece wood = wood();
        boolean straight = wood.leftStraight() && wood.rightStraight();
        long near = Math.max(wood.endTrim().near().nanometers(), straight && wood.nearSquare() ? 0 : over);
        long far = Math.max(wood.endTrim().far().nanometers(), straight && wood.farSquare() ? 0 : over);
        return wood.length() - near - far;
    }

    /** How many of its ends are square as a board's are counted: one with two straight edges. */
    int squareEnds() {
        Piece wood = wood();
        if (!wood.leftStraight() || !wood.rightStraight()) return 0;
        return (wood.nearSquare() ? 1 : 0) + (wood.farSquare() ? 1 : 0);
    }

    /** Whether it is turned end for end as a board, so that its one straight edge is the left, its one square end the marked. */
    boolean turned() {
        boolean onlyRight = wood().rightStraight() && !wood().leftStraight();
        return onlyRight || (squareEnds() == 1 && wood().farSquare());
    }

    /** The id of the board it was cut from, in the job that was begun. */
    public String board() {
        return wood().board().id();
    }

    SizeNow as(Piece other) {
        return new SizeNow(id(), planned(), other, false, usable());
    }

    SizeNow spoiled(boolean wholly) {
        return new SizeNow(id(), planned(), wood(), false, !wholly);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof SizeNow now && now.facts.equals(facts);
    }

    @Override
    public int hashCode() {
        return facts.hashCode();
    }

    @Override
    public String toString() {
        return facts.id + ", " + facts.planned;
    }
}
