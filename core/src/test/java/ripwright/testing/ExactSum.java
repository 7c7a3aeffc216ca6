package ripwright.testing;

import com.google.ortools.sat.CpSolver;
import com.google.ortools.sat.LinearArgument;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;

/** A sum of variables times exact fractions, for a solver that knows whole numbers only. */
final class ExactSum {
    private static final long MOST = 1L << 46; // times some thousand ticks it stays well within a long

    private final List<LinearArgument> terms = new ArrayList<>();
    private final List<BigFraction> factors = new ArrayList<>();

    void add(LinearArgument term, BigFraction factor) {
        if (factor.signum() == 0) return;
        terms.add(term);
        factors.add(factor);
    }

    /** The sum in units of the largest fraction that makes every factor whole. */
    LinearExpr whole() {
        BigFraction unit = unit();
        LinearExprBuilder sum = LinearExpr.newBuilder();
        for (int k = 0; k < terms.size(); k++) sum.addTerm(terms.get(k), in(unit, factors.get(k)));
        return sum.build();
    }

    /** What it comes to, exactly. */
    BigFraction value(CpSolver solved) {
        BigFraction sum = BigFraction.ZERO;
        for (int k = 0; k < terms.size(); k++)
            sum = sum.add(factors.get(k).multiply(BigInteger.valueOf(solved.value(terms.get(k)))));
        return sum;
    }

    private BigFraction unit() {
        BigInteger denominator = BigInteger.ONE;
        for (BigFraction factor : factors)
            denominator =
                    denominator.divide(denominator.gcd(factor.getDenominator())).multiply(factor.getDenominator());
        BigInteger common = BigInteger.ZERO;
        for (BigFraction factor : factors)
            common = common.gcd(factor.multiply(denominator).getNumerator());
        return BigFraction.of(common.max(BigInteger.ONE), denominator);
    }

    private static long in(BigFraction unit, BigFraction factor) {
        BigInteger whole = factor.divide(unit).getNumerator();
        if (whole.abs().compareTo(BigInteger.valueOf(MOST)) > 0)
            throw new IllegalArgumentException(
                    "Amounts are too fine for the solver: " + factor + " in units of " + unit);
        return whole.longValueExact();
    }
}
