package ripwright.internal.geometry;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.TreeSet;
import org.apache.commons.numbers.fraction.BigFraction;
import ripwright.measure.Area;
import ripwright.measure.Length;
import ripwright.stock.Board;
import ripwright.stock.Defect;

/**
 * The area an offcut is worth: without raw end trim and without what defects that block every part cover, overlaps
 * counted once. Exact, tapers too: between two neighboring ends of defects the covered widths do not change but where
 * the slanted edge cuts them off, and that is a trapezoid. Defects squared steps.
 */
public final class ClearArea {
    private final Board offcut;
    private final List<Defect> blocking;
    private final BigFraction near;
    private final BigFraction rise;

    ClearArea(Board offcut) {
        this.offcut = offcut;
        this.blocking = offcut.defects().stream()
                .filter(defect -> defect.blocks() == Defect.Blocks.ALL)
                .sorted(Comparator.comparing(Defect::left))
                .toList();
        long width = offcut.width().nanometers();
        this.near = BigFraction.of(width);
        this.rise = BigFraction.of(
                offcut.widthAtFarEnd().nanometers() - width, offcut.length().nanometers());
    }

    /** The area; none when the end trim takes the whole length. */
    Area area() {
        long from = offcut.endTrim().near().nanometers();
        long to = offcut.length().nanometers() - offcut.endTrim().far().nanometers();
        if (from >= to) return Area.ZERO;
        if (blocking.isEmpty() && !offcut.tapered()) return Area.of(new Length(to - from), offcut.width());
        BigFraction area = under(BigFraction.of(from), BigFraction.of(to));
        Length start = new Length(from);
        Length end = new Length(to);
        TreeSet<Length> ends = new TreeSet<>(List.of(start, end));
        for (Defect defect : blocking) {
            ends.add(defect.from());
            ends.add(defect.to());
        }
        Length last = start;
        for (Length next : ends.subSet(start, false, end, true)) {
            area = area.subtract(covered(last, next));
            last = next;
        }
        return new Area(area);
    }

    /** What defects cover between two places along the grain no defect starts or ends between. */
    private BigFraction covered(Length from, Length to) {
        BigFraction covered = BigFraction.ZERO;
        for (long[] band : bands(from, to))
            covered = covered.add(below(band[1], from, to)).subtract(below(band[0], from, to));
        return covered;
    }

    /** Where defects lie across there, overlaps merged: pairs of left and right. */
    private List<long[]> bands(Length from, Length to) {
        List<long[]> bands = new ArrayList<>();
        for (Defect defect : blocking) {
            if (defect.from().exceeds(from) || to.exceeds(defect.to())) continue;
            long left = defect.left().nanometers();
            long right = defect.right().nanometers();
            long[] last = bands.isEmpty() ? new long[] {0, -1} : bands.get(bands.size() - 1);
            if (left <= last[1]) last[1] = Math.max(last[1], right);
            else bands.add(new long[] {left, right});
        }
        return bands;
    }

    /** The area between the left edge and a line {@code across} it, as far as the piece is wide. */
    private BigFraction below(long across, Length start, Length end) {
        BigFraction from = BigFraction.of(start.nanometers());
        BigFraction to = BigFraction.of(end.nanometers());
        BigFraction line = BigFraction.of(across);
        boolean wideAtFrom = widthAt(from).compareTo(line) >= 0;
        boolean wideAtTo = widthAt(to).compareTo(line) >= 0;
        if (wideAtFrom && wideAtTo) return to.subtract(from).multiply(line);
        if (!wideAtFrom && !wideAtTo) return under(from, to);
        BigFraction crossing = line.subtract(near).divide(rise);
        return wideAtFrom
                ? crossing.subtract(from).multiply(line).add(under(crossing, to))
                : under(from, crossing).add(to.subtract(crossing).multiply(line));
    }

    private BigFraction under(BigFraction from, BigFraction to) {
        return widthAt(from).add(widthAt(to)).multiply(to.subtract(from)).divide(2);
    }

    private BigFraction widthAt(BigFraction x) {
        return rise.multiply(x).add(near);
    }
}
