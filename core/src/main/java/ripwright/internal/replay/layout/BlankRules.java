package ripwright.internal.replay.layout;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import ripwright.bill.Part;
import ripwright.internal.replay.CrosscutLine;
import ripwright.internal.replay.Findings;
import ripwright.internal.replay.PlacedBlank;
import ripwright.internal.replay.PlacedSection;
import ripwright.internal.replay.PlacedStrip;
import ripwright.internal.replay.ReplayIndex;
import ripwright.internal.replay.Tolerance;
import ripwright.measure.Length;
import ripwright.stock.Board;
import ripwright.stock.Defect;
import ripwright.stock.Species;

/** The rules for the blanks of a strip. */
public final class BlankRules {
    private static final String RULE = "3.blanks";

    private final ReplayIndex pieces;
    private final Findings findings;

    public BlankRules(ReplayIndex pieces, Findings findings) {
        this.pieces = pieces;
        this.findings = findings;
    }

    public void check() {
        for (PlacedStrip strip : pieces.strips()) {
            oneCrosscutKerfApart(strip);
            shortOnesComeLast(strip);
            for (PlacedBlank blank : strip.blanks()) {
                insideTheStrip(blank);
                clearOfWhatIsLeftOver(blank);
                pieces.part(blank.blank().part())
                        .ifPresentOrElse(
                                part -> servesItsPart(blank, part),
                                () -> findings.add(
                                        blank.id(),
                                        RULE,
                                        "it is for \"" + blank.blank().part() + "\", which the bill does not have."));
            }
        }
    }

    private void servesItsPart(PlacedBlank blank, Part part) {
        asLongAsItsPart(blank, part);
        exactlyAsWideAsItsPart(blank, part);
        thicknessAndSpeciesMatch(blank, part);
        clearOfDefects(blank, part);
    }

    /** Neighbors along a strip lie, by where they start, exactly one crosscut kerf apart, or further. */
    private void oneCrosscutKerfApart(PlacedStrip strip) {
        List<PlacedBlank> blanks = strip.blanks();
        for (int i = 1; i < blanks.size(); i++) {
            PlacedBlank before = blanks.get(i - 1);
            PlacedBlank blank = blanks.get(i);
            long due = before.to() + pieces.crosscutKerf();
            if (Tolerance.less(blank.from(), due))
                findings.add(
                        blank.id(),
                        RULE,
                        "it starts at " + findings.say(blank.from()) + "; " + before.id() + " ends at "
                                + findings.say(before.to()) + " and the crosscut kerf is "
                                + findings.say(pieces.crosscutKerf()) + ", so at least " + findings.say(due)
                                + " is due.");
        }
    }

    private void insideTheStrip(PlacedBlank blank) {
        PlacedSection section = blank.strip().section();
        if (Tolerance.less(blank.from(), section.from()))
            findings.add(
                    blank.id(),
                    RULE,
                    "it starts at " + findings.say(blank.from()) + "; strip "
                            + blank.strip().id() + " starts at " + findings.say(section.from()) + ".");
        if (Tolerance.more(blank.to(), section.to()))
            findings.add(
                    blank.id(),
                    RULE,
                    "it ends at " + findings.say(blank.to()) + "; strip "
                            + blank.strip().id() + " ends at " + findings.say(section.to()) + ".");
    }

    /** Where something is left over, no blank lies in an end trim or so near an end of its section that is not square. */
    private void clearOfWhatIsLeftOver(PlacedBlank blank) {
        if (pieces.over() == 0) return;
        PlacedSection section = blank.strip().section();
        CrosscutLine.Span room = section.room(pieces.over());
        boolean starts = !Tolerance.less(blank.from(), section.from()); // else it has been said
        boolean ends = !Tolerance.more(blank.to(), section.to());
        if (starts && Tolerance.less(blank.from(), room.from()))
            findings.add(
                    blank.id(),
                    "2.ends",
                    "it starts at " + findings.say(blank.from()) + "; its section starts at "
                            + findings.say(section.from())
                            + leftOver(section.frame().clearFrom(), "starts")
                            + ", so at least " + findings.say(room.from()) + " is due.");
        if (ends && Tolerance.more(blank.to(), room.to()))
            findings.add(
                    blank.id(),
                    "2.ends",
                    "it ends at " + findings.say(blank.to()) + "; its section ends at " + findings.say(section.to())
                            + leftOver(section.frame().clearTo(), "ends") + ", so at most "
                            + findings.say(room.to()) + " is due.");
    }

