package ripwright.internal.replay;

import java.math.BigDecimal;
import java.math.RoundingMode;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * An exact amount, and the least and the most it may be when the lengths it is reckoned from were read back from a
 * file.
 *
 * @param exact the amount
 * @param least at least
 * @param most at most
 */
public record Figure(BigFraction exact, BigFraction least, BigFraction most) {
    public static final Figure ZERO = of(BigFraction.ZERO);

    public static Figure of(BigFraction exact) {
        return new Figure(exact, exact, exact);
    }

    public Figure plus(Figure other) {
        return new Figure(exact.add(other.exact), least.add(other.least), most.add(other.most));
    }

    public Figure minus(Figure other) {
        return new Figure(exact.subtract(other.exact), least.subtract(other.most), most.subtract(other.least));
    }

    /** This, {@code factor} times; it is not negative. */
    public Figure times(BigFraction factor) {
        return new Figure(exact.multiply(factor), least.multiply(factor), most.multiply(factor));
    }

    /** As printed, halves up. */
    public BigDecimal rounded(int decimals) {
        return exact.bigDecimalValue(decimals, RoundingMode.HALF_UP);
    }

    /** Whether {@code printed} is this, rounded half up to so many decimals. */
    public boolean prints(BigDecimal printed, int decimals) {
        return printed.compareTo(least.bigDecimalValue(decimals, RoundingMode.HALF_UP)) >= 0
                && printed.compareTo(most.bigDecimalValue(decimals, RoundingMode.HALF_UP)) <= 0
                && printed.stripTrailingZeros().scale() <= decimals;
    }
}
