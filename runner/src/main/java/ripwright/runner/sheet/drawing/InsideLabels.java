package ripwright.runner.sheet.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.TreeMap;
import java.util.stream.Collectors;
import ripwright.plan.Blank;
import ripwright.runner.sheet.drawing.Words.Anchor;
import ripwright.runner.sheet.place.BoardMap;
import ripwright.runner.sheet.place.BoardMap.PlacedStrip;
import ripwright.runner.sheet.place.Piece;
import ripwright.runner.sheet.place.Piece.Fate;
import ripwright.runner.sheet.place.SawCut;
import ripwright.runner.sheet.place.SawCut.Way;
import ripwright.stock.Defect;

/**
 * Letters what lies on a board, where there is room: first the numbers of the cuts, then the strips, then the pieces. What
 * finds no room is called out below the board.
 */
final class InsideLabels {
    private static final long LINE = 760; // a strip holds one line of lettering from this height on
    private static final long TWO_LINES = 2_150;
    private static final long MARGIN = 140;
    private static final long STEP = 200; // how far a label is moved along before the next try
    private static final long LONGEST_CALLOUT = 26_000;

    /** How far a number may be moved along and still stand on its cut. */
    private static final List<Long> NUDGES = List.of(0L, -250L, 250L, -450L, 450L);

    private final BoardMap map;
    private final Frame frame;
    private final Paper paper;
    private final Callouts callouts;
    private final Map<String, String> parts; // blank id -> part name

    InsideLabels(BoardMap map, Frame frame, Paper paper, Callouts callouts) {
        this.map = map;
        this.frame = frame;
        this.paper = paper;
        this.callouts = callouts;
        this.parts = map.strips().stream()
                .flatMap(strip -> strip.strip().blanks().stream())
                .collect(Collectors.toMap(Blank::id, Blank::part, (a, b) -> a, TreeMap::new));
    }

    void draw() {
        map.board().defects().forEach(this::keepClear);
        map.cuts().stream().filter(cut -> cut.way() == Way.ACROSS_STRIP).forEach(this::crosscut);
        map.cuts().stream()
                .filter(cut -> cut.way() == Way.RIP || cut.way() == Way.STRAIGHTEN)
                .forEach(this::rip);
        map.strips().forEach(this::strip);
        map.pieces().stream().filter(piece -> piece.fate() != Fate.WASTE).forEach(this::piece);
        map.board().defects().forEach(this::defect);
    }

    private Box box(Defect defect) {
        return new Box(
                frame.x(defect.from().nanometers()),
                frame.y(defect.left().nanometers()),
                frame.x(defect.to().nanometers()),
                frame.y(defect.right().nanometers()));
    }

    private void keepClear(Defect defect) {
        paper.keepClear(box(defect));
    }

    private void defect(Defect defect) {
        Box box = box(defect);
        callouts.name(
                new Spot(box.center(), box.middle()),
                Lettering.LABEL.fitted(Isolated.name(defect.kind()), LONGEST_CALLOUT));
    }

    private static boolean thin(Box strip) {
        return strip.height() < LINE;
    }

    private void crosscut(SawCut cut) {
        Box kerf = frame.box(cut.kerf());
        if (cut.step().isEmpty() || thin(kerf)) return; // a thin strip's callout names its cuts
        int step = cut.step().getAsInt();
        List<Balloon> trials = NUDGES.stream()
                .map(nudge -> new Balloon(step, kerf.center() + nudge, kerf.middle()))
                .toList();
        Optional<Balloon> balloon = trials.stream()
                .filter(trial -> paper.clear(trial.box()))
                .findFirst()
                .or(() ->
                        trials.stream().filter(trial -> paper.free(trial.box())).findFirst());
        balloon.ifPresent(paper::balloon);
        if (balloon.isEmpty() && !sameNumberNear(cut)) callouts.number(new Spot(kerf.center(), kerf.middle()), step);
    }

    /** Whether a cut of the same step just before it in the same strip is numbered already. */
    private boolean sameNumberNear(SawCut cut) {
        return map.cuts().stream()
                .filter(other -> other.way() == Way.ACROSS_STRIP && other.step().equals(cut.step()))
                .filter(other -> other.kerf().left() == cut.kerf().left())
                .mapToLong(other ->
                        frame.x(cut.kerf().from()) - frame.x(other.kerf().from()))
                .anyMatch(distance -> distance > 0 && distance < 2_000);
    }

