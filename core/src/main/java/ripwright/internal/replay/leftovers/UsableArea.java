package ripwright.internal.replay.leftovers;

import java.math.BigInteger;
import java.util.Comparator;
import java.util.List;
import java.util.TreeSet;
import org.apache.commons.numbers.fraction.BigFraction;
import ripwright.stock.Defect;

/**
 * How much of a leftover's face counts when it is priced: without raw end trim, and without what defects that block all
 * cover. Exact, also where defects overlap each other or stick out over a tapered edge: the face is cut in slabs
 * between the ends of defects, and in each the covered stretches across are joined and integrated.
 */
public final class UsableArea {
    private static final BigFraction HALF = BigFraction.of(1, 2);

    private final ReplayLeftover leftover;
    private final long start; // along the grain, from the leftover's near end: behind its raw trim
    private final long end;
    private final List<ReplayLeftover.Patch> covering;

    public UsableArea(ReplayLeftover leftover) {
        this.leftover = leftover;
        this.start = Math.min(leftover.rawNear(), leftover.length());
        this.end = Math.max(start, leftover.length() - leftover.rawFar());
        this.covering = leftover.patches().stream()
                .filter(patch -> patch.defect().blocks() == Defect.Blocks.ALL)
                .toList();
    }

    /** In square nanometers, where the raw ends of a tapered leftover are as wide as they are. */
    public BigFraction trueToShape() {
        BigFraction mean = widthAt(start).add(widthAt(end)).multiply(HALF);
        return mean.multiply(end - start).subtract(covered());
    }

    /** In square nanometers, where the mean of both widths stands for a tapered leftover. */
    public BigFraction byMeanWidth() {
        BigFraction mean = BigFraction.of(leftover.near() + leftover.far(), 2L);
        return mean.multiply(end - start).subtract(covered());
    }

    private BigFraction widthAt(long x) {
        BigFraction rise = BigFraction.of(BigInteger.valueOf(leftover.far() - leftover.near()))
                .multiply(BigFraction.of(BigInteger.valueOf(x), BigInteger.valueOf(leftover.length())));
        return rise.add(leftover.near());
    }

    private BigFraction covered() {
        TreeSet<Long> ends = new TreeSet<>(List.of(start, end));
        for (ReplayLeftover.Patch patch : covering) {
            ends.add(Math.max(start, Math.min(end, patch.from())));
            ends.add(Math.max(start, Math.min(end, patch.to())));
        }
        BigFraction covered = BigFraction.ZERO;
        long from = start;
        for (long to : ends) {
            covered = covered.add(coveredBetween(from, to));
            from = to;
        }
        return covered;
    }

    private BigFraction coveredBetween(long from, long to) {
        List<ReplayLeftover.Patch> there = covering.stream()
                .filter(patch -> patch.from() <= from && patch.to() >= to)
                .sorted(Comparator.comparingLong(ReplayLeftover.Patch::left))
                .toList();
        BigFraction covered = BigFraction.ZERO;
        long reach = 0; // how far across the slab is done
        for (ReplayLeftover.Patch patch : there) {
            long left = Math.max(reach, patch.left());
            if (patch.right() <= left) continue;
            covered = covered.add(stretch(from, to, left, patch.right()));
            reach = patch.right();
        }
        return covered;
    }

    /** The area from {@code left} to {@code right} across, as far as the leftover is so wide. */
    private BigFraction stretch(long from, long to, long left, long right) {
        BigFraction nearHeight = widthAt(from).subtract(left);
        BigFraction farHeight = widthAt(to).subtract(left);
        long most = right - left;
        if (nearHeight.equals(farHeight)) return clamped(nearHeight, most).multiply(to - from);
        // The mean of the clamped height over a height that rises in a straight line.
        return integral(farHeight, most)
                .subtract(integral(nearHeight, most))
                .divide(farHeight.subtract(nearHeight))
                .multiply(to - from);
    }

    private static BigFraction clamped(BigFraction height, long most) {
        if (height.signum() <= 0) return BigFraction.ZERO;
        return height.compareTo(BigFraction.of(most)) < 0 ? height : BigFraction.of(most);
    }

    /** Of the clamped height, from 0 to {@code height}. */
    private static BigFraction integral(BigFraction height, long most) {
        BigFraction rising = clamped(height, most);
        BigFraction flat = clamped(height.subtract(most), Long.MAX_VALUE);
        return rising.pow(2).multiply(HALF).add(flat.multiply(most));
    }
}
