package ripwright.measure;

import java.math.BigInteger;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * An exact area, never negative.
 *
 * @param squareNanometers the area in square nanometers, a fraction because of tapered edges
 */
public record Area(BigFraction squareNanometers) implements Comparable<Area> {
    /** No area at all. */
    public static final Area ZERO = new Area(BigFraction.ZERO);

    /**
     * Refuses what is negative.
     *
     * @throws IllegalArgumentException when it is
     */
    public Area {
        if (squareNanometers.signum() < 0)
            throw new IllegalArgumentException("An area cannot be negative: " + squareNanometers + " nm2.");
    }

    /** A rectangle. */
    public static Area of(Length length, Length width) {
        return trapezoid(length, width, width);
    }

    /** A piece {@code length} long whose width runs in a straight line from {@code near} to {@code far}. */
    public static Area trapezoid(Length length, Length near, Length far) {
        BigInteger twice = BigInteger.valueOf(near.nanometers() + far.nanometers())
                .multiply(BigInteger.valueOf(length.nanometers()));
        return new Area(BigFraction.of(twice, BigInteger.TWO));
    }

    /** Both together. */
    public Area plus(Area other) {
        return new Area(squareNanometers.add(other.squareNanometers));
    }

    /**
     * What is left of this without {@code other}.
     *
     * @throws IllegalArgumentException when {@code other} is larger
     */
    public Area minus(Area other) {
        return new Area(squareNanometers.subtract(other.squareNanometers));
    }

    @Override
    public int compareTo(Area other) {
        return squareNanometers.compareTo(other.squareNanometers);
    }
}
