package ripwright.resume;

import java.math.BigDecimal;
import java.util.HashSet;
import java.util.Set;
import ripwright.saw.Labor;

/** How often the saws were used: settings, rips and crosscuts as a plan counts them. */
final class SawsUsed {
    private final Set<String> settings = new HashSet<>();
    private int rips;
    private int crosscuts;

    void setting(String id) {
        settings.add(id);
    }

    void rip() {
        rips++;
    }

    void crosscut() {
        crosscuts++;
    }

    /** What it took, by that labor's minutes. */
    BigDecimal minutes(Labor labor) {
        return labor.settingMinutes()
                .multiply(BigDecimal.valueOf(settings.size()))
                .add(labor.ripMinutes().multiply(BigDecimal.valueOf(rips)))
                .add(labor.crosscutMinutes().multiply(BigDecimal.valueOf(crosscuts)));
    }
}
