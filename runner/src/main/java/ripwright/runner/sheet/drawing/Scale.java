package ripwright.runner.sheet.drawing;

import java.util.List;
import ripwright.stock.Board;

/**
 * How much smaller than the wood a drawing is.
 *
 * @param denominator 12 for 1 : 12
 */
public record Scale(long denominator) {
    /** What a board's length may take of a page, in hundredths of a point. */
    static final long LONGEST = 46_500;

    private static final long WIDEST = 34_000;
    private static final long LARGEST = 4; // 1 : 4 is large enough for the shortest offcut

    /** Refuses what is larger than life. */
    public Scale {
        if (denominator < 1) throw new IllegalArgumentException("No scale: 1 : " + denominator + ".");
    }

    /** The largest scale at which each of those boards fits a page of A4 and of Letter. */
    public static Scale fitting(List<Board> boards) {
        long denominator = LARGEST;
        for (Board board : boards) {
            denominator = Math.max(denominator, smallest(board.length().nanometers(), LONGEST));
            denominator = Math.max(
                    denominator,
                    smallest(board.width().max(board.widthAtFarEnd()).nanometers(), WIDEST));
        }
        return new Scale(denominator);
    }

    /** A point is 25 400 000 / 72 nm, so that 31 750 nm are 9 hundredths of one. */
    private static long smallest(long nanometers, long paper) {
        return -Math.floorDiv(-nanometers * 9, paper * 31_750);
    }

    /** A length of wood on paper, to the nearest hundredth of a point. */
    public long paper(long nanometers) {
        long whole = 31_750 * denominator;
        return Math.floorDiv(nanometers * 9 + whole / 2, whole);
    }
}