    private String leftOver(long clear, String does) {
        return " with " + findings.say(pieces.over()) + " left over, and the wood between the board's end trims " + does
                + " at " + findings.say(clear);
    }

    /** A blank is as long as its part and the sneak-up oversize. */
    private void asLongAsItsPart(PlacedBlank blank, Part part) {
        if (!Tolerance.same(blank.blank().length(), part.blankLength()))
            findings.add(
                    blank.id(),
                    RULE,
                    "it is " + findings.say(blank.blank().length()) + " long; " + part.name()
                            + " with its sneak-up oversize needs " + findings.say(part.blankLength()) + ".");
    }

    /** A blank is exactly as wide as its part and the edge allowance, and so is its strip. */
    private void exactlyAsWideAsItsPart(PlacedBlank blank, Part part) {
        Length width = blank.strip().strip().width();
        if (!Tolerance.sameAsPrinted(width, part.blankWidth(), pieces.job().units()))
            findings.add(
                    blank.id(),
                    RULE,
                    "its strip " + blank.strip().id() + " is " + findings.say(width) + " wide; " + part.name()
                            + " with its edge allowance needs " + findings.say(part.blankWidth()) + ".");
    }

    /** A part matches exactly the thickness a board mills to, and takes only its own species. */
    private void thicknessAndSpeciesMatch(PlacedBlank blank, Part part) {
        Board board = blank.board();
        if (!part.thickness().equals(board.millsTo()))
            findings.add(
                    blank.id(),
                    "2.rough",
                    "board " + board.id() + " mills to " + findings.say(board.millsTo()) + "; " + part.name()
                            + " needs " + findings.say(part.thickness()) + ".");
        if (!part.takes(board.species()))
            findings.add(
                    blank.id(),
                    "2.species",
                    "board " + board.id() + " is " + board.species() + "; " + part.name() + " takes "
                            + names(part.species()) + ".");
        if (!part.mayComeFrom(board.id()))
            findings.add(
                    blank.id(),
                    "2.boards",
                    "it comes from board " + board.id() + "; " + part.name() + " may come from "
                            + String.join(" or ", new TreeSet<>(part.boards())) + " only.");
    }

    private static String names(Set<Species> species) {
        TreeSet<String> names = new TreeSet<>();
        species.forEach(wood -> names.add(wood.name()));
        return String.join(" or ", names);
    }

    /** A blank may touch a defect that bars its part, not overlap it. */
    private void clearOfDefects(PlacedBlank blank, Part part) {
        for (Defect defect : blank.board().defects())
            if (blank.barredAcross(defect, part) && blank.liesOn(defect))
                findings.add(
                        blank.id(),
                        RULE,
                        "it lies from " + findings.say(blank.from()) + " to " + findings.say(blank.to()) + " and "
                                + findings.say(blank.strip().left()) + " to "
                                + findings.say(blank.strip().right())
                                + " across, over a " + defect.kind() + " from " + findings.say(defect.from()) + " to "
                                + findings.say(defect.to()) + " and " + findings.say(defect.left()) + " to "
                                + findings.say(defect.right()) + " across that bars " + part.name() + ".");
    }

    /** Blanks shorter than the shortest crosscut, which only a part so short can have, lie last in their strip. */
    private void shortOnesComeLast(PlacedStrip strip) {
        long shortest =
                pieces.job().saw().shortestCrosscut().orElse(Length.ZERO).nanometers();
        List<PlacedBlank> blanks = strip.blanks();
        for (int i = 1; i < blanks.size(); i++) {
            PlacedBlank before = blanks.get(i - 1);
            PlacedBlank blank = blanks.get(i);
            if (Tolerance.less(before.span().length(), shortest)
                    && !Tolerance.less(blank.span().length(), shortest))
                findings.add(
                        before.id(),
                        "3.limits",
                        "at " + findings.say(before.span().length()) + " it is under the shortest crosscut of "
                                + findings.say(shortest) + " and lies before " + blank.id()
                                + "; such blanks come last in their strip.");
        }
    }
}
