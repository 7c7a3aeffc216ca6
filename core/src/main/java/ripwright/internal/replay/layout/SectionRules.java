package ripwright.internal.replay.layout;

import java.util.List;
import ripwright.internal.replay.Findings;
import ripwright.internal.replay.PlacedBoard;
import ripwright.internal.replay.PlacedSection;
import ripwright.internal.replay.ReplayIndex;
import ripwright.internal.replay.Tolerance;
import ripwright.measure.Length;
import ripwright.plan.Strip;
import ripwright.saw.Saw;
import ripwright.stock.Board;
import ripwright.stock.Edge;

/** The rules for how a board is broken down, and for the edge a section rides on. */
public final class SectionRules {
    private static final int MOST_SECTIONS = 3;

    private final ReplayIndex pieces;
    private final Findings findings;
    private final Saw saw;

    public SectionRules(ReplayIndex pieces, Findings findings) {
        this.pieces = pieces;
        this.findings = findings;
        this.saw = pieces.job().saw();
    }

    public void check() {
        for (PlacedBoard board : pieces.boards()) {
            atMostThree(board);
            oneCrosscutKerfApart(board);
            if (board.board().testOnly()) givesTestBlanksAlone(board);
            if (board.board().ripped()) rippedStockIsOneStrip(board);
            for (PlacedSection section : board.sections()) {
                somethingIsRipped(section);
                hasSomeLength(section);
                if (pieces.over() == 0) insideTheTrims(section);
                else endsAtTheBoardsOrInsideTheTrims(section);
                if (!board.board().ripped()) asLongAsTheSawTakes(section);
                taperedRidesItsLeftEdge(section);
                edgeGivesUpEnough(section);
            }
        }
    }

    private void atMostThree(PlacedBoard board) {
        if (board.sections().size() > MOST_SECTIONS)
            findings.add(
                    board.id(),
                    "3.sections",
                    "it is cut into " + board.sections().size() + " sections; at most three are due.");
    }

    private void givesTestBlanksAlone(PlacedBoard board) {
        for (PlacedSection section : board.sections())
            findings.add(
                    section.id(),
                    "2.only",
                    "it is cut from " + board.id()
                            + ", which gives test blanks alone and is never broken into sections.");
    }

    private void somethingIsRipped(PlacedSection section) {
        if (section.section().strips().isEmpty())
            findings.add(section.id(), "3.sections", "it has no strip; a section has at least one.");
    }

    /** Sections lie, by where they start, exactly one crosscut kerf apart, or further. */
    private void oneCrosscutKerfApart(PlacedBoard board) {
        List<PlacedSection> sections = board.sections();
        for (int i = 1; i < sections.size(); i++) {
            PlacedSection before = sections.get(i - 1);
            PlacedSection section = sections.get(i);
            long due = before.to() + pieces.crosscutKerf();
            if (Tolerance.less(section.from(), due))
                findings.add(
                        section.id(),
                        "3.sections",
                        "it starts at " + findings.say(section.from()) + "; " + before.id() + " ends at "
                                + findings.say(before.to()) + " and the crosscut kerf is "
                                + findings.say(pieces.crosscutKerf()) + ", so at least " + findings.say(due)
                                + " is due.");
        }
    }

    private void hasSomeLength(PlacedSection section) {
        if (!Tolerance.more(section.to(), section.from()))
            findings.add(
                    section.id(),
                    "3.sections",
                    "it ends at " + findings.say(section.to()) + ", not beyond its start at "
                            + findings.say(section.from()) + ".");
    }

    /** Where nothing is left over at their ends, sections lie in near .. length - far. */
    private void insideTheTrims(PlacedSection section) {
        Board board = section.board();
        long near = section.frame().clearFrom();
        long far = section.frame().clearTo();
        if (Tolerance.less(section.from(), near))
            findings.add(
                    section.id(),
                    "2.ends",
                    "it starts at " + findings.say(section.from()) + "; the end trim there is " + findings.say(near)
                            + ".");
        if (Tolerance.more(section.to(), far))
            findings.add(
                    section.id(),
                    "2.ends",
                    "it ends at " + findings.say(section.to()) + "; the board is " + findings.say(board.length())
                            + " long and the end trim there is "
                            + findings.say(board.endTrim().far()) + ", so at most " + findings.say(far) + " is due.");
    }

