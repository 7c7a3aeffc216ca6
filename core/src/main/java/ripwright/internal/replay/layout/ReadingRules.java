package ripwright.internal.replay.layout;

import ripwright.internal.replay.Findings;
import ripwright.internal.replay.PlacedBoard;
import ripwright.internal.replay.PlacedSection;
import ripwright.internal.replay.ReplayIndex;
import ripwright.internal.replay.Tolerance;
import ripwright.measure.Unit;

/** The rule for what is read off the tape at break-down, where the ends of sections are left long and so are free to move. */
public final class ReadingRules {
    private final ReplayIndex pieces;
    private final Findings findings;
    private final long step; // between two readings, in nanometers

    public ReadingRules(ReplayIndex pieces, Findings findings) {
        this.pieces = pieces;
        this.findings = findings;
        Unit unit = pieces.job().units();
        this.step = unit == Unit.MILLIMETER ? 5 * unit.nanometers() : unit.nanometers() / 8;
    }

    public void check() {
        if (pieces.over() == 0) return;
        for (PlacedBoard board : pieces.boards())
            for (int i = 0; i < board.sections().size(); i++) {
                PlacedSection section = board.sections().get(i);
                boolean shared = i > 0 && isOneKerfBehind(board.sections().get(i - 1), section);
                if (!section.startsAtBoardEnd() && !shared) isOnTheTape(section, "starts", section.from());
                if (!section.endsAtBoardEnd()) isOnTheTape(section, "ends", section.to());
            }
    }

    /** Then both come from one cut, whose reading is where the section before ends. */
    private boolean isOneKerfBehind(PlacedSection before, PlacedSection section) {
        return Tolerance.same(section.from(), before.to() + pieces.crosscutKerf());
    }

    /** A reading is a whole eighth of an inch, in a job in millimeters whole five of them. */
    private void isOnTheTape(PlacedSection section, String does, long place) {
        long beyond = Math.floorMod(place, step);
        if (Tolerance.same(beyond, 0) || Tolerance.same(beyond, step)) return;
        findings.add(
                section.id(),
                "3.sections",
                "it " + does + " at " + findings.say(place) + "; a cut at break-down is read off in whole "
                        + (pieces.job().units() == Unit.MILLIMETER ? "5 mm" : "eighths of an inch") + ".");
    }
}
