package ripwright.internal.replay.leftovers;

import java.util.ArrayList;
import java.util.List;
import ripwright.internal.replay.BoardFrame;
import ripwright.internal.replay.CrosscutLine;
import ripwright.internal.replay.Tolerance;
import ripwright.job.Job;
import ripwright.job.Keep;
import ripwright.measure.Length;
import ripwright.measure.Unit;
import ripwright.stock.Defect;

/**
 * A piece of wood that no part, kerf or loss takes, where it lies on its board; everything in nanometers.
 *
 * @param of the id of the board, section or strip it is what is left of
 * @param frame its board
 * @param along where it lies along the grain
 * @param left its left edge, across
 * @param near how wide it is at its end nearer the board's marked one
 * @param far how wide it is at its other end
 * @param rawNear the end trim that its near end, still raw, asks for
 * @param rawFar the end trim that its far end, still raw, asks for
 * @param squareNear whether its near end is sawn square
 * @param squareFar whether its far end is
 * @param straightLeft whether its left edge is straight
 * @param straightRight whether its right edge is straight
 * @param milled whether it has been milled to the thickness its board says
 */
public record ReplayLeftover(
        String of,
        BoardFrame frame,
        CrosscutLine.Span along,
        long left,
        long near,
        long far,
        long rawNear,
        long rawFar,
        boolean squareNear,
        boolean squareFar,
        boolean straightLeft,
        boolean straightRight,
        boolean milled) {
    /** Whether a leftover goes to the rack. */
    public enum Worth {
        /** It is an offcut. */
        KEPT,
        /**
         * It is as large as the smallest offcut, or smaller by no more than a reader sees, and the decimals of a plan's file
         * do not tell which: listed or not, both are right.
         */
        EITHER,
        /** It is waste. */
        WASTE
    }

    /**
     * A defect on it, in nanometers.
     *
     * @param from where it starts along the grain
     * @param to where it ends along the grain
     * @param left where it starts across
     * @param right where it ends across
     * @param defect the defect it is what is left of
     */
    record Patch(long from, long to, long left, long right, Defect defect) {}

    public long length() {
        return along.length();
    }

    public long narrow() {
        return Math.min(near, far);
    }

    public long thickness() {
        Length thickness = milled ? frame.board().millsTo() : frame.board().thickness();
        return thickness.nanometers();
    }

    /** Where test blanks alone come from, all that is long enough for one is kept, whatever {@code keep} says. */
    Worth worth(Job job) {
        if (!frame.board().testOnly()) return worth(job.keep(), job.units());
        return worth(clearLength() - job.testRip().length().nanometers(), narrow(), job.units());
    }

    private long clearLength() {
        return length() - rawNear - rawFar;
    }

    /** A leftover keep.length long, raw end trim not counted, and keep.width wide at its narrow end is an offcut. */
    public Worth worth(Keep keep, Unit unit) {
        return worth(
                clearLength() - keep.length().nanometers(),
                narrow() - keep.width().nanometers(),
                unit);
    }

    private static Worth worth(long lengthOver, long widthOver, Unit unit) {
        long hidden = Tolerance.ofDistance(unit);
        boolean large = lengthOver >= 0 && widthOver >= 0;
        if (large && (hidden == 0 || Math.min(lengthOver, widthOver) > hidden)) return Worth.KEPT;
        boolean small = Tolerance.less(lengthOver, 0) || Tolerance.less(widthOver, 0);
        return small ? Worth.WASTE : Worth.EITHER;
    }

    /** How wide it is at {@code x} of the board. */
    public long widthAt(long x) {
        return near == far ? near : frame.widthAt(x) - left;
    }

    public int straightEdges() {
        return (straightLeft ? 1 : 0) + (straightRight ? 1 : 0);
    }

    public int squareEnds() {
        return (squareNear ? 1 : 0) + (squareFar ? 1 : 0);
    }

    /** Whether it is turned end for end, so that its one straight edge becomes its left one, its one square end the marked one. */
    public boolean turned() {
        return (straightRight && !straightLeft) || (squareFar && !squareNear);
    }

    /** What its edges that are not straight lose at least. */
    public long edgeLoss() {
        return straightEdges() == 2 ? 0 : frame.board().edgeLoss().nanometers();
    }

    /** How far its edges that are not straight bow. */
    public long crook() {
        return straightEdges() == 2 ? 0 : frame.crookOver(length());
    }

    /** Its part from {@code start} to {@code end} of the board; an end that has moved is neither raw nor square. */
    ReplayLeftover between(long start, long end) {
        return new ReplayLeftover(
                of,
                frame,
                new CrosscutLine.Span(start, end),
                left,
                widthAt(start),
                widthAt(end),
                start == along.from() ? rawNear : 0,
                end == along.to() ? rawFar : 0,
                start == along.from() && squareNear,
                end == along.to() && squareFar,
                straightLeft,
                straightRight,
                milled);
    }

    /** The board's defects on it, measured from its near end and left edge as it lay. */
    List<Patch> patches() {
        List<Patch> patches = new ArrayList<>();
        for (Defect defect : frame.board().defects()) {
            long from = Math.max(defect.from().nanometers(), along.from());
            long to = Math.min(defect.to().nanometers(), along.to());
            if (from >= to) continue;
            long widest = Math.max(widthAt(from), widthAt(to));
            long start = Math.max(defect.left().nanometers() - left, 0);
            long end = Math.min(defect.right().nanometers() - left, widest);
            if (start < end) patches.add(new Patch(from - along.from(), to - along.from(), start, end, defect));
        }
        return patches;
    }

    /** Its defects as the rack will have them: in its own frame, turned with it. */
    List<Patch> ownPatches() {
        if (!turned()) return patches();
        return patches().stream().map(this::turned).toList();
    }

    /** Measured from the right edge, which the left one becomes; of a tapered piece as much as it covers anywhere. */
    private Patch turned(Patch patch) {
        long start = widthAt(along.from() + patch.from());
        long end = widthAt(along.from() + patch.to());
        return new Patch(
                length() - patch.to(),
                length() - patch.from(),
                Math.max(0, Math.min(start, end) - patch.right()),
                Math.max(start, end) - patch.left(),
                patch.defect());
    }
}