    /** Where something is, each end of a section is the board's own, or lies in near .. length - far. */
    private void endsAtTheBoardsOrInsideTheTrims(PlacedSection section) {
        if (!section.startsAtBoardEnd() && trimmed(section.from(), section))
            findings.add(
                    section.id(),
                    "2.ends",
                    "it starts at " + findings.say(section.from()) + "; 0, the board's own end, or "
                            + clearWood(section) + " is due.");
        if (!section.endsAtBoardEnd() && trimmed(section.to(), section))
            findings.add(
                    section.id(),
                    "2.ends",
                    "it ends at " + findings.say(section.to()) + "; "
                            + findings.say(section.frame().length()) + ", the board's own end, or "
                            + clearWood(section) + " is due.");
    }

    private static boolean trimmed(long end, PlacedSection section) {
        return Tolerance.less(end, section.frame().clearFrom())
                || Tolerance.more(end, section.frame().clearTo());
    }

    private String clearWood(PlacedSection section) {
        return "from " + findings.say(section.frame().clearFrom()) + " to "
                + findings.say(section.frame().clearTo());
    }

    /** Sections are between the shortest and the longest rip. */
    private void asLongAsTheSawTakes(PlacedSection section) {
        long shortest = saw.shortestRip().map(Length::nanometers).orElse(0L);
        long longest = saw.longestRip().map(Length::nanometers).orElse(Length.LONGEST.nanometers());
        if (Tolerance.less(section.length(), shortest))
            findings.add(
                    section.id(),
                    "3.sections",
                    "it is " + findings.say(section.length()) + " long; the shortest rip is " + findings.say(shortest)
                            + ".");
        if (Tolerance.more(section.length(), longest))
            findings.add(
                    section.id(),
                    "3.sections",
                    "it is " + findings.say(section.length()) + " long; the longest rip is " + findings.say(longest)
                            + ".");
    }

    private void taperedRidesItsLeftEdge(PlacedSection section) {
        if (section.board().tapered() && section.section().referenceEdge() != Edge.LEFT)
            findings.add(section.id(), "2.width", "it rides its right edge; a tapered board rides its left one.");
    }

    /** A reference edge that is not straight loses the larger of edge loss and crook x (s/L)^2; more is allowed. */
    private void edgeGivesUpEnough(PlacedSection section) {
        long due = section.dueEdgeLoss();
        if (Tolerance.less(section.edgeLoss(), due))
            findings.add(
                    section.id(),
                    "2.edges",
                    "its reference edge gives up " + findings.say(section.edgeLoss()) + "; over "
                            + findings.say(section.length()) + " of a board "
                            + findings.say(section.board().length())
                            + " long with a crook of "
                            + findings.say(section.board().crook())
                            + " and an edge loss of "
                            + findings.say(section.board().edgeLoss()) + ", "
                            + findings.say(due) + " is due.");
    }

    /** Ripped stock: one section trim to trim or, left long, end to end; one strip of its full width, no setting. */
    private void rippedStockIsOneStrip(PlacedBoard board) {
        if (board.sections().size() > 1)
            findings.add(
                    board.id(),
                    "2.ripped",
                    "ripped stock is cut into " + board.sections().size() + " sections; one is due.");
        boolean over = pieces.over() > 0;
        long near = over ? 0 : board.frame().clearFrom();
        long far = over ? board.frame().length() : board.frame().clearTo();
        for (PlacedSection section : board.sections()) {
            if (Tolerance.more(section.from(), near) || Tolerance.less(section.to(), far))
                findings.add(
                        section.id(),
                        "2.ripped",
                        "it runs from " + findings.say(section.from()) + " to " + findings.say(section.to())
                                + "; of ripped stock it goes from " + (over ? "end to end, " : "trim to trim, ")
                                + findings.say(near) + " to "
                                + findings.say(far) + ".");
            if (section.strips().size() > 1)
                findings.add(
                        section.id(),
                        "2.ripped",
                        "it has " + section.strips().size() + " strips; ripped stock is one.");
            section.section().strips().forEach(strip -> rippedStripIsAsWideAsItsBoard(section, strip));
        }
    }

    private void rippedStripIsAsWideAsItsBoard(PlacedSection section, Strip strip) {
        Length width = section.board().width();
        if (!Tolerance.sameAsPrinted(strip.width(), width, pieces.job().units()))
            findings.add(
                    section.id(),
                    "2.ripped",
                    "strip " + strip.id() + " is " + findings.say(strip.width())
                            + " wide; ripped stock is one strip of its full " + findings.say(width) + ".");
        strip.setting()
                .ifPresent(setting -> findings.add(
                        section.id(),
                        "2.ripped",
                        "strip " + strip.id() + " names the rip setting " + setting + "; ripped stock has none."));
    }
}
