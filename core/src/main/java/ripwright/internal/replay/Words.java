package ripwright.internal.replay;

import java.util.Locale;
import java.util.Optional;
import ripwright.plan.Step;
import ripwright.plan.TestBlank;

/** The contract's own words for what a plan says. */
public final class Words {
    private Words() {}

    public static String of(TestBlank.Source source) {
        return source.name().toLowerCase(Locale.ROOT);
    }

    public static String of(Step.Does does) {
        return does.name().toLowerCase(Locale.ROOT);
    }

    public static String of(Optional<Step.Saw> saw) {
        return saw.map(which -> "the " + which.name().toLowerCase(Locale.ROOT) + " saw")
                .orElse("no saw");
    }

    /** {@code 1 rip}, {@code 3 rips}. */
    public static String count(int count, String what) {
        return count + " " + what + (count == 1 ? "" : "s");
    }

    /** {@code 1 is due}, {@code 3 are due}. */
    public static String due(int count) {
        return count + (count == 1 ? " is due" : " are due");
    }
}
