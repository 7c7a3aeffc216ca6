package ripwright;

import java.math.BigDecimal;
import java.time.Duration;

/**
 * How far a search has come.
 *
 * @param elapsed since it began
 * @param cost what the best answer so far costs net, to the cent
 * @param bound what no plan that makes as much can cost less than, to the cent, down
 * @param partsMade how many parts the best answer makes
 * @param partsWanted how many are in the bill
 */
public record Progress(Duration elapsed, BigDecimal cost, BigDecimal bound, int partsMade, int partsWanted) {}
