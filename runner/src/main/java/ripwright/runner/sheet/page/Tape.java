package ripwright.runner.sheet.page;

import java.math.BigDecimal;
import java.math.RoundingMode;
import ripwright.measure.Length;
import ripwright.measure.Unit;

/**
 * Writes measures as the shop reads them.
 *
 * @param units what a tape in this shop is marked in
 */
record Tape(Unit units) {
    private static final BigDecimal HUNDRED = BigDecimal.valueOf(100);

    /** To the nearest mark of a tape, without the unit. */
    String read(Length length) {
        return units.nearest(length);
    }

    String read(long nanometers) {
        return read(new Length(nanometers));
    }

    /** With the unit. */
    String full(Length length) {
        return read(length) + " " + units.symbol();
    }

    /** Thickness, width and length, as lumber is told. */
    String size(Length thickness, Length width, Length length) {
        return read(thickness) + " × " + read(width) + " × " + read(length);
    }

    /** The name of a column of lengths. */
    String column(String name) {
        return name + ", " + units.symbol();
    }

    static String percent(BigDecimal share, int decimals) {
        return share.multiply(HUNDRED).setScale(decimals, RoundingMode.HALF_UP).toPlainString() + " %";
    }

    static String boardFeet(BigDecimal amount) {
        return amount.setScale(2, RoundingMode.HALF_UP).toPlainString();
    }

    /** Hours and minutes, rounded up to the minute. */
    static String time(BigDecimal minutes) {
        long whole = minutes.setScale(0, RoundingMode.CEILING).longValueExact();
        return whole < 60 ? whole + " min" : whole / 60 + " h " + whole % 60 + " min";
    }
}
