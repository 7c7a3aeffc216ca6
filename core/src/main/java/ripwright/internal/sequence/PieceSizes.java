package ripwright.internal.sequence;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import ripwright.internal.pieces.CutPieces;
import ripwright.internal.pieces.RipSetting;
import ripwright.internal.pieces.SectionCut;
import ripwright.internal.pieces.StripCut;
import ripwright.internal.testwood.TestPlan;
import ripwright.measure.Length;
import ripwright.plan.Blank;
import ripwright.plan.Step;

/** How large the pieces of a plan are that a step is done to, or that it makes. */
public final class PieceSizes {
    private final Map<String, Length> widthOfSetting = new HashMap<>();
    private final Map<String, Length> length = new HashMap<>(); // of sections, test blanks and blanks
    private final Map<String, Length> width = new HashMap<>(); // of strips

    PieceSizes(CutPieces cutting, TestPlan tests) {
        for (RipSetting setting : cutting.settings()) widthOfSetting.put(setting.id(), new Length(setting.width()));
        for (TestPlan.ProvingBlank blank : tests.blanks())
            length.put(blank.id(), blank.blank().length());
        for (SectionCut section : cutting.sections()) {
            length.put(section.id(), new Length(section.length()));
            for (StripCut strip : section.strips()) {
                width.put(strip.id(), new Length(strip.width()));
                for (Blank blank : strip.strip().blanks()) length.put(blank.id(), blank.length());
            }
        }
    }

    /** Where the fence stands; empty when the step has no setting. */
    Optional<Length> fence(Step step) {
        return step.setting().map(widthOfSetting::get);
    }

    /** How long the section or test blank is that a step is done to; empty for other pieces. */
    Optional<Length> length(Step step) {
        return Optional.ofNullable(length.get(step.piece()));
    }

    /** How long the blanks are that a step makes. */
    Stream<Length> blanks(Step step) {
        return step.makes().stream().flatMap(id -> Optional.ofNullable(length.get(id)).stream());
    }

    /** How wide the strips are that a step makes. */
    Stream<Length> strips(Step step) {
        return step.makes().stream().flatMap(id -> Optional.ofNullable(width.get(id)).stream());
    }
}
