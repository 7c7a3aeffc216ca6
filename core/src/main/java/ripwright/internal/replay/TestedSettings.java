package ripwright.internal.replay;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Which rip settings are tested: those at which only widths are ripped that need not be proved are not. */
public final class TestedSettings {
    private final ReplayIndex pieces;
    private final Map<String, List<PlacedStrip>> strips = new HashMap<>(); // setting -> ripped at it

    public TestedSettings(ReplayIndex pieces) {
        this.pieces = pieces;
        for (PlacedStrip strip : pieces.strips())
            strip.strip()
                    .setting()
                    .ifPresent(setting -> strips.computeIfAbsent(setting, unused -> new ArrayList<>())
                            .add(strip));
    }

    /** Whether the setting with that id is tested. */
    public boolean tests(String setting) {
        return tests(strips.getOrDefault(setting, List.of()));
    }

    /** Whether a setting at which those are ripped is. */
    public boolean tests(Collection<PlacedStrip> ripped) {
        return pieces.job().testRip().tries() > 0 && !needsNoProof(ripped);
    }

    /** A blank lies on some strip of it, and every blank on its strips is of a part that needs no test. */
    public boolean needsNoProof(String setting) {
        return needsNoProof(strips.getOrDefault(setting, List.of()));
    }

    private boolean needsNoProof(Collection<PlacedStrip> ripped) {
        List<PlacedBlank> blanks =
                ripped.stream().flatMap(strip -> strip.blanks().stream()).toList();
        return !blanks.isEmpty()
                && blanks.stream()
                        .allMatch(blank -> pieces.part(blank.blank().part())
                                .filter(part -> !part.tested())
                                .isPresent());
    }
}
