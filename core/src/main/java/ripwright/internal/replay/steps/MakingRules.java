package ripwright.internal.replay.steps;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import ripwright.internal.replay.Findings;
import ripwright.internal.replay.PlacedBlank;
import ripwright.internal.replay.PlacedBoard;
import ripwright.internal.replay.PlacedSection;
import ripwright.internal.replay.PlacedStrip;
import ripwright.internal.replay.ReplayIndex;
import ripwright.internal.replay.StepIndex;
import ripwright.internal.replay.Tolerance;
import ripwright.internal.replay.Words;
import ripwright.internal.replay.leftovers.WhatIsLeft;
import ripwright.plan.CutBoard;
import ripwright.plan.Offcut;
import ripwright.plan.Section;
import ripwright.plan.Step;
import ripwright.plan.Step.Does;
import ripwright.plan.Strip;
import ripwright.plan.TestBlank;

/** The rules for what every step makes: each piece once, off the piece it is part of, and in time. */
public final class MakingRules {
    private static final String RULE = "5.steps";

    private final ReplayIndex pieces;
    private final StepIndex steps;
    private final WhatIsLeft left;
    private final Findings findings;
    private final Set<String> ids = new HashSet<>(); // of all that steps can make

    public MakingRules(ReplayIndex pieces, StepIndex steps, WhatIsLeft left, Findings findings) {
        this.pieces = pieces;
        this.steps = steps;
        this.left = left;
        this.findings = findings;
    }

    public void check() {
        everyPieceIsMadeOnce();
        for (int i = 0; i < steps.size(); i++) {
            usedOnlyAfterItIsMade(i);
            for (String made : steps.step(i).makes()) madeOffItsOwnPiece(made, i);
        }
        everyConsumedBoardIsBrokenDownOnce();
    }

    /** Every section, strip, blank, offcut and cut test blank is made exactly once. */
    private void everyPieceIsMadeOnce() {
        for (CutBoard board : pieces.plan().boards())
            for (Section section : board.sections()) {
                madeOnce(section.id(), false);
                for (Strip strip : section.strips()) {
                    madeOnce(strip.id(), false);
                    strip.blanks().forEach(blank -> madeOnce(blank.id(), false));
                }
            }
        for (TestBlank blank : pieces.plan().testBlanks()) madeOnce(blank.id(), mayBeWhole(blank));
        for (Offcut offcut : pieces.plan().offcuts()) madeOnce(offcut.id(), false);
    }

    private void madeOnce(String id, boolean orNever) {
        ids.add(id);
        List<Integer> makers = steps.makersOf(id);
        if (makers.isEmpty() && !orNever) findings.add(id, RULE, "no step makes it.");
        if (makers.size() > 1)
            findings.add(
                    id, RULE, steps.name(makers.get(0)) + " makes it, and " + steps.name(makers.get(1)) + " again.");
    }

    /** Whether a test blank can be a whole leftover, which needs no cut. */
    private boolean mayBeWhole(TestBlank blank) {
        return left.of(blank.from()).stream()
                .flatMap(remains -> remains.taken().stream())
                .anyMatch(taken -> taken.blank().id().equals(blank.id())
                        && Tolerance.same(taken.from().length(), blank.length().nanometers()));
    }

    /** A piece is used only after the step that made it. */
    private void usedOnlyAfterItIsMade(int place) {
        String piece = steps.step(place).piece();
        OptionalInt made = steps.firstMaker(piece);
        if (made.isPresent() && made.getAsInt() >= place)
            findings.add(
                    piece,
                    RULE,
                    steps.name(place) + " uses it; it is made only in " + steps.name(made.getAsInt()) + ".");
    }

    private void everyConsumedBoardIsBrokenDownOnce() {
        for (PlacedBoard board : pieces.boards()) {
            int times = steps.all(Does.BREAKDOWN, board.id()).size();
            if (times != 1) findings.add(board.id(), RULE, "it is broken down in " + times + " steps; one is due.");
        }
    }

    private void madeOffItsOwnPiece(String made, int place) {
        if (!ids.contains(made)) {
            findings.add(made, RULE, steps.name(place) + " makes it; the plan has no such piece.");
            return;
        }
        Optional<String> due = dueMaker(made, place);
        due.ifPresent(what -> findings.add(
                made,
                RULE,
                steps.name(place) + ", a " + Words.of(steps.step(place).does()) + " of "
                        + steps.step(place).piece() + ", makes it; " + what + " is due."));
    }

