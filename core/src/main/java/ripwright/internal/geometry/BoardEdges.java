package ripwright.internal.geometry;

import java.math.BigInteger;
import ripwright.stock.Board;
import ripwright.stock.Edge;

/**
 * What is straight about a board, and what its crook comes to over a part of its length.
 *
 * @param board the board
 */
public record BoardEdges(Board board) {
    public boolean straight(Edge edge) {
        return board.straightEdges() == 2 || (board.straightEdges() == 1 && edge == Edge.LEFT);
    }

    /**
     * How far the edges that are not straight bow out over {@code length} nanometers of the board: depth goes with the
     * square of length. Rounded up to the nanometer.
     *
     * @see "The height of a flat arc over its chord goes with the chord's square; common geometry."
     */
    public long crookOver(long length) {
        if (board.crook().nanometers() == 0) return 0;
        BigInteger whole = BigInteger.valueOf(board.length().nanometers()).pow(2);
        BigInteger share = BigInteger.valueOf(length)
                .pow(2)
                .multiply(BigInteger.valueOf(board.crook().nanometers()));
        return share.add(whole).subtract(BigInteger.ONE).divide(whole).longValueExact();
    }

    /** What straightening takes, at least, from an edge {@code length} nanometers long that is not straight. */
    public long straighteningLoss(long length) {
        return Math.max(board.edgeLoss().nanometers(), crookOver(length));
    }
}
