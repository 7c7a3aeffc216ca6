package ripwright.internal.pricing;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import ripwright.bill.Part;
import ripwright.job.Job;
import ripwright.job.Keep;
import ripwright.measure.Length;
import ripwright.saw.Labor;
import ripwright.saw.Saw;
import ripwright.stock.Board;
import ripwright.testing.JobBuilder;

/**
 * A clear straight board a few whole inches long and wide, an inch thick, at 1 a square inch; blanks with prices; and the
 * worth of its best layout by trying them all, blank by blank and cut by cut. The slow twin of {@link PricingProblem}.
 */
public record InchBoard(
        int length,
        int width,
        int near,
        int far,
        int edgeLoss,
        int ripKerf,
        int crosscutKerf,
        int keepLength,
        int keepWidth,
        double salvage,
        double rip,
        double crosscut,
        int shortest,
        int longest,
        List<Blank> blanks) {
    /** A blank and what one is worth. */
    record Blank(int length, int width, double price) {}

    static InchBoard random(SplittableRandom random, int size) {
        int length = 1 + random.nextInt(Math.min(9, size));
        int width = 1 + random.nextInt(Math.min(7, size));
        List<Blank> blanks = new ArrayList<>();
        for (int i = random.nextInt(4); i >= 0; i--) {
            int l = 1 + random.nextInt(5);
            int w = 1 + random.nextInt(4);
            if (blanks.stream().noneMatch(other -> other.length == l && other.width == w))
                blanks.add(new Blank(l, w, random.nextInt(8 * (1 + l * w)) / 8.0));
        }
        int near = random.nextInt(2);
        int far = random.nextInt(2);
        boolean money = random.nextBoolean();
        boolean limited = random.nextInt(4) == 0;
        int shortest = limited ? 1 + random.nextInt(4) : 1;
        return new InchBoard(
                length + near + far,
                width,
                near,
                far,
                random.nextInt(3) / 2,
                random.nextInt(2),
                random.nextInt(2),
                1 + random.nextInt(4),
                1 + random.nextInt(3),
                money ? random.nextInt(5) / 4.0 : 0,
                money ? random.nextInt(4) / 4.0 : 0,
                money ? random.nextInt(4) / 4.0 : 0,
                shortest,
                limited ? shortest + random.nextInt(4) : 100,
                blanks);
    }

    Job job(int count) {
        List<Part> parts = new ArrayList<>();
        for (Blank blank : blanks)
            parts.add(Part.of("part " + parts.size(), in(blank.length), in(blank.width), in(1))
                    .count(count)
                    .build());
        Board board = Board.measured("board", JobBuilder.MAPLE, in(1), in(width), in(length))
                .endTrim(in(near), in(far))
                .edges(edgeLoss > 0 ? 0 : 2, in(edgeLoss), Length.ZERO)
                .build();
        Saw saw = new Saw(
                in(ripKerf),
                in(crosscutKerf),
                Optional.of(in(longest)),
                Optional.of(in(shortest)),
                Optional.empty(),
                Optional.empty());
        Labor labor = new Labor(
                BigDecimal.valueOf(60), BigDecimal.ZERO, BigDecimal.valueOf(rip), BigDecimal.valueOf(crosscut));
        return new JobBuilder("inches")
                .saw(saw)
                .offcuts(new Keep(in(keepLength), in(keepWidth)), BigDecimal.valueOf(salvage))
                .price(JobBuilder.MAPLE, BigDecimal.valueOf(144))
                .labor(labor)
                .stack(List.of(board))
                .parts(parts)
                .build();
    }

    private static Length in(int inches) {
        return Length.inches(Integer.toString(inches));
    }

    /** The worth of the best layout with one section at least; below all numbers where there can be none. */
    double best() {
        double best = Double.NEGATIVE_INFINITY;
        for (int from = near; from < length - far; from++) {
            double before = from > 0 ? fullWidth(0, from - crosscutKerf) - crosscut : 0;
            best = Math.max(best, before + sections(1, from));
        }
        return best;
    }

    /** The best of a section that starts at {@code from}, the {@code count}-th, and of all behind it. */
    private double sections(int count, int from) {
        double best = Double.NEGATIVE_INFINITY;
        for (int to = from + shortest; to <= Math.min(length - far, from + longest); to++)
            best = Math.max(best, section(to - from) + behind(count, to));
        return best;
    }

    private double behind(int count, int to) {
        if (to == length) return 0;
        int next = to + crosscutKerf;
        double best = fullWidth(next, length);
        for (int from = next; count < 3 && from < length - far; from++) {
            double gap = from > next ? fullWidth(next, from - crosscutKerf) - crosscut : 0;
            best = Math.max(best, gap + sections(count + 1, from));
        }
        return best - crosscut;
    }

    private double fullWidth(int from, int to) {
        int counted = Math.min(to, length - far) - Math.max(from, near);
        return counted < keepLength || width < keepWidth ? 0 : counted * width * salvage;
    }

    private double section(int s) {
        double best = Double.NEGATIVE_INFINITY;
        for (Blank blank : blanks) best = Math.max(best, strips(s, edgeLoss, blank.width));
        return best - (edgeLoss > 0 ? rip : 0);
    }

    /** The best of a strip {@code w} wide at {@code offset} and of all beside it, none wider. */
    private double strips(int s, int offset, int w) {
        if (offset + w > width - edgeLoss) return Double.NEGATIVE_INFINITY;
        int next = offset + w + ripKerf;
        int beside = width - next;
        double best = s < keepLength || beside < keepWidth ? 0 : beside * s * salvage;
        for (Blank blank : blanks) if (blank.width <= w) best = Math.max(best, strips(s, next, blank.width));
        return best + strip(s, w) - rip;
    }

    private double strip(int s, int w) {
        double best = piece(s, w);
        for (int from = 0; from < s; from++) {
            double before = from > 0 ? piece(from - crosscutKerf, w) - crosscut : 0;
            best = Math.max(best, before + blanks(s, w, from));
        }
        return best;
    }

    /** The best of a blank that starts at {@code from} and of all behind it. */
    private double blanks(int s, int w, int from) {
        double best = Double.NEGATIVE_INFINITY;
        for (Blank blank : blanks)
            if (blank.width == w && from + blank.length <= s)
                best = Math.max(best, blank.price + behind(s, w, from + blank.length));
        return best;
    }

    private double behind(int s, int w, int to) {
        if (to == s) return 0;
        int next = to + crosscutKerf;
        double best = piece(s - next, w);
        for (int from = next; from < s; from++) {
            double gap = from > next ? piece(from - crosscutKerf - next, w) - crosscut : 0;
            best = Math.max(best, gap + blanks(s, w, from));
        }
        return best - crosscut;
    }

    private double piece(int l, int w) {
        return l < keepLength || w < keepWidth ? 0 : l * w * salvage;
    }

    /** The worth of the best layout of one section at least that has no more than {@code count} of any blank. */
    double best(int count) {
        return new Counted(this, count).best();
    }

    /** The same with a saw that rips nothing much shorter than the whole board. */
    InchBoard ofOneSection() {
        int room = length - near - far;
        return new InchBoard(
                length,
                width,
                near,
                far,
                edgeLoss,
                ripKerf,
                crosscutKerf,
                keepLength,
                keepWidth,
                salvage,
                rip,
                crosscut,
                room / 2 + 1,
                100,
                blanks);
    }
}
