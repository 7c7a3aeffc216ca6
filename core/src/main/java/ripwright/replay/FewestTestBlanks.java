package ripwright.replay;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import ripwright.measure.Length;
import ripwright.plan.Setting;
import ripwright.plan.TestBlank;

/**
 * Plans use as few test blanks as the settings allow. A blank goes from one setting to any later one that is narrower by a
 * kerf, so settings all closer together than a kerf need {@code tries} blanks each, and the largest such group, within one
 * thickness, is what the settings ask for.
 *
 * @see "R. P. Dilworth, A decomposition theorem for partially ordered sets, Annals of Mathematics 51 (1950) 161-166"
 */
final class FewestTestBlanks {
    private final Pieces pieces;
    private final Findings findings;

    FewestTestBlanks(Pieces pieces, Findings findings) {
        this.pieces = pieces;
        this.findings = findings;
    }

    void check() {
        List<TestBlank> blanks = pieces.plan().testBlanks().stream()
                .filter(blank -> blank.proves().stream()
                        .anyMatch(setting -> pieces.setting(setting).isPresent()))
                .toList();
        if (someThicknessIsRippedEverywhere()) {
            needed(blanks, blanks.size() + " test blanks");
            return;
        }
        Map<Length, List<TestBlank>> byThickness = new LinkedHashMap<>();
        blanks.forEach(blank -> byThickness
                .computeIfAbsent(blank.thickness(), unused -> new ArrayList<>())
                .add(blank));
        byThickness.forEach((thickness, alike) ->
                needed(alike, alike.size() + " test blanks " + findings.say(thickness) + " thick"));
    }

    /** Then one blank can go through all settings, and what the plan chose for each does not matter. */
    private boolean someThicknessIsRippedEverywhere() {
        Map<Length, Set<String>> settings = new HashMap<>(); // thickness -> settings it is ripped at
        for (PlacedStrip strip : pieces.strips())
            strip.strip()
                    .setting()
                    .ifPresent(setting -> settings.computeIfAbsent(strip.board().millsTo(), unused -> new HashSet<>())
                            .add(setting));
        return settings.values().stream()
                .anyMatch(there -> there.size() >= pieces.plan().settings().size());
    }

    private void needed(List<TestBlank> blanks, String found) {
        Map<String, Integer> proofs = new HashMap<>();
        for (TestBlank blank : blanks)
            for (String setting : new HashSet<>(blank.proves())) proofs.merge(setting, 1, Integer::sum);
        List<Setting> settings = pieces.plan().settings();
        long most = 0;
        long inWindow = 0;
        int start = 0; // of the settings that lie closer than a kerf to the widest of them
        for (int end = 0; end < settings.size(); end++) {
            inWindow += proofs.getOrDefault(settings.get(end).id(), 0);
            while (start < end && aKerfApart(settings.get(start), settings.get(end)))
                inWindow -= proofs.getOrDefault(settings.get(start++).id(), 0);
            most = Math.max(most, inWindow);
        }
        if (blanks.size() > most)
            findings.add(
                    "plan",
                    "5.testBlanks",
                    found + " are listed; going from wide to narrow, " + most + " can prove all that they prove.");
    }

    private boolean aKerfApart(Setting wide, Setting narrow) {
        long rounded = 2 * Tolerance.ofPrint(pieces.job().units());
        return wide.width().nanometers() - narrow.width().nanometers() + rounded >= pieces.ripKerf();
    }
}
