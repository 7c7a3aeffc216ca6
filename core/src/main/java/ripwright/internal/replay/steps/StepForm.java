package ripwright.internal.replay.steps;

import java.util.Optional;
import ripwright.internal.replay.Findings;
import ripwright.internal.replay.PlacedBlank;
import ripwright.internal.replay.ReplayIndex;
import ripwright.internal.replay.Words;
import ripwright.plan.Step;

/** The rules for one step by itself: its number, its saw, what it is done to, and what else it says. */
public final class StepForm {
    private static final String RULE = "5.steps";

    private final ReplayIndex pieces;
    private final Findings findings;

    public StepForm(ReplayIndex pieces, Findings findings) {
        this.pieces = pieces;
        this.findings = findings;
    }

    public void check() {
        for (int i = 0; i < pieces.plan().steps().size(); i++) {
            Step step = pieces.plan().steps().get(i);
            numberedInTurn(step, i + 1);
            atItsSaw(step);
            onItsKindOfPiece(step);
            namesItsSetting(step);
            stopsAndSparesAreForBlanks(step);
            makesSomethingOrNothing(step);
        }
    }

    private void add(Step step, String what) {
        findings.add("step " + step.n(), RULE, what);
    }

    private void numberedInTurn(Step step, int due) {
        if (step.n() != due) add(step, "it is the one in place " + due + ", so " + due + " is due.");
    }

    /**
     * Crosscuts are made at one saw, rips and tests at the other; nothing is sawn in milling and measuring, or where a blank is
     * as long as its strip.
     */
    private void atItsSaw(Step step) {
        Optional<Step.Saw> due = switch (step.does()) {
            case BREAKDOWN, SQUARE, BLANK, TRIM -> Optional.of(Step.Saw.CROSSCUT);
            case STRAIGHTEN, TEST, RIP -> Optional.of(Step.Saw.RIP);
            case MILL, CHECK -> Optional.empty();
        };
        if (step.saw().isEmpty() && isWholeStrips(step)) return;
        if (!step.saw().equals(due))
            add(step, "a " + Words.of(step.does()) + " at " + Words.of(step.saw()) + "; " + Words.of(due) + " is due.");
    }

    private boolean isWholeStrips(Step step) {
        if (step.does() != Step.Does.BLANK || step.stop().isPresent()) return false;
        return !step.makes().isEmpty()
                && step.makes().stream()
                        .allMatch(made -> pieces.blank(made)
                                .filter(PlacedBlank::asLongAsItsStrip)
                                .isPresent());
    }

    private void onItsKindOfPiece(Step step) {
        String piece = step.piece();
        boolean board = pieces.board(piece).isPresent();
        boolean section = pieces.section(piece).isPresent();
        boolean strip = pieces.strip(piece).isPresent();
        boolean testBlank = pieces.testBlank(piece).isPresent();
        boolean offcut = pieces.offcut(piece).isPresent();
        boolean right = switch (step.does()) {
            case BREAKDOWN -> board;
            case MILL, STRAIGHTEN -> section || testBlank;
            case TEST -> testBlank;
            case RIP -> section;
            case CHECK, SQUARE, BLANK -> strip;
            case TRIM -> board || section || strip || offcut;
        };
        String due = switch (step.does()) {
            case BREAKDOWN -> "board";
            case MILL, STRAIGHTEN -> "section or test blank";
            case TEST -> "test blank";
            case RIP -> "section";
            case CHECK, SQUARE, BLANK -> "strip";
            case TRIM -> "board, section, strip or offcut";
        };
        if (!right)
            add(step, "a " + Words.of(step.does()) + " of " + piece + ", which is no " + due + " of this plan.");
    }

    /** Tests, rips and checks are done at a rip setting; nothing else is. */
    private void namesItsSetting(Step step) {
        boolean due = step.does() == Step.Does.TEST || step.does() == Step.Does.RIP || step.does() == Step.Does.CHECK;
        if (step.setting().isEmpty()) {
            if (due) add(step, "a " + Words.of(step.does()) + " without a rip setting.");
            return;
        }
        String setting = step.setting().get();
        if (!due) add(step, "a " + Words.of(step.does()) + " at rip setting " + setting + "; it needs none.");
        else if (pieces.setting(setting).isEmpty())
            add(step, "a " + Words.of(step.does()) + " at rip setting " + setting + ", which is not listed.");
    }

    /** Only blanks are cut at a stop, and only those without one say what they could spare. */
    private void stopsAndSparesAreForBlanks(Step step) {
        if (step.stop().isPresent() && step.does() != Step.Does.BLANK)
            add(step, "a " + Words.of(step.does()) + " at a stop; only blanks are cut at one.");
        if (step.spare().isPresent()
                && (step.does() != Step.Does.BLANK || step.stop().isPresent()))
            add(step, "it says what is to spare; only a blank of a fitted part does.");
    }

    private void makesSomethingOrNothing(Step step) {
        boolean nothing = switch (step.does()) {
            case MILL, STRAIGHTEN, TEST, CHECK, SQUARE -> true;
            case BREAKDOWN, RIP, BLANK, TRIM -> false;
        };
        if (nothing && !step.makes().isEmpty())
            add(
                    step,
                    "a " + Words.of(step.does()) + " makes " + String.join(", ", step.makes()) + "; it makes nothing.");
        if (step.does() == Step.Does.RIP || step.does() == Step.Does.BLANK) {
            if (step.makes().isEmpty()) add(step, "a " + Words.of(step.does()) + " that makes nothing.");
        }
    }
}