    /** What should make it, when this step should not. */
    private Optional<String> dueMaker(String made, int place) {
        if (pieces.section(made).isPresent())
            return offBoard(pieces.section(made).get().board().id(), place);
        if (pieces.strip(made).isPresent()) return strip(pieces.strip(made).get(), place);
        if (pieces.blank(made).isPresent()) return blank(pieces.blank(made).get(), place);
        if (pieces.testBlank(made).isPresent())
            return testBlank(pieces.testBlank(made).get(), place);
        return pieces.offcut(made).flatMap(offcut -> offcut(offcut, place));
    }

    private boolean is(int place, Does does, String piece) {
        return steps.step(place).does() == does && steps.step(place).piece().equals(piece);
    }

    private Optional<String> offBoard(String board, int place) {
        return is(place, Does.BREAKDOWN, board) ? Optional.empty() : Optional.of("the breakdown of " + board);
    }

    private Optional<String> strip(PlacedStrip strip, int place) {
        if (strip.board().ripped()) return offBoard(strip.board().id(), place);
        Optional<String> setting = strip.strip().setting();
        boolean right = is(place, Does.RIP, strip.section().id())
                && steps.step(place).setting().equals(setting);
        return right
                ? Optional.empty()
                : Optional.of("a rip of " + strip.section().id() + " at " + setting.orElse("its setting"));
    }

    private Optional<String> blank(PlacedBlank blank, int place) {
        String strip = blank.strip().id();
        return is(place, Does.BLANK, strip) ? Optional.empty() : Optional.of("a blank step on " + strip);
    }

    /** Test blanks come off a board as it is broken down, and are trimmed off what is left of a section or a strip. */
    private Optional<String> testBlank(TestBlank blank, int place) {
        String from = blank.from();
        if (pieces.board(from).isPresent()) return offBoard(from, place);
        if (left.of(from).isEmpty()) return Optional.empty(); // the rules for test blanks complain
        boolean right = isTrimOf(from, place) || (mayBeWhole(blank) && fallsOff(from, place));
        if (!right) return Optional.of("a trim of " + from);
        return pieces.section(from).isPresent() && !laterThanItsLastRip(from, place)
                ? Optional.of("a trim after the last rip of " + from)
                : Optional.empty();
    }

    /** Offcuts come with the last cut that frees them; what test blanks were trimmed from, with the trim. */
    private Optional<String> offcut(Offcut offcut, int place) {
        String from = offcut.from();
        if (pieces.board(from).isPresent()) return offBoard(from, place);
        if (left.of(from).isEmpty()) return Optional.empty(); // the rules for offcuts complain
        boolean trimmed =
                left.of(from).map(remains -> !remains.taken().isEmpty()).orElse(false);
        boolean bare = pieces.strip(from).map(strip -> strip.blanks().isEmpty()).orElse(false);
        boolean right = fallsOff(from, place) || ((trimmed || bare) && isTrimOf(from, place));
        if (!right)
            return Optional.of(
                    pieces.section(from).isPresent() ? "the last rip of " + from : "the last blank step on " + from);
        return pieces.section(from).isPresent() && !laterThanItsLastRip(from, place) && !fallsOff(from, place)
                ? Optional.of("a trim after the last rip of " + from)
                : Optional.empty();
    }

    private boolean isTrimOf(String from, int place) {
        Step step = steps.step(place);
        boolean itself = step.piece().equals(from);
        boolean itsOffcut = pieces.offcut(step.piece())
                .map(offcut -> offcut.from().equals(from))
                .orElse(false);
        return step.does() == Does.TRIM && (itself || itsOffcut);
    }

    /**
     * Whether this step makes the last strip of a section, the last blanks of a strip, or a strip that carries none.
     */
    private boolean fallsOff(String from, int place) {
        Optional<PlacedSection> section = pieces.section(from);
        if (section.isPresent())
            return is(place, Does.RIP, from) && steps.step(place).makes().contains(lastStrip(section.get()));
        Optional<PlacedStrip> strip = pieces.strip(from);
        if (strip.isPresent() && strip.get().blanks().isEmpty())
            return steps.makersOf(from).contains(place);
        return strip.isPresent()
                && is(place, Does.BLANK, from)
                && steps.last(Does.BLANK, from).orElse(-1) == place;
    }

    private boolean laterThanItsLastRip(String section, int place) {
        return pieces.section(section)
                .map(placed -> steps.firstMaker(lastStrip(placed)))
                .map(made -> made.isPresent() && made.getAsInt() < place)
                .orElse(false);
    }

    private static String lastStrip(PlacedSection section) {
        List<PlacedStrip> strips = section.strips();
        return strips.isEmpty() ? "" : strips.get(strips.size() - 1).id();
    }
}
