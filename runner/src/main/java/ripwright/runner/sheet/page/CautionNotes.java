package ripwright.runner.sheet.page;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import ripwright.plan.Caution;
import ripwright.plan.Plan;
import ripwright.plan.Step;

/** What to mind, told where it matters: at the start what is about all steps, at each piece of work what is about its own. */
final class CautionNotes {
    private static final String MANUALS_FIRST =
            "The saws' manuals, local rules and licensed practice go before this sheet; if a step goes against them, leave it.";

    private final List<Caution> cautions;

    CautionNotes(Plan plan) {
        cautions = plan.cautions();
    }

    /** Those about all steps; at the least, what goes before any plan. */
    List<String> general() {
        List<String> notes = cautions.stream()
                .filter(caution -> caution.steps().isEmpty())
                .map(Caution::text)
                .toList();
        return notes.isEmpty() ? List.of(MANUALS_FIRST) : notes;
    }

    /** Those about some of these steps, with the numbers of those. */
    List<String> about(List<Step> steps) {
        Set<Integer> numbers = steps.stream().map(Step::n).collect(Collectors.toSet());
        return cautions.stream()
                .filter(caution -> caution.steps().stream().anyMatch(numbers::contains))
                .map(caution -> "! "
                        + StepNumbers.of(caution.steps().stream()
                                .filter(numbers::contains)
                                .toList())
                        + ": " + caution.text())
                .toList();
    }
}
