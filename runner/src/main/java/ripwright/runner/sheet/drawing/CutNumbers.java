package ripwright.runner.sheet.drawing;

import java.util.List;
import java.util.Optional;
import ripwright.runner.sheet.place.BoardMap;
import ripwright.runner.sheet.place.SawCut;
import ripwright.runner.sheet.place.SawCut.Way;

/** Numbers the cuts inside a board as the steps that make them: on the cut where there is room, else called out. */
final class CutNumbers {
    private static final long MARGIN = 140;
    private static final long STEP = 200; // how far a number is moved along before the next try

    /** How far a number may be moved along and still stand on its cut. */
    private static final List<Long> NUDGES = List.of(0L, -250L, 250L, -450L, 450L);

    private final BoardMap map;
    private final Frame frame;
    private final Paper paper;
    private final Callouts callouts;

    CutNumbers(BoardMap map, Frame frame, Paper paper, Callouts callouts) {
        this.map = map;
        this.frame = frame;
        this.paper = paper;
        this.callouts = callouts;
    }

    void draw() {
        map.cuts().stream().filter(cut -> cut.way() == Way.ACROSS_STRIP).forEach(this::crosscut);
        map.cuts().stream()
                .filter(cut -> cut.way() == Way.RIP || cut.way() == Way.STRAIGHTEN)
                .forEach(this::rip);
    }

    private void crosscut(SawCut cut) {
        Box kerf = frame.box(cut.kerf());
        if (cut.step().isEmpty()) return;
        int step = cut.step().getAsInt();
        if (StripLabels.thin(kerf)) {
            boolean inStrip = map.strips().stream()
                    .anyMatch(strip -> strip.region().left() == cut.kerf().left());
            if (!inStrip) callouts.number(new Spot(kerf.center(), kerf.middle()), step);
            return; // a thin strip's callout names its cuts
        }
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
}
