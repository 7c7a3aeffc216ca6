package ripwright.plan;

import java.math.BigDecimal;

/**
 * What a plan costs, as printed: to the cent.
 *
 * @param stock the boards consumed, each paid whole; a rack offcut at its salvage value
 * @param salvage what the offcuts kept are worth
 * @param labor time at the saws; 0 when the job names no labor
 * @param net stock less salvage and with labor
 * @param bound a proven floor under the net cost of every plan that makes as much finished wood, rounded down
 * @param gap (net - bound) / net, to four decimals, up; 0 when net is 0
 * @param proven whether no plan can be cheaper: the bound is the net cost
 */
public record Cost(
        BigDecimal stock,
        BigDecimal salvage,
        BigDecimal labor,
        BigDecimal net,
        BigDecimal bound,
        BigDecimal gap,
        boolean proven) {}
