package ripwright.measure;

import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * An exact length, never negative and at most 100 m: a whole number of nanometers (1/64 in is 396 875 nm).
 *
 * @param nanometers the length in nanometers
 */
public record Length(long nanometers) implements Comparable<Length> {
    /** No length at all. */
    public static final Length ZERO = new Length(0);

    /** The longest length there is: 100 m. */
    public static final Length LONGEST = new Length(100_000_000_000L);

    /**
     * Refuses what is negative or longer than {@link #LONGEST}.
     *
     * @throws IllegalArgumentException when it is
     */
    public Length {
        if (nanometers < 0) throw new IllegalArgumentException("A length cannot be negative: " + nanometers + " nm.");
        if (nanometers > 100_000_000_000L)
            throw new IllegalArgumentException("A length cannot be over 100 m: " + nanometers + " nm.");
    }

    /**
     * That many inches, as {@link #parse} reads them, rounded to the nearest nanometer.
     *
     * @throws IllegalArgumentException when the text is no length; the message says why
     */
    public static Length inches(String inches) {
        return parse(inches, Unit.INCH);
    }

    /**
     * That many millimeters, as {@link #parse} reads them, rounded to the nearest nanometer.
     *
     * @throws IllegalArgumentException when the text is no length; the message says why
     */
    public static Length millimeters(String millimeters) {
        return parse(millimeters, Unit.MILLIMETER);
    }

    /**
     * Reads {@code 2 3/8}, {@code 2-3/8}, {@code 3/8}, {@code 23.5}, {@code 38 mm} or {@code 1.5in}; a number without a
     * unit is in {@code unit}. Rounded once, to the nearest nanometer.
     *
     * @throws IllegalArgumentException when the text is not such a length; the message says why
     */
    public static Length parse(String text, Unit unit) {
        return new LengthText(text, unit).length();
    }

    /**
     * {@code number} of {@code unit}, rounded once, to the nearest nanometer, halves up.
     *
     * @throws IllegalArgumentException when it is negative or over 100 m
     */
    public static Length of(BigDecimal number, Unit unit) {
        if (number.signum() < 0) throw new IllegalArgumentException("A length cannot be negative: " + number + ".");
        if (number.precision() - number.scale() > 13) throw tooLong(number.toString());
        BigDecimal nanometers = number.multiply(BigDecimal.valueOf(unit.nanometers()));
        BigDecimal whole = nanometers.setScale(0, RoundingMode.HALF_UP);
        if (whole.compareTo(BigDecimal.valueOf(LONGEST.nanometers)) > 0) throw tooLong(number + " " + unit.symbol());
        return new Length(whole.longValueExact());
    }

    static IllegalArgumentException tooLong(String text) {
        return new IllegalArgumentException("A length cannot be over 100 m: " + text + ".");
    }

    /** Whether this is no length at all. */
    public boolean isZero() {
        return nanometers == 0;
    }

    /**
     * This and {@code other} end to end.
     *
     * @throws IllegalArgumentException when that is over 100 m
     */
    public Length plus(Length other) {
        return new Length(nanometers + other.nanometers);
    }

    /**
     * What is left of this after {@code other}.
     *
     * @throws ArithmeticException when {@code other} is longer
     */
    public Length minus(Length other) {
        if (other.nanometers > nanometers) throw new ArithmeticException(other + " does not come out of " + this + ".");
        return new Length(nanometers - other.nanometers);
    }

    /**
     * This, {@code times} times end to end.
     *
     * @throws IllegalArgumentException when that is over 100 m, or {@code times} is negative
     * @throws ArithmeticException when it is so far over that no long holds it
     */
    public Length times(int times) {
        return new Length(Math.multiplyExact(nanometers, times));
    }

    /** Whether this is longer than {@code other}. */
    public boolean exceeds(Length other) {
        return nanometers > other.nanometers;
    }

    /** The shorter of the two. */
    public Length min(Length other) {
        return nanometers <= other.nanometers ? this : other;
    }

    /** The longer of the two. */
    public Length max(Length other) {
        return nanometers >= other.nanometers ? this : other;
    }

    @Override
    public int compareTo(Length other) {
        return Long.compare(nanometers, other.nanometers);
    }

    /** Exact: in inches where it is a whole number of 64ths, else in millimeters. {@link #parse} reads it back. */
    @Override
    public String toString() {
        Unit unit = nanometers % Unit.NANOMETERS_PER_64TH == 0 ? Unit.INCH : Unit.MILLIMETER;
        return unit.exact(this) + " " + unit.symbol();
    }
}
