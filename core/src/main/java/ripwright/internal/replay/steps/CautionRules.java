package ripwright.internal.replay.steps;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import ripwright.internal.replay.Findings;
import ripwright.internal.replay.PlacedBlank;
import ripwright.internal.replay.PlacedStrip;
import ripwright.internal.replay.ReplayIndex;
import ripwright.internal.replay.StepIndex;
import ripwright.internal.replay.Tolerance;
import ripwright.measure.Length;
import ripwright.plan.Caution;

/** The rules for cautions: they are about steps there are, and what is under a limit of the saw has one. */
public final class CautionRules {
    private final ReplayIndex pieces;
    private final StepIndex steps;
    private final Findings findings;

    public CautionRules(ReplayIndex pieces, StepIndex steps, Findings findings) {
        this.pieces = pieces;
        this.steps = steps;
        this.findings = findings;
    }

    public void check() {
        Set<Integer> cautioned = new HashSet<>();
        for (Caution caution : pieces.plan().cautions()) {
            if (caution.text().isBlank()) findings.add("plan", "5.cautions", "a caution says nothing.");
            for (int n : caution.steps())
                if (n < 1 || n > steps.size())
                    findings.add(
                            "plan",
                            "5.cautions",
                            "\"" + caution.text() + "\" is about step " + n + "; the plan has " + steps.size() + ".");
            cautioned.addAll(caution.steps());
        }
        narrowStripsHaveOne(cautioned);
        shortBlanksHaveOne(cautioned);
    }

    /** A strip under the narrowest rip comes with a caution at its rip. */
    private void narrowStripsHaveOne(Set<Integer> cautioned) {
        Length narrowest = pieces.job().saw().narrowestRip().orElse(Length.ZERO);
        for (PlacedStrip strip : pieces.strips())
            if (!strip.board().ripped() && Tolerance.less(strip.width(), narrowest.nanometers()))
                needsOne(
                        strip.id(),
                        "at " + findings.say(strip.width()) + " it is under the narrowest rip of "
                                + findings.say(narrowest),
                        cautioned);
    }

    /** A blank under the shortest crosscut comes with a caution at its cut. */
    private void shortBlanksHaveOne(Set<Integer> cautioned) {
        Length shortest = pieces.job().saw().shortestCrosscut().orElse(Length.ZERO);
        for (PlacedBlank blank : pieces.blanks())
            if (Tolerance.less(blank.span().length(), shortest.nanometers()))
                needsOne(
                        blank.id(),
                        "at " + findings.say(blank.span().length()) + " it is under the shortest crosscut of "
                                + findings.say(shortest),
                        cautioned);
    }

    private void needsOne(String piece, String why, Set<Integer> cautioned) {
        List<Integer> makers = steps.makersOf(piece);
        if (makers.isEmpty()) return; // the rules for making complain
        int n = steps.step(makers.get(0)).n();
        if (!cautioned.contains(n))
            findings.add(piece, "3.limits", why + "; no caution is about step " + n + ", which cuts it.");
    }
}
