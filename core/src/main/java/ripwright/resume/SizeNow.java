package ripwright.resume;

import ripwright.bill.Part;
import ripwright.internal.geometry.Piece;
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

    /** Whether it is large enough for one of those parts, and of its wood. */
    boolean gives(Part part) {
        Piece wood = wood();
        Board board = wood.board();
        return part.thickness().equals(board.millsTo())
                && part.takes(board.species())
                && part.blankLength().nanometers() <= wood.clearLength()
                && part.blankWidth().nanometers() <= Math.max(wood.widthAt(wood.from()), wood.widthAt(wood.to()));
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
