package ripwright.internal.replay.steps;

import java.util.Optional;
import ripwright.bill.Part;
import ripwright.internal.replay.Findings;
import ripwright.internal.replay.PlacedBlank;
import ripwright.internal.replay.PlacedStrip;
import ripwright.internal.replay.ReplayIndex;
import ripwright.internal.replay.Tolerance;
import ripwright.plan.Step;
import ripwright.stock.Defect;

/**
 * What the strip of a fitted part could still spare for it: the free wood beside it, both sides together, up to the
 * strip's ends, to a defect that bars the part, or to a kerf beside the next blank. Wood that test blanks took is not
 * free.
 */
public final class SpareRule {
    private final ReplayIndex pieces;
    private final Findings findings;

    public SpareRule(ReplayIndex pieces, Findings findings) {
        this.pieces = pieces;
        this.findings = findings;
    }

    public void check() {
        for (Step step : pieces.plan().steps()) {
            if (step.does() != Step.Does.BLANK
                    || step.spare().isEmpty()
                    || step.stop().isPresent()) continue;
            for (String made : step.makes()) {
                Optional<PlacedBlank> blank = pieces.blank(made);
                Optional<Part> part =
                        blank.flatMap(placed -> pieces.part(placed.blank().part()));
                if (part.isPresent()) spareIsTheFreeWoodBeside(blank.get(), part.get(), step);
            }
        }
    }

    private void spareIsTheFreeWoodBeside(PlacedBlank blank, Part part, Step step) {
        long spare = step.spare().orElseThrow().nanometers();
        long most = Math.max(0, blank.from() - freeFrom(blank, part)) + Math.max(0, freeTo(blank, part) - blank.to());
        long least = Math.max(0, most - takenByTestBlanks(blank.strip()));
        if (Tolerance.less(spare, least) || Tolerance.more(spare, most))
            findings.add(
                    blank.id(),
                    "5.steps",
                    "step " + step.n() + " says that " + findings.say(spare) + " is to spare; beside it "
                            + findings.say(most) + " is free.");
    }

    private long freeFrom(PlacedBlank blank, Part part) {
        long free = blank.strip().section().from();
        for (PlacedBlank other : blank.strip().blanks())
            if (!other.id().equals(blank.id()) && other.from() <= blank.from())
                free = Math.max(free, other.to() + pieces.crosscutKerf());
        for (Defect defect : blank.board().defects())
            if (blank.barredAcross(defect, part) && !Tolerance.more(defect.to().nanometers(), blank.from()))
                free = Math.max(free, defect.to().nanometers());
        return free;
    }

    private long freeTo(PlacedBlank blank, Part part) {
        long free = blank.strip().section().to();
        for (PlacedBlank other : blank.strip().blanks())
            if (!other.id().equals(blank.id()) && other.from() > blank.from())
                free = Math.min(free, other.from() - pieces.crosscutKerf());
        for (Defect defect : blank.board().defects())
            if (blank.barredAcross(defect, part)
                    && !Tolerance.less(defect.from().nanometers(), blank.to()))
                free = Math.min(free, defect.from().nanometers());
        return free;
    }

    /**
     * A plan does not say where along a strip its test blanks were cut, so what they took may lie beside the blank or
     * not.
     */
    private long takenByTestBlanks(PlacedStrip strip) {
        long each = pieces.job().testRip().length().nanometers() + pieces.crosscutKerf();
        return each
                * pieces.plan().testBlanks().stream()
                        .filter(test -> test.from().equals(strip.id()))
                        .count();
    }
}
