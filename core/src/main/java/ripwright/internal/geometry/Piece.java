package ripwright.internal.geometry;

import java.util.OptionalLong;
import ripwright.measure.Length;
import ripwright.stock.Board;
import ripwright.stock.EndTrim;

/**
 * Where a piece lies in the board it is cut from: in nanometers, in the board's raw frame.
 *
 * @param board the board
 * @param from where it starts along the grain
 * @param to where it ends along the grain
 * @param left where it starts across
 * @param right where it ends across; empty when it reaches to the board's own right edge, which may be tapered
 * @param leftStraight whether its left edge is straight
 * @param rightStraight whether its right edge is straight
 * @param milled whether it has been milled to the board's finished thickness
 * @param nearSquare whether its near end is sawn square
 * @param farSquare whether its far end is
 */
public record Piece(
        Board board,
        long from,
        long to,
        long left,
        OptionalLong right,
        boolean leftStraight,
        boolean rightStraight,
        boolean milled,
        boolean nearSquare,
        boolean farSquare) {
    /** Refuses a piece without length. */
    public Piece {
        if (to <= from) throw new IllegalArgumentException("The piece ends at " + to + " nm, not beyond " + from + ".");
    }

    /** A piece of which no end is square but those that are the board's own and square. */
    public Piece(
            Board board,
            long from,
            long to,
            long left,
            OptionalLong right,
            boolean leftStraight,
            boolean rightStraight,
            boolean milled) {
        this(
                board,
                from,
                to,
                left,
                right,
                leftStraight,
                rightStraight,
                milled,
                from == 0 && board.squareEnds() >= 1,
                to == board.length().nanometers() && board.squareEnds() == 2);
    }

    /** A length of {@code board} over its full width, not milled. */
    public static Piece across(Board board, long from, long to) {
        boolean left = board.straightEdges() >= 1;
        boolean right = board.straightEdges() == 2;
        return new Piece(board, from, to, 0, OptionalLong.empty(), left, right, !board.rough());
    }

    /** The part of it that lies between two places along the grain, as wide as it is. */
    public Piece span(long start, long end) {
        return new Piece(
                board,
                start,
                end,
                left,
                right,
                leftStraight,
                rightStraight,
                milled,
                start == from && nearSquare,
                end == to && farSquare);
    }

    /** The same with those ends sawn square too. */
    Piece squared(boolean near, boolean far) {
        return new Piece(
                board,
                from,
                to,
                left,
                right,
                leftStraight,
                rightStraight,
                milled,
                nearSquare || near,
                farSquare || far);
    }

    /** How many of its ends are square as the rack counts them, turned where only the far one is; needs two straight edges. */
    int squareEnds() {
        if (!leftStraight || !rightStraight) return 0;
        return (nearSquare ? 1 : 0) + (farSquare ? 1 : 0);
    }

    /** How long it is along the grain. */
    public long length() {
        return to - from;
    }

    /** Its width at a place along the board's grain, rounded down. */
    public long widthAt(long x) {
        return right.orElseGet(() -> board.widthAt(new Length(x)).nanometers()) - left;
    }

    /** Its width at its narrow end. */
    public long narrowWidth() {
        return Math.min(widthAt(from), widthAt(to));
    }

    /** Whether it can ride a fence as it is. */
    public boolean hasStraightEdge() {
        return leftStraight || rightStraight;
    }

    /** The raw end trim it still carries. */
    public EndTrim endTrim() {
        boolean farEnd = to == board.length().nanometers();
        return new EndTrim(
                from == 0 ? board.endTrim().near() : Length.ZERO,
                farEnd ? board.endTrim().far() : Length.ZERO);
    }

    /** Its length without raw end trim; not above zero when the trim takes it all. */
    public long clearLength() {
        return length() - endTrim().near().nanometers() - endTrim().far().nanometers();
    }

    /** What it measures now. */
    Length thickness() {
        return milled ? board.millsTo() : board.thickness();
    }
}
