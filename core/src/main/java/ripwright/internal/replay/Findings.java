package ripwright.internal.replay;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import ripwright.measure.Length;
import ripwright.measure.Unit;

/** Collects the faults of one plan, and writes lengths in its job's units. */
public final class Findings {
    /**
     * One thing that does not hold.
     *
     * @param piece the id of the piece it is about
     * @param what what was found and what was due
     * @param rule where the contract says so
     */
    public record Finding(String piece, String what, String rule) {}

    private final Unit unit;
    private final List<Finding> faults = new ArrayList<>();

    public Findings(Unit unit) {
        this.unit = unit;
    }

    public void add(String piece, String rule, String what) {
        faults.add(new Finding(piece, what, rule));
    }

    public List<Finding> faults() {
        return List.copyOf(faults);
    }

    public String say(Length length) {
        return unit.exact(length) + " " + unit.symbol();
    }

    /** Also what no length can be: a place before the board's end, or the reach of a plan that is far off. */
    public String say(long nanometers) {
        if (nanometers >= 0 && nanometers <= Length.LONGEST.nanometers()) return say(new Length(nanometers));
        BigDecimal number =
                BigDecimal.valueOf(nanometers).divide(BigDecimal.valueOf(unit.nanometers()), 6, RoundingMode.HALF_UP);
        return number.stripTrailingZeros().toPlainString() + " " + unit.symbol();
    }
}
