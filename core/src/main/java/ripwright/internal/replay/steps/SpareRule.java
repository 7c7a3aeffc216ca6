package ripwright.internal.replay.steps;

import java.util.Optional;
import java.util.OptionalInt;
import ripwright.bill.Part;
import ripwright.internal.replay.Findings;
import ripwright.internal.replay.PlacedBlank;
import ripwright.internal.replay.PlacedStrip;
import ripwright.internal.replay.ReplayIndex;
import ripwright.internal.replay.StepIndex;
import ripwright.internal.replay.Tolerance;
import ripwright.plan.Step;

/**
 * What the strip of a fitted part could still spare for it. At least that is the free wood beside it, as it lies; at most
 * what it would be if the blanks to come moved along. Wood that test blanks took is not free.
 */
public final class SpareRule {
    private final ReplayIndex pieces;
    private final StepIndex steps;
    private final Findings findings;

    public SpareRule(ReplayIndex pieces, StepIndex steps, Findings findings) {
        this.pieces = pieces;
        this.steps = steps;
        this.findings = findings;
    }

    public void check() {
        for (int place = 0; place < steps.size(); place++) {
            Step step = steps.step(place);
            if (step.does() != Step.Does.BLANK
                    || step.spare().isEmpty()
                    || step.stop().isPresent()) continue;
            for (String made : step.makes()) {
                Optional<PlacedBlank> blank = pieces.blank(made);
                Optional<Part> part =
                        blank.flatMap(placed -> pieces.part(placed.blank().part()));
                if (part.isPresent()) spareIsTheFreeWoodAround(blank.get(), part.get(), place);
            }
        }
    }

    private void spareIsTheFreeWoodAround(PlacedBlank blank, Part part, int place) {
        long spare = steps.step(place).spare().orElseThrow().nanometers();
        RoomToGrow room = new RoomToGrow(blank, part, pieces);
        long beside = room.beside();
        long least = Math.max(0, beside - takenByTestBlanks(blank.strip()));
        long most = Math.max(beside, room.around(other -> isToCome(other, place)));
        if (!Tolerance.less(spare, least) && !Tolerance.more(spare, most)) return;
        String moved =
                Tolerance.more(most, beside) ? ", and " + findings.say(most) + " were those to come moved along." : ".";
        findings.add(
                blank.id(),
                "5.steps",
                "step " + steps.step(place).n() + " says that " + findings.say(spare) + " is to spare; beside it "
                        + findings.say(beside) + " is free" + moved);
    }

    private boolean isToCome(PlacedBlank other, int place) {
        OptionalInt made = steps.firstMaker(other.id());
        return made.isEmpty() || made.getAsInt() > place;
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
