package ripwright.testing;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.TreeSet;
import org.apache.commons.numbers.fraction.BigFraction;
import ripwright.job.Keep;
import ripwright.measure.Length;
import ripwright.stock.Board;
import ripwright.stock.Defect;

/**
 * What is left of a board beside its sections, strips and blanks, as it lay in the board. Nanometers, in the board's frame.
 *
 * @param board the board
 * @param from where it starts along the grain, a raw end's trim included
 * @param to where it ends along the grain, a raw end's trim included
 * @param trimNear how much of its start is a raw end's trim
 * @param trimFar how much of its end is a raw end's trim
 * @param left its left side
 * @param right its right side; empty: the board's right edge, which may be slanted
 * @param thickness what it measures
 */
record Piece(
        Board board, long from, long to, long trimNear, long trimFar, long left, OptionalLong right, Length thickness) {

    /** Whether it is worth a place on the rack. */
    boolean offcut(Keep keep) {
        BigFraction narrow = min(width(whole(from)), width(whole(to)));
        return to - from - trimNear - trimFar >= keep.length().nanometers()
                && narrow.compareTo(whole(keep.width().nanometers())) >= 0;
    }

    /** Its square nanometers without raw end trim and without what defects cover that block all. */
    BigFraction countedArea() {
        BigFraction start = whole(from + trimNear);
        BigFraction end = whole(to - trimFar);
        BigFraction area = slab(start, end, whole(left), Optional.empty());
        TreeSet<BigFraction> ends = new TreeSet<>(List.of(start, end));
        for (Defect defect : board.defects()) {
            for (Length x : List.of(defect.from(), defect.to())) {
                BigFraction at = whole(x.nanometers());
                if (at.compareTo(start) > 0 && at.compareTo(end) < 0) ends.add(at);
            }
        }
        List<BigFraction> cuts = new ArrayList<>(ends);
        for (int i = 0; i + 1 < cuts.size(); i++) area = area.subtract(covered(cuts.get(i), cuts.get(i + 1)));
        return area;
    }

    /** What defects cover between two places along the grain between which none of them starts or ends. */
    private BigFraction covered(BigFraction start, BigFraction end) {
        List<Defect> bad = board.defects().stream()
                .filter(defect -> defect.blocks() == Defect.Blocks.ALL)
                .filter(defect -> whole(defect.from().nanometers()).compareTo(start) <= 0
                        && whole(defect.to().nanometers()).compareTo(end) >= 0)
                .sorted(Comparator.comparing(Defect::left))
                .toList();
        BigFraction sum = BigFraction.ZERO;
        long done = left;
        for (Defect defect : bad) {
            long low = Math.max(done, defect.left().nanometers());
            long high = defect.right().nanometers();
            if (high <= low) continue;
            sum = sum.add(slab(start, end, whole(low), Optional.of(whole(high))));
            done = high;
        }
        return sum;
    }

    /** The part of this between two places along the grain and two heights across; no upper height: its own side. */
    private BigFraction slab(BigFraction start, BigFraction end, BigFraction low, Optional<BigFraction> high) {
        TreeSet<BigFraction> bends = new TreeSet<>(List.of(start, end));
        crossing(low).filter(x -> inside(start, x, end)).ifPresent(bends::add);
        high.flatMap(this::crossing).filter(x -> inside(start, x, end)).ifPresent(bends::add);
        BigFraction sum = BigFraction.ZERO;
        BigFraction before = start;
        for (BigFraction x : bends) {
            BigFraction mean =
                    height(before, low, high).add(height(x, low, high)).divide(2);
            sum = sum.add(x.subtract(before).multiply(mean));
            before = x;
        }
        return sum;
    }

    private BigFraction height(BigFraction x, BigFraction low, Optional<BigFraction> high) {
        BigFraction side = side(x);
        BigFraction top = high.isPresent() ? min(high.get(), side) : side;
        return top.compareTo(low) > 0 ? top.subtract(low) : BigFraction.ZERO;
    }

    /** Where a slanted right side crosses a height. */
    private Optional<BigFraction> crossing(BigFraction height) {
        if (right.isPresent() || !board.tapered()) return Optional.empty();
        long rise = board.widthAtFarEnd().nanometers() - board.width().nanometers();
        return Optional.of(height.subtract(whole(board.width().nanometers()))
                .multiply(BigInteger.valueOf(board.length().nanometers()))
                .divide(BigInteger.valueOf(rise)));
    }

    private BigFraction width(BigFraction x) {
        return side(x).subtract(whole(left));
    }

    private BigFraction side(BigFraction x) {
        if (right.isPresent()) return whole(right.getAsLong());
        long rise = board.widthAtFarEnd().nanometers() - board.width().nanometers();
        return x.multiply(BigInteger.valueOf(rise))
                .divide(BigInteger.valueOf(board.length().nanometers()))
                .add(whole(board.width().nanometers()));
    }

    private static boolean inside(BigFraction start, BigFraction x, BigFraction end) {
        return x.compareTo(start) > 0 && x.compareTo(end) < 0;
    }

    private static BigFraction min(BigFraction a, BigFraction b) {
        return a.compareTo(b) <= 0 ? a : b;
    }

    private static BigFraction whole(long number) {
        return BigFraction.of(number);
    }
}
