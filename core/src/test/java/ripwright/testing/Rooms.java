package ripwright.testing;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.RoundingMode;
import org.apache.commons.numbers.fraction.BigFraction;
import ripwright.measure.Length;
import ripwright.measure.Money;
import ripwright.saw.Saw;
import ripwright.stock.Board;

/** Prices boards by their room, as {@link ConstructedJobs} explains, and keeps account of what was rounded up. */
final class Rooms {
    private static final long INCH = 25_400_000;
    private static final BigInteger SQUARE_FOOT =
            BigInteger.valueOf(INCH).pow(2).multiply(BigInteger.valueOf(144));
    private static final BigFraction PER_ROOM = BigFraction.of(BigInteger.valueOf(8), SQUARE_FOOT); // for a square nm
    private static final int DECIMALS = 6;

    private final Saw saw;
    private BigFraction best = BigFraction.ZERO; // what the built boards cost
    private BigFraction roundedUp = BigFraction.ZERO; // of that
    private BigFraction leastBeyond = BigFraction.of(Long.MAX_VALUE); // what a decoy costs beyond its room

    Rooms(Saw saw) {
        this.saw = saw;
    }

    /** A built board at the price of its room. */
    Board built(BuiltBoard built) {
        Board board = built.board();
        BigFraction room = room(
                board.length()
                        .minus(board.endTrim().near())
                        .minus(board.endTrim().far()),
                board.width().minus(built.leftLoss()).minus(built.rightLoss()));
        Board priced = priced(board, room, BigFraction.ONE);
        best = best.add(cost(priced));
        roundedUp = roundedUp.add(cost(priced).subtract(room));
        return priced;
    }

    /** A decoy at {@code times} the price of its room, all of its raw length and width counted; {@code share} of it is paid. */
    Board decoy(Board board, BigDecimal times, BigDecimal share) {
        BigFraction room = room(board.length(), board.width().max(board.widthAtFarEnd()));
        Board priced = priced(board, room, fraction(times).divide(fraction(share)));
        BigFraction paid = cost(priced).multiply(fraction(share));
        BigFraction beyond = paid.subtract(room);
        if (beyond.compareTo(leastBeyond) < 0) leastBeyond = beyond;
        return priced;
    }

    /** What the built boards cost; an {@link IllegalStateException} when a decoy might be cheaper. */
    Money best() {
        if (roundedUp.compareTo(leastBeyond) >= 0)
            throw new IllegalStateException("Rounding of prices spoils the proof: " + roundedUp + ", " + leastBeyond);
        return new Money(best);
    }

    private BigFraction room(Length length, Length width) {
        BigInteger area = BigInteger.valueOf(length.plus(saw.crosscutKerf()).nanometers())
                .multiply(BigInteger.valueOf(width.plus(saw.ripKerf()).nanometers()));
        return PER_ROOM.multiply(area);
    }

    private static Board priced(Board board, BigFraction room, BigFraction times) {
        BigFraction price = room.multiply(times).divide(feet(board));
        return board.toBuilder()
                .price(price.bigDecimalValue(DECIMALS, RoundingMode.CEILING))
                .build();
    }

    private static BigFraction cost(Board board) {
        return feet(board).multiply(fraction(board.price().orElseThrow()));
    }

    private static BigFraction feet(Board board) {
        BigInteger twice = BigInteger.valueOf(
                        board.width().nanometers() + board.widthAtFarEnd().nanometers())
                .multiply(BigInteger.valueOf(board.length().nanometers()))
                .multiply(BigInteger.valueOf(Math.max(INCH, board.thickness().nanometers())));
        return BigFraction.of(twice, SQUARE_FOOT.multiply(BigInteger.valueOf(2 * INCH)));
    }

    private static BigFraction fraction(BigDecimal number) {
        return BigFraction.of(number.unscaledValue(), BigInteger.TEN.pow(number.scale()));
    }
}
