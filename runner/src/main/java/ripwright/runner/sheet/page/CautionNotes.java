package ripwright.runner.sheet.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import ripwright.plan.Caution;
import ripwright.plan.Plan;
import ripwright.plan.Step;

/** What to mind, told where it matters: at the start what is about all steps, at each piece of work what is about its own. */
final class CautionNotes {
    private static final String MANUALS_FIRST =
            "The saws' manuals, local rules and licensed practice go before this sheet; if a step goes against them, leave it.";

    /**
     * @see "Out of line with blade and workpiece: a table-saw manual, p. 21; hands out of the line of the cut: OSHA, Woodworking
     *     eTool, Table Saws. Eyes and ears: carpentrypages.com, Push sticks; MakeIt Labs wiki, Jointer; what a guide to it
     *     covers: ASTM E3280-22. All seen in excerpts."
     */
    private static final String AT_ANY_SAW =
            "Stand out of line with the blade and the work, never behind a piece that may come back. Wear eye and ear"
                    + " protection, and a dust mask where no collector runs.";

    /**
     * @see "A kerf that closes: This Old House, technique for safe ripping (stop, wedge). A strip that springs: E. Wengert, woodweb
     *     (2007), drying stress, cut oversize, let rest, trim; rest between passes: Fine Woodworking forum."
     */
    private static final String AT_A_RIP =
            "If the kerf closes on the blade, stop the saw, wait until the blade stands, and put a wedge into the kerf before"
                    + " going on. If a strip or what stays springs out of straight, let it rest, straighten its edge again and"
                    + " rip again; tell the report what width is left.";

    /**
     * @see "Popular Woodworking, Crosscut short pieces without making missiles, and no. 168 (April 2008) p. 50: the keeper lies
     *     between stop and blade and is held, the offcut is free. No stop on the free end: a table-saw manual, p. 24."
     */
    private static final String AT_A_CROSSCUT =
            "At the crosscut saw short ends fall free: the piece that is kept lies against the stop and is held, never a loose"
                    + " end between stop and blade. Leave a fallen end until the blade stands.";

    private final Plan plan;
    private final Pieces pieces;

    CautionNotes(Plan plan, Pieces pieces) {
        this.plan = plan;
        this.pieces = pieces;
    }

    /** Those about all steps; at the least, what goes before any plan. */
    List<String> general() {
        List<String> notes = plan.cautions().stream()
                .filter(caution -> caution.steps().isEmpty())
                .map(Caution::text)
                .collect(Collectors.toCollection(ArrayList::new));
        if (notes.isEmpty()) notes.add(MANUALS_FIRST);
        if (has(step -> step.saw().isPresent())) notes.add(AT_ANY_SAW);
        if (has(step -> step.does() == Step.Does.RIP)) notes.add(AT_A_RIP);
        if (has(step -> step.saw().filter(Step.Saw.CROSSCUT::equals).isPresent())) notes.add(AT_A_CROSSCUT);
        return notes;
    }

    private boolean has(Predicate<Step> which) {
        return plan.steps().stream().anyMatch(which);
    }

    /** Those about some of these steps, with the numbers of those. */
    List<String> about(List<Step> steps) {
        Set<Integer> numbers = steps.stream().map(Step::n).collect(Collectors.toSet());
        List<String> notes = new ArrayList<>();
        for (Caution caution : plan.cautions()) {
            List<Integer> here =
                    about(caution).stream().filter(numbers::contains).toList();
            if (here.isEmpty()) continue;
            String which = here.size() == numbers.size() ? "All steps" : StepNumbers.of(here);
            notes.add("! " + which + ": " + caution.text());
        }
        return notes;
    }

    /** The numbers of the steps there is a caution about. */
    Set<Integer> minded() {
        return plan.cautions().stream()
                .flatMap(caution -> about(caution).stream())
                .collect(Collectors.toSet());
    }

    /** The steps of a caution. One about straightening alone is not about edges that are straight already. */
    private List<Integer> about(Caution caution) {
        List<Step> steps = plan.steps().stream()
                .filter(step -> caution.steps().contains(step.n()))
                .toList();
        boolean straightening = steps.stream().allMatch(step -> step.does() == Step.Does.STRAIGHTEN);
        return steps.stream()
                .filter(step -> !straightening || !pieces.straightAlready(step.piece()))
                .map(Step::n)
                .toList();
    }
}
