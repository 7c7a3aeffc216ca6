package ripwright.runner.sheet.drawing;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import ripwright.plan.Blank;
import ripwright.runner.sheet.drawing.Words.Anchor;
import ripwright.runner.sheet.place.BoardMap;
import ripwright.runner.sheet.place.Piece;
import ripwright.runner.sheet.place.Piece.Fate;

/** Names the pieces in their middles: clear of defects where that can be, else over them, else called out. */
final class PieceLabels {
    private static final long TWO_LINES = 2_150;
    private static final long MARGIN = 140;

    private final BoardMap map;
    private final Frame frame;
    private final Paper paper;
    private final Callouts callouts;
    private final Map<String, String> parts; // blank id -> part name

    PieceLabels(BoardMap map, Frame frame, Paper paper, Callouts callouts) {
        this.map = map;
        this.frame = frame;
        this.paper = paper;
        this.callouts = callouts;
        this.parts = map.strips().stream()
                .flatMap(strip -> strip.strip().blanks().stream())
                .collect(Collectors.toMap(Blank::id, Blank::part, (a, b) -> a, TreeMap::new));
    }

    void draw() {
        map.pieces().stream().filter(piece -> piece.fate() != Fate.WASTE).forEach(this::piece);
    }

    private void piece(Piece piece) {
        Box box = frame.box(piece.region());
        boolean thin = StripLabels.thin(box);
        if (thin && piece.fate() == Fate.BLANK) return; // its strip's callout names it
        String id = Isolated.name(piece.id());
        String name = Isolated.name(parts.getOrDefault(piece.id(), ""));
        String label = name.isEmpty() ? id : id + " " + name;
        if (!thin && box.height() >= TWO_LINES && !name.isEmpty() && twoLines(box, id, name)) return;
        if (!thin && (oneLine(room(box, true), id, label) || oneLine(room(box, false), id, label))) return;
        callouts.name(new Spot(box.center(), box.middle()), Lettering.LABEL.fitted(label, Callouts.LONGEST));
    }

    private boolean oneLine(Box room, String id, String label) {
        String fitted = fitted(id, label, room.width());
        if (fitted.isEmpty()) return false;
        long baseline = room.middle() + Lettering.LABEL.rise() / 2;
        paper.words(new Words(Lettering.LABEL, Anchor.MIDDLE, room.center(), baseline, fitted));
        return true;
    }

    /** The whole label; else its beginning, if some of the name is left; else the id; else nothing. */
    private static String fitted(String id, String label, long room) {
        if (Lettering.LABEL.width(id) > room) return "";
        String fitted = Lettering.LABEL.fitted(label, room);
        return fitted.length() > id.length() + 3 ? fitted : id;
    }

    private boolean twoLines(Box box, String id, String name) {
        Box above = new Box(box.left(), box.middle() - 1_050, box.right(), box.middle());
        Box below = new Box(box.left(), box.middle(), box.right(), box.middle() + 1_050);
        Box first = room(above, true);
        Box second = room(below, true);
        String fitted = Lettering.LABEL.fitted(name, second.width());
        if (fitted.isEmpty() || Lettering.ID.width(id) > first.width()) return false;
        paper.words(new Words(Lettering.ID, Anchor.MIDDLE, first.center(), box.middle() - 130, id));
        paper.words(new Words(Lettering.LABEL, Anchor.MIDDLE, second.center(), box.middle() + 830, fitted));
        return true;
    }

    /** The longest stretch of one line, in the middle of a piece, that nothing is lettered in; perhaps clear of defects. */
    private Box room(Box piece, boolean clearOfDefects) {
        Box band = new Box(piece.left() + MARGIN, piece.middle() - 420, piece.right() - MARGIN, piece.middle() + 420);
        Box best = new Box(band.left(), band.top(), band.left(), band.bottom());
        long start = band.left();
        List<Box> taken = clearOfDefects ? paper.keptClearIn(band) : paper.takenIn(band);
        for (Box box : taken) {
            if (box.left() - start > best.width()) best = new Box(start, band.top(), box.left(), band.bottom());
            start = Math.max(start, box.right());
        }
        return band.right() - start > best.width() ? new Box(start, band.top(), band.right(), band.bottom()) : best;
    }
}
