package ripwright.measure;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.RoundingMode;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * An exact amount of money, in whatever currency the job's prices are; below zero when offcuts fetch more than is spent.
 *
 * @param value the amount
 */
public record Money(BigFraction value) implements Comparable<Money> {
    /** No money at all. */
    public static final Money ZERO = new Money(BigFraction.ZERO);

    /** That amount, exactly. */
    public static Money of(BigDecimal amount) {
        return new Money(fraction(amount));
    }

    static BigFraction fraction(BigDecimal number) {
        BigInteger digits = number.unscaledValue();
        return number.scale() >= 0
                ? BigFraction.of(digits, BigInteger.TEN.pow(number.scale()))
                : BigFraction.of(digits.multiply(BigInteger.TEN.pow(-number.scale())));
    }

    /** Both together. */
    public Money plus(Money other) {
        return new Money(value.add(other.value));
    }

    /** This less {@code other}. */
    public Money minus(Money other) {
        return new Money(value.subtract(other.value));
    }

    /** This, {@code factor} times. */
    public Money times(BigDecimal factor) {
        return new Money(value.multiply(fraction(factor)));
    }

    /** As printed: to the cent, halves up. */
    public BigDecimal rounded() {
        return value.bigDecimalValue(2, RoundingMode.HALF_UP);
    }

    /** As a floor is printed: to the cent, down. */
    public BigDecimal roundedDown() {
        return value.bigDecimalValue(2, RoundingMode.FLOOR);
    }

    @Override
    public int compareTo(Money other) {
        return value.compareTo(other.value);
    }
}
