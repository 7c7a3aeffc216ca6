package ripwright.json;

import java.math.BigDecimal;
import ripwright.json.tree.Kind;
import ripwright.json.tree.Kinds;

/** The kinds of plain numbers: money, shares, minutes. */
final class Amounts {
    private static final BigDecimal MILLION = new BigDecimal("1000000");

    private Amounts() {}

    static Kind<BigDecimal> money() {
        return Kinds.number("an amount of money from 0 to 1000000", BigDecimal.ZERO, MILLION);
    }

    static Kind<BigDecimal> minutes() {
        return Kinds.number("a number of minutes from 0 to 1000000", BigDecimal.ZERO, MILLION);
    }

    static Kind<BigDecimal> seconds() {
        return Kinds.number("a number of seconds from 0.001 to 1000000", new BigDecimal("0.001"), MILLION);
    }

    static Kind<BigDecimal> share() {
        return Kinds.number("a share from 0 to 1", BigDecimal.ZERO, BigDecimal.ONE);
    }

    /** Any number a plan may hold. */
    static Kind<BigDecimal> figure() {
        BigDecimal most = BigDecimal.TEN.pow(30);
        return Kinds.number("a number", most.negate(), most);
    }
}