    /** A rip is numbered on its line, near the far end, so that the strips' names keep the near one. */
    private void rip(SawCut cut) {
        if (cut.step().isEmpty()) return;
        Box kerf = frame.box(cut.kerf());
        int step = cut.step().getAsInt();
        Balloon trial = new Balloon(step, 0, 0);
        for (long x = kerf.right() - trial.width() / 2 - MARGIN; x - trial.width() / 2 > kerf.left(); x -= STEP) {
            Balloon balloon = new Balloon(step, x, kerf.middle());
            if (!paper.clear(balloon.box())) continue;
            paper.balloon(balloon);
            return;
        }
        callouts.number(new Spot(kerf.center(), kerf.middle()), step);
    }

    private void strip(PlacedStrip placed) {
        Box strip = frame.box(placed.region());
        String id = Isolated.name(placed.strip().id());
        if (thin(strip)) {
            callouts.name(
                    new Spot(strip.left() + Math.min(strip.width() / 2, 1_500), strip.middle()),
                    Lettering.LABEL.fitted(contents(placed), LONGEST_CALLOUT));
            return;
        }
        String fitted = Lettering.ID.fitted(id, Math.min(9_000, strip.width()));
        long width = Lettering.ID.width(fitted);
        for (long x = strip.left() + MARGIN; x + width <= strip.right(); x += STEP) {
            Words words = new Words(Lettering.ID, Anchor.START, x, strip.middle() + Lettering.ID.rise() / 2, fitted);
            if (!paper.free(words.box())) continue;
            paper.words(words);
            return;
        }
        callouts.name(new Spot(strip.center(), strip.middle()), Lettering.LABEL.fitted(id, LONGEST_CALLOUT));
    }

    /** All a thin strip holds, in one line: its blanks with the numbers of their steps. */
    private String contents(PlacedStrip placed) {
        List<String> blanks = new ArrayList<>();
        for (Blank blank : placed.strip().blanks()) {
            OptionalInt step = map.cuts().stream()
                    .filter(cut -> cut.way() == Way.ACROSS_STRIP && touches(cut, blank, placed))
                    .flatMapToInt(cut -> cut.step().stream())
                    .max();
            blanks.add(Isolated.name(blank.id()) + " " + Isolated.name(blank.part())
                    + (step.isPresent() ? " (" + step.getAsInt() + ")" : ""));
        }
        return Isolated.name(placed.strip().id()) + (blanks.isEmpty() ? "" : ": " + String.join(", ", blanks));
    }

    private static boolean touches(SawCut cut, Blank blank, PlacedStrip strip) {
        long from = blank.from().nanometers();
        return cut.kerf().left() == strip.region().left()
                && (cut.kerf().to() == from
                        || cut.kerf().from()
                                == blank.from().plus(blank.length()).nanometers());
    }

    private void piece(Piece piece) {
        Box box = frame.box(piece.region());
        boolean blank = piece.fate() == Fate.BLANK;
        if (blank && thin(box)) return; // its strip's callout names it
        String id = Isolated.name(piece.id());
        String name = Isolated.name(parts.getOrDefault(piece.id(), ""));
        Box room = room(box);
        if (box.height() >= TWO_LINES && !name.isEmpty() && twoLines(box, id, name)) return;
        String label = name.isEmpty() ? id : id + " " + name;
        String fitted = thin(box) ? "" : fitted(id, label, room.width());
        if (fitted.isEmpty()) {
            callouts.name(new Spot(box.center(), box.middle()), Lettering.LABEL.fitted(label, LONGEST_CALLOUT));
            return;
        }
        paper.words(new Words(
                Lettering.LABEL, Anchor.MIDDLE, room.center(), room.middle() + Lettering.LABEL.rise() / 2, fitted));
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
        Box first = room(above);
        Box second = room(below);
        String fitted = Lettering.LABEL.fitted(name, second.width());
        if (fitted.isEmpty() || Lettering.ID.width(id) > first.width()) return false;
        paper.words(new Words(Lettering.ID, Anchor.MIDDLE, first.center(), box.middle() - 130, id));
        paper.words(new Words(Lettering.LABEL, Anchor.MIDDLE, second.center(), box.middle() + 830, fitted));
        return true;
    }

    /** The longest stretch of one line of lettering, in the middle of a piece, that nothing stands in yet. */
    private Box room(Box piece) {
        Box band = new Box(piece.left() + MARGIN, piece.middle() - 420, piece.right() - MARGIN, piece.middle() + 420);
        Box best = new Box(band.left(), band.top(), band.left(), band.bottom());
        long start = band.left();
        for (Box taken : paper.takenIn(band)) {
            if (taken.left() - start > best.width()) best = new Box(start, band.top(), taken.left(), band.bottom());
            start = Math.max(start, taken.right());
        }
        return band.right() - start > best.width() ? new Box(start, band.top(), band.right(), band.bottom()) : best;
    }
}
