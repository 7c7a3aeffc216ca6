package ripwright.replay;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import ripwright.measure.Length;
import ripwright.measure.Unit;

/** Collects the faults of one plan, and writes lengths in its job's units. */
final class Findings {
    private final Unit unit;
    private final List<Fault> faults = new ArrayList<>();

    Findings(Unit unit) {
        this.unit = unit;
    }

    void add(String piece, String rule, String what) {
        faults.add(new Fault(piece, what, rule));
    }

    List<Fault> faults() {
        return List.copyOf(faults);
    }

    String say(Length length) {
        return unit.exact(length) + " " + unit.symbol();
    }

    /** Also what no length can be: a place before the board's end, or the reach of a plan that is far off. */
    String say(long nanometers) {
        if (nanometers >= 0 && nanometers <= Length.LONGEST.nanometers()) return say(new Length(nanometers));
        BigDecimal number =
                BigDecimal.valueOf(nanometers).divide(BigDecimal.valueOf(unit.nanometers()), 6, RoundingMode.HALF_UP);
        return number.stripTrailingZeros().toPlainString() + " " + unit.symbol();
    }
}
