package ripwright.internal.bound;

import java.math.BigInteger;
import java.util.HashSet;
import org.apache.commons.numbers.fraction.BigFraction;
import ripwright.job.Job;
import ripwright.measure.Money;
import ripwright.stock.Board;

/**
 * How a lower bound is rounded for print. Where only stock costs, every cost is a sum of whole boards' and so a multiple of
 * what measures them all; and what is printed of it is rounded half up, as what is under it may be. Where offcuts or labor
 * count too the bound stays as it is.
 */
public final class PrintedBound {
    private final boolean stockOnly;
    private final BigFraction measure; // every board's cost is a multiple of it; 0 where all are free

    /** For the plans of that job. */
    public PrintedBound(Job job) {
        stockOnly = job.labor().isEmpty() && job.salvage().signum() == 0;
        measure = stockOnly ? measure(job) : BigFraction.ZERO;
    }

    /** What may be printed of a proven bound: still under the printed cost of every plan that it is under. */
    public Money of(Money bound) {
        if (!stockOnly) return bound;
        Money multiple = measure.signum() == 0
                ? bound
                : new Money(measure.multiply(wholeUp(bound.value().divide(measure))));
        return Money.of(multiple.rounded());
    }

    private static BigInteger wholeUp(BigFraction number) {
        BigInteger[] quotient = number.getNumerator().divideAndRemainder(number.getDenominator());
        return quotient[0].add(BigInteger.valueOf(quotient[1].signum()));
    }

    private static BigFraction measure(Job job) {
        BigFraction measure = BigFraction.ZERO;
        for (Board board : new HashSet<>(job.boards())) {
            BigFraction cost = job.cost(board).value();
            BigInteger numerator = measure.getNumerator()
                    .multiply(cost.getDenominator())
                    .gcd(cost.getNumerator().multiply(measure.getDenominator()));
            measure = BigFraction.of(numerator, measure.getDenominator().multiply(cost.getDenominator()));
        }
        return measure;
    }
}
