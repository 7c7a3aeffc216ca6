package ripwright.runner.sheet.drawing;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.stream.Collectors;
import ripwright.measure.Unit;
import ripwright.plan.Blank;
import ripwright.runner.sheet.drawing.Words.Anchor;
import ripwright.runner.sheet.place.BoardMap;
import ripwright.runner.sheet.place.BoardMap.PlacedStrip;
import ripwright.runner.sheet.place.SawCut;
import ripwright.runner.sheet.place.SawCut.Way;

/** Names the strips at their near ends; one too thin for that is called out with all it holds. */
final class StripLabels {
    private static final long LINE = 760; // a strip holds one line of lettering from this height on
    private static final long MARGIN = 140;
    private static final long STEP = 200; // how far a name is moved along before the next try

    private final BoardMap map;
    private final Unit units;
    private final Frame frame;
    private final Paper paper;
    private final Callouts callouts;

    StripLabels(BoardMap map, Unit units, Frame frame, Paper paper, Callouts callouts) {
        this.map = map;
        this.units = units;
        this.frame = frame;
        this.paper = paper;
        this.callouts = callouts;
    }

    static boolean thin(Box box) {
        return box.height() < LINE;
    }

    void draw() {
        map.strips().forEach(this::strip);
    }

    private void strip(PlacedStrip placed) {
        Box strip = frame.box(placed.region());
        String id = Isolated.name(placed.strip().id());
        if (thin(strip)) {
            callouts.name(
                    new Spot(strip.left() + Math.min(strip.width() / 2, 1_500), strip.middle()),
                    Lettering.LABEL.fitted(contents(placed), Callouts.LONGEST));
            return;
        }
        String named = named(placed);
        if (written(strip, named) || written(strip, Lettering.ID.fitted(id, Math.min(9_000, strip.width())))) return;
        callouts.name(new Spot(strip.center(), strip.middle()), Lettering.LABEL.fitted(named, Callouts.LONGEST));
    }

    /** Its id and how wide it is; a board ripped already says that in its title. */
    private String named(PlacedStrip placed) {
        String id = Isolated.name(placed.strip().id());
        return placed.strip().setting().isEmpty()
                ? id
                : id + ", " + units.nearest(placed.strip().width());
    }

    private boolean written(Box strip, String text) {
        long width = Lettering.ID.width(text);
        if (text.isEmpty() || width > Math.min(12_000, strip.width())) return false;
        for (long x = strip.left() + MARGIN; x + width <= strip.right(); x += STEP) {
            Words words = new Words(Lettering.ID, Anchor.START, x, strip.middle() + Lettering.ID.rise() / 2, text);
            if (!paper.free(words.box())) continue;
            paper.words(words);
            return true;
        }
        return false;
    }

    /** All a thin strip holds, in one line: the blanks of each part and, in parentheses, their step. */
    private String contents(PlacedStrip placed) {
        Map<String, List<String>> blanks = new LinkedHashMap<>();
        for (Blank blank : placed.strip().blanks()) {
            OptionalInt step = map.cuts().stream()
                    .filter(cut -> cut.way() == Way.ACROSS_STRIP && touches(cut, blank, placed))
                    .flatMapToInt(cut -> cut.step().stream())
                    .max();
            String part = Isolated.name(blank.part()) + (step.isPresent() ? " (" + step.getAsInt() + ")" : "");
            blanks.computeIfAbsent(part, any -> new ArrayList<>()).add(Isolated.name(blank.id()));
        }
        String text = blanks.entrySet().stream()
                .map(part -> String.join(" ", part.getValue()) + " " + part.getKey())
                .collect(Collectors.joining(", "));
        return named(placed) + (text.isEmpty() ? "" : ": " + text);
    }

    private static boolean touches(SawCut cut, Blank blank, PlacedStrip strip) {
        long from = blank.from().nanometers();
        return cut.kerf().left() == strip.region().left()
                && (cut.kerf().to() == from
                        || cut.kerf().from()
                                == blank.from().plus(blank.length()).nanometers());
    }
}
