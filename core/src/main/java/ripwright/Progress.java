package ripwright;

import java.math.BigDecimal;
import java.time.Duration;

/**
 * How far a search has come. Money is in the currency of the job's prices.
 *
 * @param elapsed since the planning began
 * @param cost what the best answer so far costs net, to the cent
 * @param bound what no plan that makes the whole bill can cost less than, as far as that is known, to the cent, down; 0 while
 *     nothing is. An answer that makes less may cost less
 * @param partsMade how many parts the best answer makes
 * @param partsWanted how many are in the bill
 */
public record Progress(Duration elapsed, BigDecimal cost, BigDecimal bound, int partsMade, int partsWanted) {}
