package ripwright.internal.replay.tests;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import ripwright.internal.replay.Findings;
import ripwright.internal.replay.ReplayIndex;
import ripwright.internal.replay.Tolerance;
import ripwright.internal.replay.Words;
import ripwright.measure.Length;
import ripwright.plan.Setting;
import ripwright.plan.TestBlank;

/**
 * Plans use as few test blanks as the settings allow. A blank goes from one setting to any later one that is narrower
 * by a kerf, so settings all closer together than a kerf need blanks of their own for every try, and the largest such
 * group is how many are needed for all that blanks of one thickness prove. Which thickness proves what is left to the
 * plan: it may have no wood wide enough of another.
 *
 * @see "R. P. Dilworth, A decomposition theorem for partially ordered sets, Annals of Mathematics 51 (1950) 161-166"
 */
public final class FewestTestBlanks {
    private final ReplayIndex pieces;
    private final Findings findings;

    public FewestTestBlanks(ReplayIndex pieces, Findings findings) {
        this.pieces = pieces;
        this.findings = findings;
    }

    public void check() {
        Map<Length, List<TestBlank>> byThickness = new LinkedHashMap<>();
        for (TestBlank blank : pieces.plan().testBlanks())
            if (blank.proves().stream().anyMatch(id -> pieces.setting(id).isPresent()))
                byThickness
                        .computeIfAbsent(blank.thickness(), unused -> new ArrayList<>())
                        .add(blank);
        byThickness.forEach(this::needed);
    }

    private void needed(Length thickness, List<TestBlank> blanks) {
        Map<String, Integer> proofs = new HashMap<>();
        for (TestBlank blank : blanks)
            for (String setting : new HashSet<>(blank.proves())) proofs.merge(setting, 1, Integer::sum);
        List<Setting> settings = pieces.plan().settings();
        int most = 0;
        int together = 0; // proofs of the settings from start to end, all closer together than a kerf
        int start = 0;
        for (int end = 0; end < settings.size(); end++) {
            together += proofs.getOrDefault(settings.get(end).id(), 0);
            while (start < end && aKerfApart(settings.get(start), settings.get(end)))
                together -= proofs.getOrDefault(settings.get(start++).id(), 0);
            most = Math.max(most, together);
        }
        if (blanks.size() > most)
            findings.add(
                    "plan",
                    "5.testBlanks",
                    Words.count(blanks.size(), "test blank") + " " + findings.say(thickness)
                            + " thick are listed; going from wide to narrow, " + most
                            + " can prove all that they prove.");
    }

    private boolean aKerfApart(Setting wide, Setting narrow) {
        long rounded = 2 * Tolerance.ofPrint(pieces.job().units());
        return wide.width().nanometers() - narrow.width().nanometers() + rounded >= pieces.ripKerf();
    }
}
