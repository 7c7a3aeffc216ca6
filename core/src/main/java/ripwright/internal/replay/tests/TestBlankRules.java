package ripwright.internal.replay.tests;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import ripwright.internal.replay.Findings;
import ripwright.internal.replay.PlacedBoard;
import ripwright.internal.replay.PlacedStrip;
import ripwright.internal.replay.ReplayIndex;
import ripwright.internal.replay.Tolerance;
import ripwright.internal.replay.Words;
import ripwright.internal.replay.leftovers.Remains;
import ripwright.internal.replay.leftovers.ReplayLeftover;
import ripwright.internal.replay.leftovers.WhatIsLeft;
import ripwright.measure.Length;
import ripwright.plan.Setting;
import ripwright.plan.TestBlank;
import ripwright.stock.Board;
import ripwright.stock.Edge;

/** The rules for test blanks: where they come from, and what each can prove. */
public final class TestBlankRules {
    private static final String RULE = "5.testBlanks";

    private final ReplayIndex pieces;
    private final WhatIsLeft left;
    private final Findings findings;
    private final Map<String, Set<Length>> thicknesses = new HashMap<>(); // setting -> of the strips ripped there

    public TestBlankRules(ReplayIndex pieces, WhatIsLeft left, Findings findings) {
        this.pieces = pieces;
        this.left = left;
        this.findings = findings;
        for (PlacedStrip strip : pieces.strips())
            strip.strip()
                    .setting()
                    .ifPresent(setting -> thicknesses
                            .computeIfAbsent(setting, unused -> new HashSet<>())
                            .add(strip.board().millsTo()));
    }

    public void check() {
        for (TestBlank blank : pieces.plan().testBlanks()) {
            asLongAsTheJobSays(blank);
            ofTheWoodItIsCutFrom(blank);
            provesSomething(blank);
            thickAsSomeStripRippedThere(blank);
            narrowerByAKerfEachTime(blank);
        }
        for (Remains remains : left.all()) {
            remains.unplaced().forEach(blank -> hasNoRoom(blank, remains));
            remains.taken().forEach(this::cutAsListed);
        }
        boardsAreOpenedForAReason();
    }

    private void asLongAsTheJobSays(TestBlank blank) {
        Length due = pieces.job().testRip().length();
        if (!Tolerance.same(blank.length(), due))
            findings.add(
                    blank.id(),
                    RULE,
                    "it is " + findings.say(blank.length()) + " long; " + findings.say(due) + " is due.");
    }

    /** It is of its board's species, and of the thickness that board mills to. */
    private void ofTheWoodItIsCutFrom(TestBlank blank) {
        if (pieces.boardOf(blank.from()).isEmpty()) {
            findings.add(
                    blank.id(),
                    RULE,
                    "it is cut from " + blank.from() + ", which is no board, section or strip of this plan.");
            return;
        }
        Board board = pieces.boardOf(blank.from()).get();
        if (!blank.species().equals(board.species()))
            findings.add(
                    blank.id(),
                    RULE,
                    "it is listed as " + blank.species() + "; " + board.id() + " is " + board.species() + ".");
        if (!Tolerance.same(blank.thickness(), board.millsTo()))
            findings.add(
                    blank.id(),
                    RULE,
                    "it is listed as " + findings.say(blank.thickness()) + " thick; " + board.id() + " mills to "
                            + findings.say(board.millsTo()) + ".");
    }

    private void provesSomething(TestBlank blank) {
        if (blank.proves().isEmpty()) findings.add(blank.id(), RULE, "it proves no rip setting.");
        for (String setting : blank.proves())
            if (pieces.setting(setting).isEmpty())
                findings.add(blank.id(), RULE, "it proves " + setting + ", which is no rip setting of this plan.");
    }

    private void thickAsSomeStripRippedThere(TestBlank blank) {
        for (String setting : blank.proves()) {
            Set<Length> there = thicknesses.getOrDefault(setting, Set.of());
            if (!there.isEmpty() && there.stream().noneMatch(strip -> Tolerance.same(strip, blank.thickness())))
                findings.add(
                        blank.id(),
                        RULE,
                        "it is " + findings.say(blank.thickness()) + " thick and proves " + setting
                                + "; no strip so thick is ripped there.");
        }
    }

    /** After a test it is as wide as that setting, and the next must be narrower by one rip kerf at least. */
    private void narrowerByAKerfEachTime(TestBlank blank) {
        List<Setting> proved = new ArrayList<>();
        blank.proves().forEach(setting -> pieces.setting(setting).ifPresent(proved::add));
        for (int i = 1; i < proved.size(); i++)
            needsAKerfOver(
                    blank,
                    proved.get(i),
                    proved.get(i - 1).width().nanometers(),
                    "after " + proved.get(i - 1).id() + " it is ");
    }

    private void needsAKerfOver(TestBlank blank, Setting setting, long width, String when) {
        long due = setting.width().nanometers() + pieces.ripKerf();
        if (Tolerance.less(width, due))
            findings.add(
                    blank.id(),
                    RULE,
                    when + findings.say(width) + " wide; to prove " + setting.id() + " at "
                            + findings.say(setting.width()) + " with a rip kerf of " + findings.say(pieces.ripKerf())
                            + ", " + findings.say(due) + " is the least.");
    }

    private void hasNoRoom(TestBlank blank, Remains remains) {
        findings.add(blank.id(), RULE, "no leftover of " + remains.of() + " has room for it.");
    }

    private void cutAsListed(Remains.Taken taken) {
        TestBlank blank = taken.blank();
        ReplayLeftover from = taken.from();
        if (!taken.asWideAsListed())
            findings.add(
                    blank.id(),
                    RULE,
                    "it is listed as " + findings.say(blank.width()) + " wide; what is left of " + blank.from() + " is "
                            + findings.say(taken.cut().width()) + ".");
        if (blank.source() != taken.dueSource())
            findings.add(
                    blank.id(),
                    RULE,
                    "it is listed as from " + Words.of(blank.source()) + "; what is left of " + blank.from()
                            + reason(taken.dueSource()) + ", so " + Words.of(taken.dueSource()) + " is due.");

        long length = pieces.job().testRip().length().nanometers();
        long loss = from.straightEdges() > 0 ? 0 : from.frame().straighteningLoss(Edge.LEFT, length);
        if (!blank.proves().isEmpty())
            pieces.setting(blank.proves().get(0))
                    .ifPresent(first -> needsAKerfOver(
                            blank,
                            first,
                            blank.width().nanometers() - loss,
                            loss == 0 ? "it is " : "once straightened it is "));
    }

    private static String reason(TestBlank.Source due) {
        return switch (due) {
            case RACK -> " is a rack offcut no part comes from";
            case WASTE -> " is too small for the rack";
            case FRESH -> " would have been kept, or was opened for it";
        };
    }

    /** A board is consumed for sections, or for test wood; a board opened for test wood alone has no sections. */
    private void boardsAreOpenedForAReason() {
        Set<String> sources = new HashSet<>();
        pieces.plan().testBlanks().forEach(blank -> sources.add(blank.from()));
        for (PlacedBoard board : pieces.boards())
            if (board.openedForTestWood() && !sources.contains(board.id()))
                findings.add(
                        board.id(),
                        "5.boards",
                        "it is consumed, but neither a section nor a test blank comes from it.");
    }
}
