package ripwright.internal.sequence;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import ripwright.internal.pieces.CutPieces;
import ripwright.internal.pieces.SectionCut;
import ripwright.internal.pieces.StripCut;
import ripwright.internal.testwood.TestPlan;
import ripwright.plan.Setting;

/**
 * The rips, setting by setting from the widest: test blanks first needed there are cut off what has been ripped already,
 * one is tested, the first strip is ripped alone and measured, then the rest are.
 */
public final class RipSteps {
    private final CutPieces cutting;
    private final TestPlan tests;
    private final ListedOffcuts offcuts;
    private final StepList steps;

    RipSteps(CutPieces cutting, TestPlan tests, ListedOffcuts offcuts, StepList steps) {
        this.cutting = cutting;
        this.tests = tests;
        this.offcuts = offcuts;
        this.steps = steps;
    }

    void write() {
        List<Setting> settings = tests.settings();
        List<List<FirstStrip.Candidate>> rips = rips();
        for (int i = 0; i < settings.size(); i++) {
            cutTestBlanks(i);
            Setting setting = settings.get(i);
            setting.test().ifPresent(test -> steps.test(setting.id(), test.blank()));
            rip(setting.id(), rips.get(i));
        }
    }

    /** The strips of every setting, in the order of the job and as they come off their sections. */
    private List<List<FirstStrip.Candidate>> rips() {
        List<List<FirstStrip.Candidate>> rips = new ArrayList<>();
        for (int i = 0; i < cutting.settings().size(); i++) rips.add(new ArrayList<>());
        for (SectionCut section : cutting.sections())
            for (StripCut strip : section.strips()) {
                int setting = cutting.settingOf(strip);
                if (setting >= 0) rips.get(setting).add(new FirstStrip.Candidate(section, strip));
            }
        return rips;
    }

    private void cutTestBlanks(int setting) {
        Map<String, List<String>> blanks = new LinkedHashMap<>();
        for (TestPlan.ProvingBlank blank : tests.blanks())
            if (blank.first() == setting && !blank.fromBoard())
                blanks.computeIfAbsent(blank.blank().from(), from -> new ArrayList<>())
                        .add(blank.id());
        blanks.forEach(steps::trim);
    }

    private void rip(String setting, List<FirstStrip.Candidate> strips) {
        Map<SectionCut, List<StripCut>> bySection = new LinkedHashMap<>();
        for (FirstStrip.Candidate one : strips)
            bySection
                    .computeIfAbsent(one.section(), section -> new ArrayList<>())
                    .add(one.strip());
        if (strips.size() > 1) {
            List<FirstStrip.Candidate> next = bySection.entrySet().stream()
                    .map(entry -> new FirstStrip.Candidate(
                            entry.getKey(), entry.getValue().get(0)))
                    .toList();
            FirstStrip.Candidate first = new FirstStrip(next).choice();
            rip(setting, first.section(), List.of(first.strip()));
            steps.check(setting, first.strip().id());
            bySection.computeIfPresent(first.section(), (section, those) -> those.subList(1, those.size()));
        }
        bySection.forEach((section, those) -> {
            if (!those.isEmpty()) rip(setting, section, those);
        });
    }

    private void rip(String setting, SectionCut section, List<StripCut> strips) {
        List<String> makes = new ArrayList<>();
        for (StripCut strip : strips) makes.add(strip.id());
        if (strips.get(strips.size() - 1).lastOfSection()) makes.addAll(offcuts.of(section.id()));
        steps.rip(setting, section.id(), makes);
    }
}
