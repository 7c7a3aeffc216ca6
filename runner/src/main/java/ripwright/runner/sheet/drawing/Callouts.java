package ripwright.runner.sheet.drawing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalInt;

/**
 * Labels for what is too small to hold one: each stands in a row below the board, a thin line leading up to what it names.
 * Rows are filled from the right, so that no line crosses a label; what finds no place in the last row is left to the tables.
 */
final class Callouts {
    static final long ROW = 1160;

    /** How long a label may be. */
    static final long LONGEST = 24_000;

    private static final int MOST_ROWS = 9;
    private static final long GAP = 300;

    private final List<Callout> callouts = new ArrayList<>();
    private final List<Placed> placed = new ArrayList<>();

    /**
     * A label to be placed.
     *
     * @param spot what it names
     * @param step a step's number in its balloon; else {@code text}
     * @param text what it says
     */
    private record Callout(Spot spot, OptionalInt step, String text) {
        long width() {
            return step.isPresent() ? new Balloon(step.getAsInt(), 0, 0).width() : Lettering.LABEL.width(text);
        }
    }

    /**
     * A label in its place.
     *
     * @param callout the label
     * @param row counted from 0 at the board
     * @param left where it starts
     */
    private record Placed(Callout callout, int row, long left) {
        long right() {
            return left + callout.width() + GAP;
        }

        boolean covers(long x) {
            return x > left - 40 && x < right();
        }
    }

    void name(Spot spot, String text) {
        callouts.add(new Callout(spot, OptionalInt.empty(), text));
    }

    void number(Spot spot, int step) {
        callouts.add(new Callout(spot, OptionalInt.of(step), ""));
    }

    /** Draws them below {@code top}, at most as far right as {@code right}, and says where the last row ends. */
    long draw(Paper paper, long top, long right) {
        callouts.sort(
                Comparator.comparingLong((Callout callout) -> callout.spot().x())
                        .reversed());
        int left = 0;
        for (Callout callout : callouts) if (!place(callout, right)) left++;
        long bottom = top;
        for (Placed label : placed) {
            draw(paper, label, top);
            bottom = Math.max(bottom, top + (label.row() + 1) * ROW);
        }
        if (left > 0) {
            bottom += ROW;
            String text = left + " more too small to label here; the tables name them.";
            paper.words(new Words(Lettering.LABEL, Words.Anchor.END, right, bottom - 260, text));
        }
        return bottom;
    }

    private boolean place(Callout callout, long right) {
        long x = callout.spot().x();
        long start = Math.min(x + (callout.step().isPresent() ? 0 : 140), right - callout.width());
        for (int row = 0; row < MOST_ROWS; row++) {
            Placed trial = new Placed(callout, row, start);
            if (placed.stream().noneMatch(other -> collide(trial, other))) {
                placed.add(trial);
                return true;
            }
        }
        return false;
    }

    private static boolean collide(Placed a, Placed b) {
        if (a.row() == b.row()) return a.left() < b.right() && b.left() < a.right();
        Placed deeper = a.row() > b.row() ? a : b;
        Placed higher = a.row() > b.row() ? b : a;
        return higher.covers(deeper.callout().spot().x());
    }

    private static void draw(Paper paper, Placed label, long top) {
        Callout callout = label.callout();
        long y = top + label.row() * ROW;
        Spot spot = callout.spot();
        paper.line(Line.Pen.LEADER, spot, new Spot(spot.x(), y + ROW - 300));
        paper.shape(Shape.box(Shape.Look.BLACK, Box.around(spot.x(), spot.y(), 180, 180)));
        callout.step()
                .ifPresentOrElse(
                        step -> paper.balloon(new Balloon(step, label.left() + callout.width() / 2, y + ROW / 2 + 60)),
                        () -> paper.words(new Words(
                                Lettering.LABEL, Words.Anchor.START, label.left(), y + ROW - 260, callout.text())));
    }
}
