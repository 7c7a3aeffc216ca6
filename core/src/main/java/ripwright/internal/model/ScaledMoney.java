package ripwright.internal.model;

import java.math.BigInteger;
import java.math.RoundingMode;
import org.apache.commons.numbers.fraction.BigFraction;
import ripwright.bill.Part;
import ripwright.job.Job;
import ripwright.measure.Money;
import ripwright.saw.Labor;
import ripwright.stock.Board;

/**
 * Money in whole money, so small that the whole stack and all labor cost about 2^48 of them. Programs that prove something reckon in
 * money: sums are exact, and what does not come out even is rounded towards a lower cost.
 */
public final class ScaledMoney {
    private static final int BITS = 48;

    private final BigFraction perCurrency; // money in one of the currency: a power of two
    private final BigFraction perMinute; // money a minute of labor costs
    private final long[] cost; // cost[b]: of board b, rounded down

    /** Scaled money for that job. */
    public ScaledMoney(Job job) {
        Labor labor = job.laborOrUnpaid();
        perMinute = fraction(labor.perHour()).divide(60);
        BigFraction all = perMinute.multiply(mostMinutes(job, labor));
        for (Board board : job.boards()) all = all.add(job.cost(board).value());
        perCurrency = all.signum() == 0 ? BigFraction.ONE : twoTo(BITS - bits(all));
        cost = job.boards().stream()
                .mapToLong(board -> down(job.cost(board).value()))
                .toArray();
    }

    /** What the labor of no plan worth having comes to more than: every part cut for itself, every width set, every board begun. */
    private static BigFraction mostMinutes(Job job, Labor labor) {
        long blanks = job.parts().stream().mapToLong(Part::count).sum();
        long widths = job.parts().stream().map(Part::blankWidth).distinct().count();
        long boards = job.boards().size();
        long tests = widths * job.testRip().tries();
        return fraction(labor.settingMinutes())
                .multiply(widths)
                .add(fraction(labor.ripMinutes()).multiply(blanks + 3 * boards + widths))
                .add(fraction(labor.crosscutMinutes()).multiply(2 * blanks + 8 * boards + tests));
    }

    private static BigFraction fraction(java.math.BigDecimal number) {
        return Money.of(number).value();
    }

    private static int bits(BigFraction amount) {
        return amount.getNumerator().bitLength() - amount.getDenominator().bitLength();
    }

    private static BigFraction twoTo(int exponent) {
        BigInteger power = BigInteger.ONE.shiftLeft(Math.abs(exponent));
        return exponent >= 0 ? BigFraction.of(power) : BigFraction.of(BigInteger.ONE, power);
    }

    /** What cutting board {@code b} costs, rounded down. */
    public long cost(int board) {
        return cost[board];
    }

    /** What that many minutes of labor cost, rounded down. */
    public long labor(java.math.BigDecimal minutes) {
        return down(minutes(minutes));
    }

    private BigFraction minutes(java.math.BigDecimal minutes) {
        return perMinute.multiply(fraction(minutes));
    }

    private long down(BigFraction money) {
        return money.multiply(perCurrency)
                .bigDecimalValue(0, RoundingMode.FLOOR)
                .longValueExact();
    }

    /** Scaled money in a millionth of the currency. */
    public double perMillionth() {
        return perCurrency.doubleValue() / JobNumbers.MONEY;
    }

    /** That many money as money, exactly. */
    public Money money(long money) {
        return new Money(BigFraction.of(BigInteger.valueOf(money)).divide(perCurrency));
    }

    /** The fewest money that are at least {@code millionths} of the currency. */
    public long up(double millionths) {
        return ceil(millionths * perMillionth());
    }

    /** At least {@code money}, whatever the double lost on its way here. */
    public static long ceil(double money) {
        return (long) Math.ceil(money + Math.abs(money) * 1e-12);
    }
}
