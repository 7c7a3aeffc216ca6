package ripwright.internal.model;

import java.util.Arrays;
import java.util.List;
import ripwright.internal.geometry.Layout;
import ripwright.measure.OnePlace;

/**
 * Reckons what a layout costs for itself, as CONTRACT.md 4 has it, but in doubles: the search compares with it,
 * and what is printed is reckoned again exactly. Of defects that overlap one another both areas are taken off.
 */
public final class LayoutPrice {
    private final JobNumbers numbers;
    private final BoardNumbers board;
    private final Layout layout;
    private double salvage; // millionths
    private int rips;
    private int crosscuts;

    private LayoutPrice(JobNumbers numbers, Layout layout) {
        this.numbers = numbers;
        this.layout = layout;
        board = numbers.boards[layout.board()];
        if (board.ripped) trims(layout.sections().get(0));
        else fullWidthPieces();
        for (Layout.Section section : layout.sections()) section(section);
    }

    public static PricedLayout of(JobNumbers numbers, Layout layout) {
        LayoutPrice price = new LayoutPrice(numbers, layout);
        double labor = price.rips * numbers.ripCost + price.crosscuts * numbers.crosscutCost;
        int[] made = layout.sections().stream()
                .flatMap(section -> section.strips().stream())
                .flatMap(strip -> strip.blanks().stream())
                .mapToInt(Layout.Blank::part)
                .sorted()
                .toArray();
        long[] widths = price.board.ripped
                ? new long[0]
                : layout.sections().stream()
                        .flatMap(section -> section.strips().stream())
                        .mapToLong(Layout.Strip::width)
                        .distinct()
                        .toArray();
        long feet = Arrays.stream(made).mapToLong(numbers::feet).sum();
        return new PricedLayout(
                layout,
                made,
                widths,
                price.board.cost,
                Math.round(price.salvage),
                Math.round(labor),
                feet,
                TestWoodFinder.of(numbers, layout));
    }

    private void trims(Layout.Section section) {
        if (!OnePlace.are(section.from(), 0)) crosscuts++;
        if (!OnePlace.are(section.to(), board.length)) crosscuts++;
    }

    private void fullWidthPieces() {
        List<Layout.Section> sections = layout.sections();
        long kerf = numbers.crosscutKerf;
        long first = sections.get(0).from();
        long last = sections.get(sections.size() - 1).to();
        fullWidth(0, first - kerf);
        if (!OnePlace.are(first, 0)) crosscuts++;
        for (int i = 1; i < sections.size(); i++) {
            long end = sections.get(i - 1).to();
            long start = sections.get(i).from();
            fullWidth(end + kerf, start - kerf);
            crosscuts += OnePlace.are(start, end + kerf) ? 1 : 2;
        }
        fullWidth(last + kerf, board.length);
        if (!OnePlace.are(last, board.length)) crosscuts++;
    }

    private void fullWidth(long from, long to) {
        if (to <= from) return;
        long start = clearFrom(from, to);
        long end = clearTo(start, to);
        if (end - start < numbers.keepLength) return;
        if (Math.min(board.widthAt(from), board.widthAt(to)) < numbers.keepWidth) return;
        double mean = (board.widthAt(start) + board.widthAt(end)) / 2.0;
        double area = (end - start) * mean - blockedArea(start, end, 0, Long.MAX_VALUE);
        salvage += area * board.salvageRate;
    }

    /** Raw end trim is no part of a leftover's worth. */
    private long clearFrom(long from, long to) {
        return from == 0 ? Math.min(board.from, to) : from;
    }

    private long clearTo(long start, long to) {
        return to == board.length
                ? Math.max(board.length - board.stock.endTrim().far().nanometers(), start)
                : to;
    }

    private void section(Layout.Section section) {
        boolean left = section.referenceEdge() == ripwright.stock.Edge.LEFT;
        if (board.mustStraighten(left) || !OnePlace.are(section.edgeLoss(), 0)) rips++;
        long y = section.edgeLoss();
        long width = board.sectionWidth(section.from(), section.to());
        for (Layout.Strip strip : section.strips()) {
            if (!board.ripped) rips++;
            long near = left ? y : width - y - strip.width();
            strip(section, strip, near);
            y += strip.width() + numbers.ripKerf;
        }
        if (!board.ripped) beside(section, left, y, width);
    }

    /** The piece beside the last strip, whose kerf is taken already at {@code y}. */
    private void beside(Layout.Section section, boolean left, long y, long width) {
        long rest = width - y;
        long start = clearFrom(section.from(), section.to());
        long end = clearTo(start, section.to());
        long length = end - start;
        if (rest < numbers.keepWidth || length < numbers.keepLength) return;
        double mean = (board.widthAt(start) + board.widthAt(end)) / 2.0;
        double area = (mean - width + rest) * length
                - blockedArea(start, end, left ? y : 0, left ? Long.MAX_VALUE : width - y);
        salvage += area * board.milledSalvageRate;
    }

    private void strip(Layout.Section section, Layout.Strip strip, long near) {
        long kerf = numbers.crosscutKerf;
        long end = section.from();
        boolean cut = false; // whether what lies before is a cut end
        for (Layout.Blank blank : strip.blanks()) {
            long gap = blank.from() - end;
            if (gap > 0) piece(strip, near, end + (cut ? kerf : 0), blank.from() - kerf);
            if (cut) crosscuts += OnePlace.are(gap, kerf) ? 1 : 2;
            else if (!OnePlace.are(gap, 0)) crosscuts++;
            end = blank.from() + numbers.parts[blank.part()].length;
            cut = true;
        }
        if (end < section.to()) {
            if (cut && !OnePlace.are(end, section.to())) crosscuts++;
            piece(strip, near, end + (cut ? kerf : 0), section.to());
        }
    }

    private void piece(Layout.Strip strip, long near, long start, long stop) {
        long from = clearFrom(start, stop);
        long to = clearTo(from, stop);
        if (to - from < numbers.keepLength || strip.width() < numbers.keepWidth) return;
        double area = (double) (to - from) * strip.width() - blockedArea(from, to, near, near + strip.width());
        salvage += area * board.milledSalvageRate;
    }

    private double blockedArea(long from, long to, long near, long far) {
        double area = 0;
        for (long[] defect : board.defects) {
            if (defect[4] == 0) continue;
            long length = Math.min(to, defect[1]) - Math.max(from, defect[0]);
            long width = Math.min(far, defect[3]) - Math.max(near, defect[2]);
            if (length > 0 && width > 0) area += (double) length * width;
        }
        return area;
    }
}
