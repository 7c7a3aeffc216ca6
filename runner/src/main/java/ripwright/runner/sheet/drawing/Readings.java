package ripwright.runner.sheet.drawing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalInt;
import ripwright.measure.Length;
import ripwright.measure.Unit;
import ripwright.runner.sheet.drawing.Line.Pen;
import ripwright.runner.sheet.drawing.Words.Anchor;
import ripwright.runner.sheet.place.BoardMap;
import ripwright.runner.sheet.place.SawCut;
import ripwright.runner.sheet.place.SawCut.Way;

/**
 * The cuts across the whole board, told above it: each with its reading on a tape hooked over the marked end, and the number
 * of its step.
 */
final class Readings {
    private static final long TEXT_ROW = 1_050;
    private static final long GAP = 500;

    private final BoardMap map;
    private final Unit units;
    private final Frame frame; // only across the paper; where the board's top will be is decided here

    Readings(BoardMap map, Unit units, Frame frame) {
        this.map = map;
        this.units = units;
        this.frame = frame;
    }

    /** Draws them below {@code top} and says where the board's upper edge goes. */
    long draw(Paper paper, long top) {
        List<Words> readings = readings(top);
        long rows = readings.stream().mapToLong(Words::y).max().orElse(top);
        long middle = rows + 250 + Balloon.HEIGHT / 2;
        long board = middle + Balloon.HEIGHT / 2 + 500;
        readings.forEach(paper::words);
        for (SawCut cut : cuts()) {
            long x = (frame.x(cut.kerf().from()) + frame.x(cut.kerf().to())) / 2;
            paper.line(Pen.THIN, new Spot(x, middle), new Spot(x, board));
        }
        balloons(paper, middle);
        return board;
    }

    private List<SawCut> cuts() {
        return map.cuts().stream()
                .filter(cut -> cut.way() == Way.ACROSS_BOARD)
                .sorted(Comparator.comparingLong(cut -> cut.kerf().from()))
                .toList();
    }

    /** Cuts of one step so close together that their numbers would touch share one. */
    private void balloons(Paper paper, long middle) {
        OptionalInt last = OptionalInt.empty();
        long free = Long.MIN_VALUE;
        for (SawCut cut : cuts()) {
            if (cut.step().isEmpty()) continue;
            int step = cut.step().getAsInt();
            long x = (frame.x(cut.kerf().from()) + frame.x(cut.kerf().to())) / 2;
            long half = new Balloon(step, 0, 0).width() / 2;
            if (cut.step().equals(last) && x - half < free) continue;
            long middleX = Math.max(x, free == Long.MIN_VALUE ? x : free + half);
            paper.balloon(new Balloon(step, middleX, middle));
            last = cut.step();
            free = middleX + half + 150;
        }
    }

    private List<Words> readings(long top) {
        List<Words> placed = new ArrayList<>();
        long end = map.board().length().nanometers();
        place(placed, 0, top, Anchor.START);
        place(placed, end, top, Anchor.END);
        for (SawCut cut : cuts()) place(placed, reading(cut), top, Anchor.MIDDLE);
        return placed;
    }

    /** The mark a section starts or ends at: the side of the kerf that stays. */
    private long reading(SawCut cut) {
        boolean startsSection = map.sections().stream()
                .anyMatch(section -> section.region().from() == cut.kerf().to());
        boolean endsSection = map.sections().stream()
                .anyMatch(section -> section.region().to() == cut.kerf().from());
        return startsSection && !endsSection ? cut.kerf().to() : cut.kerf().from();
    }

    private void place(List<Words> placed, long nanometers, long top, Anchor anchor) {
        String text = units.nearest(new Length(nanometers));
        for (int row = 0; row < 4; row++) {
            Words trial =
                    new Words(Lettering.LABEL, anchor, frame.x(nanometers), top + (row + 1) * TEXT_ROW - 150, text);
            Box box = trial.box();
            Box wide = new Box(box.left() - GAP, box.top(), box.right() + GAP, box.bottom());
            if (placed.stream().map(Words::box).noneMatch(wide::overlaps)) {
                placed.add(trial);
                return;
            }
        }
    }
}
