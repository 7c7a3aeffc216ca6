package ripwright.runner.sheet.place;

import static java.util.stream.Collectors.groupingBy;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import ripwright.plan.Offcut;
import ripwright.plan.Plan;
import ripwright.plan.Step;
import ripwright.plan.TestBlank;

/** Finds things in a plan: the step that makes a piece, and what is cut from the leftovers of a piece. */
final class PlanIndex {
    private final Map<String, Integer> making = new HashMap<>();
    private final Map<String, Integer> straightening = new HashMap<>();
    private final Map<String, List<TestBlank>> testBlanks;
    private final Map<String, List<Offcut>> offcuts;

    PlanIndex(Plan plan) {
        for (Step step : plan.steps()) {
            for (String id : step.makes()) making.putIfAbsent(id, step.n());
            if (step.does() == Step.Does.STRAIGHTEN) straightening.putIfAbsent(step.piece(), step.n());
        }
        testBlanks = plan.testBlanks().stream().collect(groupingBy(TestBlank::from));
        offcuts = plan.offcuts().stream().collect(groupingBy(Offcut::from));
    }

    /** The step that makes that piece; empty for a board. */
    OptionalInt making(String id) {
        return found(making, id);
    }

    /** The step that straightens that section; empty when none does. */
    OptionalInt straightening(String section) {
        return found(straightening, section);
    }

    private static OptionalInt found(Map<String, Integer> steps, String id) {
        return Optional.ofNullable(steps.get(id)).map(OptionalInt::of).orElseGet(OptionalInt::empty);
    }

    List<TestBlank> testBlanksFrom(String piece) {
        return testBlanks.getOrDefault(piece, List.of());
    }

    List<Offcut> offcutsFrom(String piece) {
        return offcuts.getOrDefault(piece, List.of());
    }
}
