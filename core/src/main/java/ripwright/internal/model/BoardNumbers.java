package ripwright.internal.model;

import java.math.BigInteger;
import java.math.RoundingMode;
import ripwright.internal.geometry.BoardEdges;
import ripwright.internal.geometry.SectionEnds;
import ripwright.job.Job;
import ripwright.measure.Length;
import ripwright.stock.Board;
import ripwright.stock.Defect;
import ripwright.stock.Edge;

/** A board in bare numbers, and the geometry of its sections. */
public final class BoardNumbers {
    public final int index;
    public final Board stock;
    public final long length;
    public final long from; // the near end trim
    public final long to; // where the far end trim begins, or what is withheld; may lie before from
    public final long
            begin; // where a section may begin at the earliest: at from, or at the end when sections are left long
    public final long end; // and end at the latest
    public final long widthNear;
    public final long widthFar;
    public final boolean ripped;
    public final boolean leftStraight;
    public final boolean rightStraight;
    public final long edgeLoss;
    public final long crook;
    private final BoardEdges edges;
    private final SectionEnds ends;
    public final long[][] defects; // {from, to, left, right, 1 when it blocks all parts else 0}
    final boolean rough;
    final int thickness; // which of the job's it mills to, in rising order; beyond the 63rd they are not told apart
    final long cost; // millionths
    public final double salvageRate; // millionths for a square nanometer of offcut as thick as the raw board
    public final double milledSalvageRate; // of offcut that is milled

    /**
     * @param thickness which of the job's it mills to
     * @param restriction nanometers before the far end trim that no section reaches into
     */
    BoardNumbers(int index, Board board, Job job, int thickness, long restriction) {
        this.index = index;
        stock = board;
        length = board.length().nanometers();
        from = board.endTrim().near().nanometers();
        to = length - board.endTrim().far().nanometers() - restriction;
        ends = new SectionEnds(board, job, restriction);
        begin = ends.begin();
        end = ends.end();
        widthNear = board.width().nanometers();
        widthFar = board.widthAtFarEnd().nanometers();
        ripped = board.ripped();
        edges = new BoardEdges(board);
        leftStraight = edges.straight(Edge.LEFT);
        rightStraight = edges.straight(Edge.RIGHT);
        edgeLoss = board.edgeLoss().nanometers();
        crook = board.crook().nanometers();
        defects = board.defects().stream().map(BoardNumbers::numbers).toArray(long[][]::new);
        rough = board.rough();
        this.thickness = Math.min(63, thickness);
        cost = JobNumbers.millionths(job.cost(board).value().bigDecimalValue(6, RoundingMode.HALF_UP));
        salvageRate = rate(job, board, board.thickness());
        milledSalvageRate = rate(job, board, board.millsTo());
    }

    private static double rate(Job job, Board board, Length thickness) {
        if (board.testOnly()) return 0;
        double inch = 25_400_000.0;
        double counted = Math.max(1.0, thickness.nanometers() / inch);
        double price = job.price(board).doubleValue() * job.salvage().doubleValue() * JobNumbers.MONEY;
        return price * counted / 144 / inch / inch;
    }

    private static long[] numbers(Defect defect) {
        return new long[] {
            defect.from().nanometers(),
            defect.to().nanometers(),
            defect.left().nanometers(),
            defect.right().nanometers(),
            defect.blocks() == Defect.Blocks.ALL ? 1 : 0
        };
    }

    public boolean tapered() {
        return widthNear != widthFar;
    }

    /** The board's width {@code x} along the grain, rounded down. */
    long widthAt(long x) {
        if (widthNear == widthFar) return widthNear;
        return widthNear + mulDivDown(widthFar - widthNear, x, length);
    }

    /** The width of a section: that of its narrower end. */
    public long sectionWidth(long start, long end) {
        return Math.min(widthAt(start), widthAt(end));
    }

    /** What straightening takes from the reference edge of a section of that length, at least. */
    public long referenceLoss(boolean left, long sectionLength) {
        if (left ? leftStraight : rightStraight) return 0;
        return edges.straighteningLoss(sectionLength);
    }

    /** What is given up at the edge away from the fence. */
    public long otherLoss(boolean left) {
        return (left ? rightStraight : leftStraight) ? 0 : edgeLoss;
    }

    /** Whether a section has to be straightened even when nothing more is given up. */
    public boolean mustStraighten(boolean left) {
        return !(left ? leftStraight : rightStraight);
    }

    /** Where the first blank of a section may begin that begins there. */
    public long spanFrom(long from) {
        return ends.spanFrom(from);
    }

    /** Where the last blank of a section may end that ends there. */
    public long spanTo(long to) {
        return ends.spanTo(to);
    }

    /** Where a section may begin whose first blank begins there: as late as its end may be cut. */
    public long sectionFrom(long span) {
        return ends.sectionFrom(span);
    }

    /** Where a section may end whose last blank ends there: as early as its end may be cut. */
    public long sectionTo(long span) {
        return ends.sectionTo(span);
    }

    /** The last place up to there at which a section may begin. */
    public long beginUpTo(long place) {
        return ends.beginUpTo(place);
    }

    /** The first place from there on at which a section may end. */
    public long endFrom(long place) {
        return ends.endFrom(place);
    }

    /** The last place up to there at which a section may end. */
    public long endUpTo(long place) {
        return ends.endUpTo(place);
    }

    /** The room for blanks in a board that is cut into one section. */
    public long span() {
        return spanTo(end) - spanFrom(begin);
    }

    /** The width left for strips and the kerfs between them. */
    public long usableWidth(boolean left, long start, long end) {
        return sectionWidth(start, end) - referenceLoss(left, end - start) - otherLoss(left);
    }

    private static long mulDivDown(long a, long b, long divisor) {
        long high = Math.multiplyHigh(a, b);
        long low = a * b;
        if ((high == 0 && low >= 0) || (high == -1 && low < 0)) return Math.floorDiv(low, divisor);
        BigInteger[] quotient =
                BigInteger.valueOf(a).multiply(BigInteger.valueOf(b)).divideAndRemainder(BigInteger.valueOf(divisor));
        return quotient[0].longValueExact() - (quotient[1].signum() < 0 ? 1 : 0);
    }
}
