package ripwright.internal.cost;

import java.math.BigDecimal;
import java.math.RoundingMode;
import ripwright.measure.BoardFeet;
import ripwright.measure.Money;

/**
 * How much more wood to buy than ends up in blanks: a share added to the net amount.
 *
 * @param added 0.2 for 20 percent more
 */
public record WasteAllowance(BigDecimal added) {
    /**
     * A fifth more, for sound wood.
     *
     * @see "Woodworking shop tip 250: 20 % more, 30 % for common grades; the same in other buying advice."
     */
    public static final WasteAllowance ORDINARY = new WasteAllowance(new BigDecimal("0.2"));

    /** Refuses less than nothing. */
    public WasteAllowance {
        if (added.signum() < 0) throw new IllegalArgumentException("added is " + added + "; it cannot be negative.");
    }

    /** What is added when that share of what is bought goes to waste, to ten decimals: of 30 % waste, 42.86 %. */
    public static WasteAllowance wasting(BigDecimal share) {
        if (share.signum() < 0 || share.compareTo(BigDecimal.ONE) >= 0)
            throw new IllegalArgumentException("The share wasted is " + share + "; it must be from 0 to under 1.");
        return new WasteAllowance(share.divide(BigDecimal.ONE.subtract(share), 10, RoundingMode.HALF_UP));
    }

    /** The share of what is bought that goes to waste, to four decimals. */
    public BigDecimal wasted() {
        return added.divide(BigDecimal.ONE.add(added), 4, RoundingMode.HALF_UP);
    }

    /** What to buy for {@code net}. */
    public BoardFeet buy(BoardFeet net) {
        return new BoardFeet(Money.of(BigDecimal.ONE.add(added)).value().multiply(net.value()));
    }
}
