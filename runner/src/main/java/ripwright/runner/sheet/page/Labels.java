package ripwright.runner.sheet.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import ripwright.bill.Part;
import ripwright.plan.Plan;
import ripwright.plan.Step;
import ripwright.runner.sheet.drawing.Isolated;

/** A label for every blank, in the order they are cut. */
final class Labels {
    private final Plan plan;
    private final Pieces pieces;
    private final Tape tape;

    Labels(Plan plan, Pieces pieces, Tape tape) {
        this.plan = plan;
        this.pieces = pieces;
        this.tape = tape;
    }

    List<Label> all() {
        List<Label> labels = new ArrayList<>();
        for (Step step : plan.steps())
            for (String id : step.makes()) pieces.blank(id).ifPresent(blank -> labels.add(label(step, blank)));
        return labels;
    }

    private Label label(Step step, Pieces.BlankOf blank) {
        String name = blank.blank().part();
        Optional<Part> part = pieces.part(name);
        List<String> remarks = new ArrayList<>();
        remarks.add("Step " + step.n() + ", strip "
                + Isolated.name(blank.strip().strip().id()) + ", board "
                + Isolated.name(blank.strip().section().board()));
        part.filter(one -> !one.tenon().sum().isZero())
                .ifPresent(one -> remarks.add(tape.full(one.length()) + " between shoulders"));
        part.flatMap(this::toDo).ifPresent(remarks::add);
        String size = part.map(one -> tape.size(one.thickness(), one.width(), one.finishedLength()) + " "
                        + tape.units().symbol())
                .orElse("");
        return new Label(blank.blank().id(), name, size, remarks);
    }

    /** What is still on it when it leaves the saw. */
    private Optional<String> toDo(Part part) {
        List<String> over = new ArrayList<>();
        if (!part.sneakUp().isZero()) over.add(tape.full(part.sneakUp()) + " long");
        if (!part.edgeAllowance().isZero()) over.add(tape.full(part.edgeAllowance()) + " wide");
        if (part.fitted()) return Optional.of("Fit to its opening" + (over.isEmpty() ? "." : ": over by " + and(over)));
        return over.isEmpty() ? Optional.empty() : Optional.of("Over by " + and(over));
    }

    private static String and(List<String> things) {
        return String.join(" and ", things) + ".";
    }
}
