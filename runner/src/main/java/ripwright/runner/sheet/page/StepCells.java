package ripwright.runner.sheet.page;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import ripwright.plan.Step;

/** The cells that steps have in common. */
final class StepCells {
    private final Set<Integer> minded;

    /** Those there is a caution about are {@code minded}. */
    StepCells(Set<Integer> minded) {
        this.minded = Set.copyOf(minded);
    }

    /** A step's number, marked when there is a caution about it. */
    Cell number(Step step) {
        Cell.Kind kind = minded.contains(step.n()) ? Cell.Kind.MINDED_STEP : Cell.Kind.STEP;
        return Cell.of(kind, Integer.toString(step.n()));
    }

    /** The numbers of steps that share a row, from the first to the last. */
    Cell numbers(List<Step> steps) {
        Step last = steps.get(steps.size() - 1);
        if (steps.size() == 1) return number(last);
        boolean mind = steps.stream().map(Step::n).anyMatch(minded::contains);
        return Cell.of(
                mind ? Cell.Kind.MINDED_STEP : Cell.Kind.STEP, steps.get(0).n() + "\u2013" + last.n());
    }

    static Cell tick(Step step, String piece) {
        return Cell.tick(tick(step, piece, ""));
    }

    static Cell.Tick tick(Step step, String piece, String text) {
        Optional<String> made = Optional.of(piece).filter(step.makes()::contains);
        return new Cell.Tick("Step " + step.n() + ": " + piece, text, OptionalInt.of(step.n()), made);
    }
}
