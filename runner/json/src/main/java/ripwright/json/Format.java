package ripwright.json;

import java.math.BigDecimal;
import java.util.Map;
import java.util.Optional;
import ripwright.json.tree.Fields;
import ripwright.json.tree.Kind;
import ripwright.json.tree.Kinds;
import ripwright.json.tree.NumberText;
import ripwright.measure.Unit;

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

    private static final Kind<Unit> UNIT = Kinds.choice(Map.of("in", Unit.INCH, "mm", Unit.MILLIMETER), Unit.INCH);

    private Format() {}

    /** Reads the format of a file whose units another file says. */
    static void readNumber(Fields fields) {
        fields.required("format", KIND);
    }

    /** Reads both; the unit is the answer, empty when it cannot be read. */
    static Optional<Unit> read(Fields fields) {
        fields.required("format", KIND);
        Unit unit = fields.required("units", UNIT);
        return fields.good("units") ? Optional.of(unit) : Optional.empty();
    }
}
