package ripwright.internal.replay.steps;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import ripwright.internal.replay.Findings;
import ripwright.internal.replay.PlacedStrip;
import ripwright.internal.replay.ReplayIndex;
import ripwright.internal.replay.StepIndex;
import ripwright.internal.replay.TestedSettings;
import ripwright.internal.replay.Words;
import ripwright.plan.Setting;
import ripwright.plan.Step;
import ripwright.plan.Step.Does;
import ripwright.plan.Step.Saw;
import ripwright.plan.TestBlank;

/** The rules for the order at the table saw: settings widest first, each tested, its first strip checked. */
public final class RipOrder {
    private static final String RULE = "5.steps";

    private final ReplayIndex pieces;
    private final StepIndex steps;
    private final Findings findings;
    private final TestedSettings tested;
    private final Map<String, Integer> stripsAt = new HashMap<>(); // setting -> how many strips it makes

    public RipOrder(ReplayIndex pieces, StepIndex steps, Findings findings) {
        this.pieces = pieces;
        this.steps = steps;
        this.findings = findings;
        this.tested = new TestedSettings(pieces);
        for (PlacedStrip strip : pieces.strips())
            strip.strip().setting().ifPresent(setting -> stripsAt.merge(setting, 1, Integer::sum));
    }

    public void check() {
        eachSettingOnceWidestFirst();
        stripsComeOffInTurn();
        for (Setting setting : pieces.plan().settings()) {
            testedDirectlyBeforeItsFirstRip(setting);
            checkedDirectlyAfterItsFirstRip(setting);
        }
        testBlanksExistBeforeTheSettingsTheyProve();
    }

    /** Each setting once, widest first: in the order the settings are listed, and never back. */
    private void eachSettingOnceWidestFirst() {
        Map<String, Integer> places = new HashMap<>(); // of settings in the plan's list
        for (Setting setting : pieces.plan().settings()) places.putIfAbsent(setting.id(), places.size());
        int current = -1;
        String currentId = "";
        Set<String> complainedOf = new HashSet<>();
        for (int i = 0; i < steps.size(); i++) {
            Step step = steps.step(i);
            if (step.does() != Does.RIP && step.does() != Does.TEST) continue;
            String setting = step.setting().orElse("");
            Integer place = places.get(setting);
            if (place == null) continue;
            if (place < current && complainedOf.add(setting))
                findings.add(
                        setting,
                        RULE,
                        steps.name(i) + " sets the fence back to it after " + currentId
                                + "; each setting comes once, widest first.");
            if (place > current) {
                current = place;
                currentId = setting;
            }
        }
    }

    /** A rip makes the next strip or strips of its section. */
    private void stripsComeOffInTurn() {
        Map<String, Integer> off = new HashMap<>(); // section -> how many strips are off
        for (int i = 0; i < steps.size(); i++) {
            Step step = steps.step(i);
            if (step.does() != Does.RIP || pieces.section(step.piece()).isEmpty()) continue;
            List<PlacedStrip> strips = pieces.section(step.piece()).get().strips();
            for (String made : step.makes()) {
                int next = off.getOrDefault(step.piece(), 0);
                int place = placeOf(made, strips);
                if (place < 0) continue; // an offcut, or what the rules for making complain about
                if (place > next)
                    findings.add(
                            step.piece(),
                            RULE,
                            steps.name(i) + " rips strip " + made + "; "
                                    + strips.get(next).id() + " comes off before it.");
                off.put(step.piece(), Math.max(next, place + 1));
            }
        }
    }

    private static int placeOf(String strip, List<PlacedStrip> strips) {
        for (int i = 0; i < strips.size(); i++) if (strips.get(i).id().equals(strip)) return i;
        return -1;
    }

    /** A test comes directly before the first rip of its setting; crosscuts may come between. */
    private void testedDirectlyBeforeItsFirstRip(Setting setting) {
        List<Integer> tests = steps.testsOf(setting.id());
        List<Integer> rips = steps.ripsAt(setting.id());
        int due = tested.tests(setting.id()) ? 1 : 0;
        if (tests.size() != due)
            findings.add(
                    setting.id(),
                    RULE,
                    "it is tested in " + Words.count(tests.size(), "step") + "; " + Words.due(due) + ".");
        if (tests.isEmpty() || due == 0) return;

        int test = tests.get(0);
        String testedOn = steps.step(test).piece();
        setting.test()
                .map(Setting.Test::blank)
                .filter(blank -> !blank.equals(testedOn))
                .ifPresent(blank -> findings.add(
                        setting.id(),
                        RULE,
                        steps.name(test) + " tests it on " + testedOn + "; it is tested first on " + blank + "."));
        if (rips.isEmpty()) return;
        int rip = rips.get(0);
        if (rip < test)
            findings.add(setting.id(), RULE, steps.name(rip) + " rips at it before " + steps.name(test) + " tests it.");
        for (int i = test + 1; i < rip; i++)
            if (!steps.step(i).saw().equals(Optional.of(Saw.CROSSCUT))) {
                findings.add(
                        setting.id(),
                        RULE,
                        steps.name(i) + ", a " + Words.of(steps.step(i).does())
                                + ", comes between its test and its first rip; only crosscuts may.");
                break;
            }
    }

    /**
     * A setting that has more than one strip has one check, directly after its first rip, which makes the strip checked
     * alone.
     */
    private void checkedDirectlyAfterItsFirstRip(Setting setting) {
        List<Integer> checks = steps.checksOf(setting.id());
        List<Integer> rips = steps.ripsAt(setting.id());
        int strips = stripsAt.getOrDefault(setting.id(), 0);
        int due = strips > 1 ? 1 : 0;
        if (checks.size() != due) {
            findings.add(
                    setting.id(),
                    RULE,
                    "it is checked in " + Words.count(checks.size(), "step") + "; for " + Words.count(strips, "strip")
                            + " " + Words.due(due) + ".");
        }
        if (checks.isEmpty() || rips.isEmpty() || due == 0) return;
        int check = checks.get(0);
        int rip = rips.get(0);
        List<String> made = steps.step(rip).makes().stream()
                .filter(id -> pieces.strip(id).isPresent())
                .toList();
        if (check != rip + 1)
            findings.add(
                    setting.id(),
                    RULE,
                    steps.name(check) + " checks it; its first rip is " + steps.name(rip)
                            + ", and the check comes directly after.");
        if (made.size() > 1)
            findings.add(
                    setting.id(),
                    RULE,
                    steps.name(rip) + ", its first rip, makes " + String.join(", ", made)
                            + "; the first strip is ripped alone and checked before the rest.");
        if (!made.contains(steps.step(check).piece()))
            findings.add(
                    setting.id(),
                    RULE,
                    steps.name(check) + " checks strip " + steps.step(check).piece() + "; its first rip makes "
                            + String.join(", ", made) + ".");
    }

    /** All blanks that prove a setting, also those that only stand by, are made before it is tested. */
    private void testBlanksExistBeforeTheSettingsTheyProve() {
        for (TestBlank blank : pieces.plan().testBlanks())
            for (String setting : blank.proves()) {
                List<Integer> tests = steps.testsOf(setting);
                int made = steps.firstMaker(blank.id()).orElse(-1);
                if (!tests.isEmpty() && made >= tests.get(0))
                    findings.add(
                            blank.id(),
                            "5.testBlanks",
                            steps.name(made) + " makes it; " + steps.name(tests.get(0)) + " tests " + setting
                                    + " that it proves, and it must be there before.");
            }
    }
}
