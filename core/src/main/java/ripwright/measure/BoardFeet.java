package ripwright.measure;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.RoundingMode;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * An exact amount of wood in board feet of 144 cubic inches; below zero only as a difference.
 *
 * @param value how many board feet
 * @see "American Hardwood Export Council, Measurement: 1 ft x 1 ft x 1 in; under one inch counts as one in pricing"
 */
public record BoardFeet(BigFraction value) implements Comparable<BoardFeet> {
    /** No wood at all. */
    public static final BoardFeet ZERO = new BoardFeet(BigFraction.ZERO);

    private static final BigInteger NANOMETERS_PER_INCH = BigInteger.valueOf(Unit.INCH.nanometers());
    private static final Length ONE_INCH = new Length(Unit.INCH.nanometers());
    private static final BigInteger CUBIC_NANOMETERS =
            NANOMETERS_PER_INCH.pow(3).multiply(BigInteger.valueOf(144));

    /** By true volume: an area as thick as that. */
    public static BoardFeet of(Area area, Length thickness) {
        return new BoardFeet(area.squareNanometers()
                .multiply(BigInteger.valueOf(thickness.nanometers()))
                .divide(CUBIC_NANOMETERS));
    }

    /** By true volume: a block of those sizes. */
    public static BoardFeet of(Length length, Length width, Length thickness) {
        return of(Area.of(length, width), thickness);
    }

    /** As wood is priced: what is thinner than an inch counts as one inch thick. */
    public static BoardFeet counted(Area area, Length thickness) {
        return of(area, thickness.max(ONE_INCH));
    }

    /** Both together. */
    public BoardFeet plus(BoardFeet other) {
        return new BoardFeet(value.add(other.value));
    }

    /** This less {@code other}. */
    public BoardFeet minus(BoardFeet other) {
        return new BoardFeet(value.subtract(other.value));
    }

    /** This, {@code times} times. */
    public BoardFeet times(int times) {
        return new BoardFeet(value.multiply(times));
    }

    /** What it costs at {@code price} a board foot, exactly. */
    public Money at(BigDecimal price) {
        return new Money(value.multiply(Money.fraction(price)));
    }

    /** As printed: to four decimals, halves up. */
    public BigDecimal rounded() {
        return value.bigDecimalValue(4, RoundingMode.HALF_UP);
    }

    @Override
    public int compareTo(BoardFeet other) {
        return value.compareTo(other.value);
    }
}
