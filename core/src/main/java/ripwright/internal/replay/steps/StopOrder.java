package ripwright.internal.replay.steps;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import ripwright.bill.Part;
import ripwright.internal.replay.Findings;
import ripwright.internal.replay.PlacedBlank;
import ripwright.internal.replay.ReplayIndex;
import ripwright.internal.replay.StepIndex;
import ripwright.internal.replay.Tolerance;
import ripwright.measure.Length;
import ripwright.plan.Step;
import ripwright.plan.Step.Does;

/** The rules for the order at the crosscut saw: what is not cut, stops longest first, then fitted parts one by one. */
public final class StopOrder {
    private static final String RULE = "5.steps";

    private final ReplayIndex pieces;
    private final StepIndex steps;
    private final Findings findings;

    public StopOrder(ReplayIndex pieces, StepIndex steps, Findings findings) {
        this.pieces = pieces;
        this.steps = steps;
        this.findings = findings;
    }

    public void check() {
        whatIsNotCutComesFirst();
        eachStopOnceLongestFirst();
        fittedPartsComeLastInTheOrderOfTheBill();
        for (int i = 0; i < steps.size(); i++) {
            if (steps.step(i).does() != Does.BLANK) continue;
            if (steps.step(i).stop().isPresent())
                allBlanksOfOneStop(i, steps.step(i).stop().get());
            else oneFittedBlank(i);
        }
    }

    /** A blank as long as its strip comes before the first stop; that of a fitted part comes in its turn. */
    private void whatIsNotCutComesFirst() {
        int first = -1; // step at a stop, or of a fitted part
        for (int i = 0; i < steps.size(); i++) {
            if (steps.step(i).does() != Does.BLANK) continue;
            if (!isNotCut(steps.step(i))) {
                if (first < 0) first = i;
            } else if (first >= 0)
                findings.add(
                        "step " + steps.step(i).n(),
                        RULE,
                        "what is not cut comes before the first stop; " + steps.name(first) + " comes before it.");
        }
    }

    /** At neither saw nor stop, and not fitted. */
    private boolean isNotCut(Step step) {
        return step.saw().isEmpty()
                && step.stop().isEmpty()
                && !step.makes().isEmpty()
                && step.makes().stream()
                        .allMatch(made -> pieces.blank(made)
                                .filter(blank -> blank.asLongAsItsStrip() && !isFitted(blank))
                                .isPresent());
    }

    private void eachStopOnceLongestFirst() {
        Optional<Length> current = Optional.empty();
        for (int i = 0; i < steps.size(); i++) {
            Step step = steps.step(i);
            if (step.does() != Does.BLANK || step.stop().isEmpty()) continue;
            Length stop = step.stop().get();
            if (current.isPresent() && stop.exceeds(current.get()))
                findings.add(
                        "step " + step.n(),
                        RULE,
                        "the stop goes out to " + findings.say(stop) + " after " + findings.say(current.get())
                                + "; each stop comes once, longest first.");
            else current = Optional.of(stop);
        }
    }

    private void fittedPartsComeLastInTheOrderOfTheBill() {
        int fitted = -1; // the first step that cuts a fitted part
        int line = -1;
        for (int i = 0; i < steps.size(); i++) {
            Step step = steps.step(i);
            if (step.does() != Does.BLANK || isNotCut(step)) continue;
            if (step.stop().isPresent()) {
                if (fitted >= 0)
                    findings.add(
                            "step " + step.n(),
                            RULE,
                            "it cuts at a stop after " + steps.name(fitted) + "; fitted parts come last.");
                continue;
            }
            if (fitted < 0) fitted = i;
            for (String made : step.makes()) {
                Optional<Integer> next = pieces.blank(made)
                        .flatMap(blank -> pieces.lineOfBill(blank.blank().part()));
                if (next.isPresent() && next.get() < line)
                    findings.add(
                            made,
                            RULE,
                            steps.name(i) + " cuts it after "
                                    + pieces.job().parts().get(line).name()
                                    + ", which the bill has later; fitted parts come in the order of the bill.");
                line = Math.max(line, next.orElse(line));
            }
        }
    }

    /** A step at a stop makes all of its strip's blanks of that length, but for those of fitted parts. */
    private void allBlanksOfOneStop(int place, Length stop) {
        Step step = steps.step(place);
        for (String id : new LinkedHashSet<>(step.makes())) {
            Optional<PlacedBlank> blank = pieces.blank(id);
            if (blank.isEmpty()) continue;
            Length length = blank.get().blank().length();
            if (!Tolerance.same(length, stop))
                findings.add(
                        id,
                        RULE,
                        steps.name(place) + " cuts it at a stop of " + findings.say(stop) + "; it is "
                                + findings.say(length) + " long.");
            if (isFitted(blank.get()))
                findings.add(
                        id, RULE, steps.name(place) + " cuts it at a stop; fitted parts are cut one by one, without.");
        }
        for (int before : steps.all(Does.BLANK, step.piece()))
            if (before < place && steps.step(before).stop().equals(step.stop()))
                findings.add(
                        "step " + step.n(),
                        RULE,
                        "it cuts " + step.piece() + " at a stop of " + findings.say(stop) + ", as " + steps.name(before)
                                + " does; one step makes all blanks of a strip at a stop.");
    }

    private boolean isFitted(PlacedBlank blank) {
        return pieces.part(blank.blank().part()).map(Part::fitted).orElse(false);
    }

    /** Without a stop, one blank of a fitted part is cut, and what its strip could spare is said. */
    private void oneFittedBlank(int place) {
        Step step = steps.step(place);
        List<PlacedBlank> blanks = step.makes().stream()
                .map(pieces::blank)
                .flatMap(Optional::stream)
                .toList();
        if (blanks.size() != 1)
            findings.add(
                    "step " + step.n(),
                    RULE,
                    "it cuts " + blanks.size() + " blanks without a stop; fitted parts are cut one a step.");
        for (PlacedBlank blank : blanks) {
            if (isNotCut(step)) {
                if (step.spare().isPresent())
                    findings.add(
                            blank.id(),
                            RULE,
                            steps.name(place) + " says what is to spare; only that of a fitted part does.");
            } else if (!isFitted(blank))
                findings.add(
                        blank.id(),
                        RULE,
                        steps.name(place) + " cuts it without a stop; "
                                + blank.blank().part() + " is not fitted.");
            else if (step.spare().isEmpty())
                findings.add(blank.id(), RULE, steps.name(place) + " does not say what its strip could spare.");
        }
    }
}
