package ripwright.runner.sheet.drawing;

import ripwright.measure.Length;
import ripwright.measure.Unit;
import ripwright.runner.sheet.place.BoardMap;
import ripwright.stock.Defect;

/**
 * Letters what lies on a board, where there is room: first the numbers of the cuts, then the strips, then the pieces. What
 * finds no room, and every defect, is called out below the board.
 */
final class InsideLabels {
    private final BoardMap map;
    private final Unit units;
    private final Frame frame;
    private final Paper paper;
    private final Callouts callouts;

    InsideLabels(BoardMap map, Unit units, Frame frame, Paper paper, Callouts callouts) {
        this.map = map;
        this.units = units;
        this.frame = frame;
        this.paper = paper;
        this.callouts = callouts;
    }

    void draw() {
        map.board().defects().forEach(defect -> paper.keepClear(frame.box(defect)));
        new CutNumbers(map, frame, paper, callouts).draw();
        new StripLabels(map, units, frame, paper, callouts).draw();
        new PieceLabels(map, frame, paper, callouts).draw();
        map.board().defects().forEach(this::defect);
    }

    private String read(Length length) {
        return units.nearest(length);
    }

    /** What it is, and where from the marked end and from the left edge: by that the marked end can be checked. */
    private void defect(Defect defect) {
        Box box = frame.box(defect);
        String kind = Isolated.name(defect.kind()) + " " + read(defect.from()) + " to " + read(defect.to()) + ", "
                + read(defect.left()) + " to " + read(defect.right()) + " across";
        callouts.name(new Spot(box.center(), box.middle()), Lettering.LABEL.fitted(kind, Callouts.LONGEST));
    }
}
