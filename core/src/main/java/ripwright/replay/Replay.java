package ripwright.replay;

import java.util.List;
import ripwright.internal.replay.Findings;
import ripwright.internal.replay.IdRules;
import ripwright.internal.replay.ReplayIndex;
import ripwright.internal.replay.StepIndex;
import ripwright.internal.replay.figures.BillRules;
import ripwright.internal.replay.figures.FigureRules;
import ripwright.internal.replay.layout.BlankRules;
import ripwright.internal.replay.layout.ReadingRules;
import ripwright.internal.replay.layout.SectionRules;
import ripwright.internal.replay.layout.StripRules;
import ripwright.internal.replay.leftovers.OffcutRules;
import ripwright.internal.replay.leftovers.WhatIsLeft;
import ripwright.internal.replay.steps.CautionRules;
import ripwright.internal.replay.steps.MakingRules;
import ripwright.internal.replay.steps.PreparingRules;
import ripwright.internal.replay.steps.RipOrder;
import ripwright.internal.replay.steps.SpareRule;
import ripwright.internal.replay.steps.SquaringRules;
import ripwright.internal.replay.steps.StepForm;
import ripwright.internal.replay.steps.StopOrder;
import ripwright.internal.replay.tests.FewestTestBlanks;
import ripwright.internal.replay.tests.SettingRules;
import ripwright.internal.replay.tests.TestBlankRules;
import ripwright.job.Job;
import ripwright.plan.Plan;

/**
 * Re-enacts a plan on its job's boards and holds it against every rule of the contract: the one door of this package.
 * It takes nothing over from what made the plan, goes on after a fault, and never throws over what a plan says. Keeps no state;
 * safe on any thread. It computes to the end: an interruption is not looked at.
 */
public final class Replay {
    private Replay() {}

    /** All that does not hold: layout first, then leftovers, steps and figures; empty when the plan holds. Throws nothing. */
    public static List<Fault> faults(Job job, Plan plan) {
        Findings findings = new Findings(job.units());
        ReplayIndex pieces = new ReplayIndex(job, plan);
        new IdRules(pieces, findings).check();
        new SectionRules(pieces, findings).check();
        new ReadingRules(pieces, findings).check();
        new StripRules(pieces, findings).check();
        new BlankRules(pieces, findings).check();
        new BillRules(pieces, findings).check();

        WhatIsLeft left = new WhatIsLeft(pieces, findings);
        new OffcutRules(pieces, left, findings).check();
        new SettingRules(pieces, findings).check();
        new TestBlankRules(pieces, left, findings).check();
        new FewestTestBlanks(pieces, findings).check();

        StepIndex steps = new StepIndex(plan);
        new StepForm(pieces, findings).check();
        new MakingRules(pieces, steps, left, findings).check();
        new PreparingRules(pieces, steps, left, findings).check();
        new RipOrder(pieces, steps, findings).check();
        new SquaringRules(pieces, steps, findings).check();
        new StopOrder(pieces, steps, findings).check();
        new SpareRule(pieces, steps, findings).check();
        new CautionRules(pieces, steps, findings).check();

        new FigureRules(pieces, left, findings).check();
        return findings.faults().stream()
                .map(found -> new Fault(found.piece(), found.what(), found.rule()))
                .toList();
    }

    /**
     * Lets a plan pass that holds.
     *
     * @throws ReplayException when it does not, with all its faults
     */
    public static void require(Job job, Plan plan) {
        List<Fault> faults = faults(job, plan);
        if (!faults.isEmpty()) throw new ReplayException(faults);
    }
}
