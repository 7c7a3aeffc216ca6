package ripwright.internal.sequence;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import ripwright.measure.Length;
import ripwright.plan.Step;

/** Steps as they are written down, numbered from 1. */
public final class StepList {
    private final List<Step> steps = new ArrayList<>();

    List<Step> steps() {
        return List.copyOf(steps);
    }

    /** Work done away from the saws. */
    void mill(String piece) {
        add(Optional.empty(), Step.Does.MILL, Optional.empty(), piece, List.of());
    }

    void straighten(String piece) {
        add(Optional.of(Step.Saw.RIP), Step.Does.STRAIGHTEN, Optional.empty(), piece, List.of());
    }

    void test(String setting, String blank) {
        add(Optional.of(Step.Saw.RIP), Step.Does.TEST, Optional.of(setting), blank, List.of());
    }

    void rip(String setting, String section, List<String> makes) {
        add(Optional.of(Step.Saw.RIP), Step.Does.RIP, Optional.of(setting), section, makes);
    }

    void check(String setting, String strip) {
        add(Optional.empty(), Step.Does.CHECK, Optional.of(setting), strip, List.of());
    }

    void breakdown(String board, List<String> makes) {
        add(Optional.of(Step.Saw.CROSSCUT), Step.Does.BREAKDOWN, Optional.empty(), board, makes);
    }

    void trim(String piece, List<String> makes) {
        add(Optional.of(Step.Saw.CROSSCUT), Step.Does.TRIM, Optional.empty(), piece, makes);
    }

    /** The end of a strip cut off where its first blank starts. */
    void square(String strip) {
        add(Optional.of(Step.Saw.CROSSCUT), Step.Does.SQUARE, Optional.empty(), strip, List.of());
    }

    /** Blanks cut at a stop. */
    void atStop(Length stop, String strip, List<String> makes) {
        blank(Optional.of(stop), strip, makes, Optional.empty());
    }

    /** A blank cut to its opening. */
    void fitted(String strip, List<String> makes, Length spare) {
        blank(Optional.empty(), strip, makes, Optional.of(spare));
    }

    private void blank(Optional<Length> stop, String strip, List<String> makes, Optional<Length> spare) {
        steps.add(new Step(
                steps.size() + 1,
                Optional.of(Step.Saw.CROSSCUT),
                Step.Does.BLANK,
                Optional.empty(),
                stop,
                strip,
                makes,
                spare));
    }

    private void add(
            Optional<Step.Saw> saw, Step.Does does, Optional<String> setting, String piece, List<String> makes) {
        steps.add(new Step(steps.size() + 1, saw, does, setting, Optional.empty(), piece, makes, Optional.empty()));
    }
}
