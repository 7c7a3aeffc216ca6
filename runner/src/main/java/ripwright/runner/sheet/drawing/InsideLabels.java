package ripwright.runner.sheet.drawing;

import ripwright.runner.sheet.place.BoardMap;
import ripwright.stock.Defect;

/**
 * Letters what lies on a board, where there is room: first the numbers of the cuts, then the strips, then the pieces. What
 * finds no room, and every defect, is called out below the board.
 */
final class InsideLabels {
    private final BoardMap map;
    private final Frame frame;
    private final Paper paper;
    private final Callouts callouts;

    InsideLabels(BoardMap map, Frame frame, Paper paper, Callouts callouts) {
        this.map = map;
        this.frame = frame;
        this.paper = paper;
        this.callouts = callouts;
    }

    void draw() {
        map.board().defects().forEach(defect -> paper.keepClear(frame.box(defect)));
        new CutNumbers(map, frame, paper, callouts).draw();
        new StripLabels(map, frame, paper, callouts).draw();
        new PieceLabels(map, frame, paper, callouts).draw();
        map.board().defects().forEach(this::defect);
    }

    private void defect(Defect defect) {
        Box box = frame.box(defect);
        String kind = Lettering.LABEL.fitted(Isolated.name(defect.kind()), Callouts.LONGEST);
        callouts.name(new Spot(box.center(), box.middle()), kind);
    }
}
