package ripwright.resume;

import java.math.BigDecimal;
import java.util.List;
import ripwright.measure.Money;

/**
 * What is spent already, whatever comes of it. Money is exact, in the currency of the job's prices.
 *
 * @param boards the ids of the boards that were opened, in the order of the plan
 * @param stock what they cost, each paid whole; a rack offcut at its salvage value
 * @param minutes at the saws, as a plan counts them
 * @param labor what those cost; 0 when the job names no labor
 * @param inHand what the pieces in hand would fetch on the rack: what a plan pays for using all of them
 */
public record Spent(List<String> boards, Money stock, BigDecimal minutes, Money labor, Money inHand) {
    /** Keeps a copy of the list. */
    public Spent {
        boards = List.copyOf(boards);
    }

    /** What the whole job costs when the rest costs {@code net}. */
    public Money withRest(BigDecimal net) {
        return stock.plus(labor).minus(inHand).plus(Money.of(net));
    }
}
