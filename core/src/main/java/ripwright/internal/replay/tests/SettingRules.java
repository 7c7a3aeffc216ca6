package ripwright.internal.replay.tests;

import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import ripwright.internal.replay.Findings;
import ripwright.internal.replay.ReplayIndex;
import ripwright.internal.replay.TestedSettings;
import ripwright.internal.replay.Words;
import ripwright.plan.Setting;
import ripwright.plan.TestBlank;

/** The rules for rip settings and for how each is proved. */
public final class SettingRules {
    private static final String RULE = "5.settings";

    private final ReplayIndex pieces;
    private final Findings findings;
    private final TestedSettings tested;
    private final int tries;

    public SettingRules(ReplayIndex pieces, Findings findings) {
        this.pieces = pieces;
        this.findings = findings;
        this.tested = new TestedSettings(pieces);
        this.tries = pieces.job().testRip().tries();
    }

    public void check() {
        widestFirstToldApartExactly();
        eachMakesAStrip();
        eachIsTestedFirstOnOneOfItsBlanks();
        eachHasItsTries();
    }

    private void widestFirstToldApartExactly() {
        List<Setting> settings = pieces.plan().settings();
        for (int i = 1; i < settings.size(); i++) {
            Setting before = settings.get(i - 1);
            Setting setting = settings.get(i);
            if (!before.width().exceeds(setting.width()) && !pieces.hidesWidths(before.width(), setting.width()))
                findings.add(
                        setting.id(),
                        RULE,
                        "it is " + findings.say(setting.width()) + " wide and listed after " + before.id() + " with "
                                + findings.say(before.width()) + "; settings are distinct, widest first.");
        }
    }

    private void eachMakesAStrip() {
        Set<String> used = new HashSet<>();
        pieces.strips().forEach(strip -> strip.strip().setting().ifPresent(used::add));
        for (Setting setting : pieces.plan().settings())
            if (!used.contains(setting.id())) findings.add(setting.id(), RULE, "no strip is ripped at it.");
    }

    /** {@code test.blank} stands for the first of the blanks that prove a setting; one that is not tested has none. */
    private void eachIsTestedFirstOnOneOfItsBlanks() {
        for (Setting setting : pieces.plan().settings()) {
            if (setting.test().isEmpty()) {
                if (tested.tests(setting.id()))
                    findings.add(setting.id(), "5.testBlanks", "no test blank is named for it.");
                continue;
            }
            Setting.Test test = setting.test().get();
            if (tries == 0)
                findings.add(
                        setting.id(),
                        "5.testBlanks",
                        "it is tested on " + test.blank() + "; with 0 tries no setting is.");
            else if (tested.needsNoProof(setting.id()))
                findings.add(
                        setting.id(),
                        "5.testBlanks",
                        "it is tested on " + test.blank() + "; no part ripped at it needs that.");
            else
                pieces.testBlank(test.blank())
                        .ifPresentOrElse(
                                blank -> provesIt(setting, test, blank),
                                () -> findings.add(
                                        setting.id(),
                                        "5.testBlanks",
                                        "it is tested on " + test.blank() + ", which is not listed."));
        }
    }

    private void provesIt(Setting setting, Setting.Test test, TestBlank blank) {
        if (!blank.proves().contains(setting.id()))
            findings.add(setting.id(), "5.testBlanks", "it is tested on " + blank.id() + ", which does not prove it.");
        if (test.source() != blank.source())
            findings.add(
                    setting.id(),
                    "5.testBlanks",
                    "its test blank " + blank.id() + " is said to come from " + Words.of(test.source())
                            + "; it is listed as from " + Words.of(blank.source()) + ".");
    }

    /** Every setting that is tested has exactly as many blanks in whose {@code proves} it stands as there are tries. */
    private void eachHasItsTries() {
        Map<String, Integer> proofs = new HashMap<>();
        for (TestBlank blank : pieces.plan().testBlanks())
            for (String setting : new LinkedHashSet<>(blank.proves())) proofs.merge(setting, 1, Integer::sum);
        for (Setting setting : pieces.plan().settings()) {
            int proved = proofs.getOrDefault(setting.id(), 0);
            int due = tested.needsNoProof(setting.id()) ? 0 : tries;
            if (proved != due)
                findings.add(
                        setting.id(),
                        "5.testBlanks",
                        "it is proved by " + Words.count(proved, "test blank") + "; " + Words.due(due) + ".");
        }
    }
}
