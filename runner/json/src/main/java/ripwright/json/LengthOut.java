package ripwright.json;

import java.math.BigDecimal;
import java.math.RoundingMode;
import ripwright.json.tree.JsonOut;
import ripwright.measure.Length;
import ripwright.measure.Unit;

/** Writes lengths so that they come back exactly: fractions as a tape has them, such as {@code "2 3/8"}, all else in digits. */
final class LengthOut {
    private static final int MOST_DECIMALS = 8; // of an inch: 0.254 nm

    private final JsonOut json;
    private final Unit units;

    LengthOut(JsonOut json, Unit units) {
        this.json = json;
        this.units = units;
    }

    void write(String name, Length length) {
        String tape = units.nearest(length);
        if (tape.indexOf('/') >= 0 && Length.parse(tape, units).equals(length)) json.text(name, tape);
        else json.number(name, digits(length));
    }

    private BigDecimal digits(Length length) {
        BigDecimal number = units.number(length);
        if (Length.of(number, units).equals(length)) return number;
        return BigDecimal.valueOf(length.nanometers())
                .divide(BigDecimal.valueOf(units.nanometers()), MOST_DECIMALS, RoundingMode.HALF_UP);
    }
}
