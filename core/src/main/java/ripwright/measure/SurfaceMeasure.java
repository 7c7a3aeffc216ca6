package ripwright.measure;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.RoundingMode;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * A board's face in whole square feet, as hardwood is tallied at the mill and on a dealer's bill. Plans reckon with
 * measured sizes instead; this is for comparing with a bill, and the two are never mixed in one total.
 *
 * @param squareFeet whole square feet
 * @see "American Hardwood Export Council, Measurement: width in inches with fractions x length in whole feet / 12, rounded
 *     to the nearest whole number before it is multiplied by the thickness"
 */
public record SurfaceMeasure(long squareFeet) {
    private static final long FOOT = 12 * Unit.INCH.nanometers();

    /** Of a board; its length counts in whole feet, never rounded up. */
    public static SurfaceMeasure of(Length length, Length width) {
        BigInteger feet = BigInteger.valueOf(length.nanometers() / FOOT);
        BigFraction square =
                BigFraction.of(BigInteger.valueOf(width.nanometers()).multiply(feet), BigInteger.valueOf(FOOT));
        return new SurfaceMeasure(
                square.bigDecimalValue(0, RoundingMode.HALF_UP).longValueExact());
    }

    /** The board feet on a bill: what is under an inch thick counts as an inch. */
    public BoardFeet boardFeet(Length thickness) {
        Length square = Length.of(BigDecimal.valueOf(12), Unit.INCH);
        return BoardFeet.counted(
                new Area(Area.of(square, square).squareNanometers().multiply(BigInteger.valueOf(squareFeet))),
                thickness);
    }
}
