package ripwright.internal.replay;

import java.math.BigInteger;
import ripwright.measure.Length;
import ripwright.stock.Board;
import ripwright.stock.Edge;

/**
 * A board as the rules measure it, in nanometers in its own frame: x along the grain from the marked end, y from the
 * left edge.
 *
 * @param board the board
 */
public record BoardFrame(Board board) {
    public long length() {
        return board.length().nanometers();
    }

    /** How wide the board is at {@code x}, rounded down; off its ends as wide as at the nearer one. */
    public long widthAt(long x) {
        if (!board.tapered()) return board.width().nanometers();
        long onBoard = Math.max(0, Math.min(x, length()));
        BigInteger rise = BigInteger.valueOf(
                board.widthAtFarEnd().nanometers() - board.width().nanometers());
        BigInteger[] parts =
                rise.multiply(BigInteger.valueOf(onBoard)).divideAndRemainder(BigInteger.valueOf(length()));
        return board.width().nanometers() + parts[0].longValueExact() - (parts[1].signum() < 0 ? 1 : 0);
    }

    /** Where its clear wood begins, behind what the marked end loses. */
    public long clearFrom() {
        return board.endTrim().near().nanometers();
    }

    /** Where its clear wood ends. */
    public long clearTo() {
        return length() - board.endTrim().far().nanometers();
    }

    /** Whether its marked end is sawn square already. */
    public boolean squareNear() {
        return board.squareEnds() >= 1;
    }

    /** Whether its other end is, too. */
    public boolean squareFar() {
        return board.squareEnds() == 2;
    }

    public boolean straight(Edge edge) {
        return board.straightEdges() == 2 || (board.straightEdges() == 1 && edge == Edge.LEFT);
    }

    /** How far an edge that is not straight bows over a piece {@code s} long: crook x (s / length)^2, rounded up. */
    public long crookOver(long s) {
        BigInteger piece = BigInteger.valueOf(Math.max(0, s)).pow(2);
        BigInteger whole = BigInteger.valueOf(length()).pow(2);
        BigInteger[] parts =
                piece.multiply(BigInteger.valueOf(board.crook().nanometers())).divideAndRemainder(whole);
        BigInteger crook = parts[1].signum() == 0 ? parts[0] : parts[0].add(BigInteger.ONE);
        return crook.min(BigInteger.valueOf(Length.LONGEST.nanometers())).longValueExact();
    }

    /** What straightening {@code edge} takes, at least, from a piece {@code s} long. */
    public long straighteningLoss(Edge edge, long s) {
        return straight(edge) ? 0 : Math.max(board.edgeLoss().nanometers(), crookOver(s));
    }

    /** What is unusable along {@code edge} when it stays as it is. */
    public long roughLoss(Edge edge) {
        return straight(edge) ? 0 : board.edgeLoss().nanometers();
    }
}
