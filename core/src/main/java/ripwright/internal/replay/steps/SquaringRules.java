package ripwright.internal.replay.steps;

import java.util.List;
import java.util.OptionalLong;
import java.util.stream.IntStream;
import ripwright.internal.replay.Findings;
import ripwright.internal.replay.PlacedStrip;
import ripwright.internal.replay.ReplayIndex;
import ripwright.internal.replay.StepIndex;
import ripwright.internal.replay.Tolerance;
import ripwright.internal.replay.Words;
import ripwright.plan.Step.Does;

/** The rules for strips whose ends were left long: each is cut off square where its first blank starts. */
public final class SquaringRules {
    private static final String RULE = "5.steps";

    private final ReplayIndex pieces;
    private final StepIndex steps;
    private final Findings findings;

    public SquaringRules(ReplayIndex pieces, StepIndex steps, Findings findings) {
        this.pieces = pieces;
        this.steps = steps;
        this.findings = findings;
    }

    public void check() {
        pieces.strips().forEach(this::squaredWhereItsFirstBlankStarts);
        allSquaringComesBeforeTheFirstBlank();
    }

    /** One step for every strip whose first blank does not start at the strip's end; none without anything left over. */
    private void squaredWhereItsFirstBlankStarts(PlacedStrip strip) {
        int times = steps.all(Does.SQUARE, strip.id()).size();
        long cutOff = pieces.over() > 0 ? beforeTheFirstBlank(strip) : 0;
        boolean open = Math.abs(cutOff - Tolerance.NANOMETERS) <= Tolerance.OF_PRINT; // by a plan's decimals
        if (open && times <= 1) return;
        int due = Tolerance.more(cutOff, 0) ? 1 : 0;
        if (times != due)
            findings.add(
                    strip.id(), RULE, "it is squared in " + Words.count(times, "step") + "; " + Words.due(due) + ".");
    }

    private static long beforeTheFirstBlank(PlacedStrip strip) {
        OptionalLong first = strip.firstBlankFrom();
        return first.isPresent() ? first.getAsLong() - strip.section().from() : 0;
    }

    private void allSquaringComesBeforeTheFirstBlank() {
        List<Integer> blanks = IntStream.range(0, steps.size())
                .filter(i -> steps.step(i).does() == Does.BLANK)
                .boxed()
                .toList();
        if (blanks.isEmpty()) return;
        int first = blanks.get(0);
        for (int i = first + 1; i < steps.size(); i++)
            if (steps.step(i).does() == Does.SQUARE)
                findings.add(
                        steps.step(i).piece(),
                        RULE,
                        steps.name(i) + " squares it after " + steps.name(first)
                                + " has cut blanks; all squaring comes before the first.");
    }
}
