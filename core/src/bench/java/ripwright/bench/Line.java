package ripwright.bench;

import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;

/**
 * What came of a row: medians over its jobs.
 *
 * @param row the row
 * @param outcomes what came of each of its jobs
 */
record Line(Row row, List<Outcome> outcomes) {
    /** Keeps a copy of the list. */
    Line {
        outcomes = List.copyOf(outcomes);
    }

    /** The middle of a figure, or the mean of the two in the middle. */
    double median(ToDoubleFunction<Outcome> figure) {
        double[] sorted = outcomes.stream().mapToDouble(figure).sorted().toArray();
        return (sorted[(sorted.length - 1) / 2] + sorted[sorted.length / 2]) / 2;
    }

    /** How many were proven. */
    long proven() {
        return outcomes.stream().filter(outcome -> outcome.cost().proven()).count();
    }

    /** The middle of the best costs known; absent where there is none. */
    Optional<Double> known() {
        if (outcomes.stream().anyMatch(outcome -> outcome.known().isEmpty())) return Optional.empty();
        return Optional.of(median(outcome -> Outcome.number(outcome.known())));
    }
}
