package ripwright.runner.json;

import java.math.BigDecimal;
import java.util.Map;
import ripwright.measure.Unit;
import ripwright.runner.tree.Fields;
import ripwright.runner.tree.Kind;
import ripwright.runner.tree.Kinds;
import ripwright.runner.tree.NumberText;

/** What every file begins with: its format and its units. */
final class Format {
    /** The only one there is so far. */
    static final int NUMBER = 1;

    private static final Kind<Integer> KIND = Kinds.of(
            "1",
            NUMBER,
            value -> value.number().map(digits -> {
                if (new NumberText(digits).exact().compareTo(BigDecimal.valueOf(NUMBER)) != 0)
                    throw new IllegalArgumentException(
                            digits + " is a format not known here; this version understands 1.");
                return NUMBER;
            }));

    // Where the unit cannot be read, millimeters: the same numbers are then within bounds more often than as inches.
    private static final Kind<Unit> UNIT =
            Kinds.choice(Map.of("in", Unit.INCH, "mm", Unit.MILLIMETER), Unit.MILLIMETER);

    private Format() {}

    /** Reads both; the unit is the answer. */
    static Unit read(Fields fields) {
        fields.required("format", KIND);
        return fields.required("units", UNIT);
    }
}
