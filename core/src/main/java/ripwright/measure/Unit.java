package ripwright.measure;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** What a job measures in, and how a length is written in it. One inch is 25.4 mm exactly (international inch, 1959). */
public enum Unit {
    /** Inches, read from a tape in fractions down to 1/64. */
    INCH("in", 25_400_000L),
    /** Millimeters, read in tenths. */
    MILLIMETER("mm", 1_000_000L);

    static final long NANOMETERS_PER_64TH = 396_875L;
    private static final long NANOMETERS_PER_TENTH_MM = 100_000L;

    private final String symbol;
    private final long nanometers;

    Unit(String symbol, long nanometers) {
        this.symbol = symbol;
        this.nanometers = nanometers;
    }

    /** {@code in} or {@code mm}. */
    public String symbol() {
        return symbol;
    }

    /** How many nanometers one of it is. */
    public long nanometers() {
        return nanometers;
    }

    /**
     * As read from a tape, without the unit: the nearest 1/64 in as a reduced fraction, or the nearest 0.1 mm; halves up.
     */
    public String nearest(Length length) {
        if (this == MILLIMETER) {
            BigDecimal tenths = BigDecimal.valueOf(length.nanometers())
                    .divide(BigDecimal.valueOf(NANOMETERS_PER_TENTH_MM), 0, RoundingMode.HALF_UP);
            return plain(tenths.movePointLeft(1));
        }
        return sixtyFourths((length.nanometers() + NANOMETERS_PER_64TH / 2) / NANOMETERS_PER_64TH);
    }

    /** Without rounding and without the unit: as {@link #nearest} where that is exact, else with every decimal. */
    public String exact(Length length) {
        if (this == INCH && length.nanometers() % NANOMETERS_PER_64TH == 0) return nearest(length);
        return this == MILLIMETER ? plain(BigDecimal.valueOf(length.nanometers(), 6)) : plain(number(length));
    }

    /** As a plan's file has it: a number of this unit with up to six decimals, halves up; exact in millimeters. */
    public BigDecimal number(Length length) {
        BigDecimal number = BigDecimal.valueOf(length.nanometers())
                .divide(BigDecimal.valueOf(nanometers), 6, RoundingMode.HALF_UP)
                .stripTrailingZeros();
        return number.scale() < 0 ? number.setScale(0) : number;
    }

    private static String plain(BigDecimal number) {
        return number.signum() == 0 ? "0" : number.stripTrailingZeros().toPlainString();
    }

    private static String sixtyFourths(long count) {
        long whole = count / 64;
        long numerator = count % 64;
        if (numerator == 0) return Long.toString(whole);
        long shift = 1L << Long.numberOfTrailingZeros(numerator);
        String fraction = numerator / shift + "/" + 64 / shift;
        return whole == 0 ? fraction : whole + " " + fraction;
    }
}
