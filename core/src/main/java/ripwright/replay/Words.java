package ripwright.replay;

import java.util.Locale;
import ripwright.plan.Step;
import ripwright.plan.TestBlank;

/** The contract's own words for what a plan says. */
final class Words {
    private Words() {}

    static String of(TestBlank.Source source) {
        return source.name().toLowerCase(Locale.ROOT);
    }

    static String of(Step.Does does) {
        return does.name().toLowerCase(Locale.ROOT);
    }

    static String of(Step.Saw saw) {
        return saw.name().toLowerCase(Locale.ROOT);
    }
}
