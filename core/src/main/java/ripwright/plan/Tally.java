package ripwright.plan;

import java.math.BigDecimal;

/**
 * Where the wood goes and how long it takes, as printed: board feet by true thickness to four decimals.
 *
 * @param consumed boards cut, raw, in board feet
 * @param parts finished sizes, in board feet
 * @param offcuts what goes to the rack, in board feet
 * @param waste the rest, in board feet
 * @param yield parts / consumed, to four decimals; 0 when nothing is consumed
 * @param minutes time at the saws, to two decimals
 */
public record Tally(
        BigDecimal consumed,
        BigDecimal parts,
        BigDecimal offcuts,
        BigDecimal waste,
        BigDecimal yield,
        BigDecimal minutes) {}
