package ripwright.runner.sheet.page;

import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Collectors;
import ripwright.plan.Plan;
import ripwright.plan.Step;

/** The cells that steps have in common. */
final class StepCells {
    private final Set<Integer> minded;

    StepCells(Plan plan) {
        minded = plan.cautions().stream()
                .flatMap(caution -> caution.steps().stream())
                .collect(Collectors.toSet());
    }

    /** A step's number, marked when there is a caution about it. */
    Cell number(Step step) {
        Cell.Kind kind = minded.contains(step.n()) ? Cell.Kind.MINDED_STEP : Cell.Kind.STEP;
        return Cell.of(kind, Integer.toString(step.n()));
    }

    static Cell tick(Step step, String piece) {
        return Cell.tick(tick(step, piece, ""));
    }

    static Cell.Tick tick(Step step, String piece, String text) {
        return new Cell.Tick("Step " + step.n() + ": " + piece, text, OptionalInt.of(step.n()));
    }
}
