package ripwright.saw;

import java.math.BigDecimal;

/**
 * What time at the saws costs.
 *
 * @param perHour money an hour, in the currency of the job's prices
 * @param settingMinutes minutes for setting the fence to a width
 * @param ripMinutes minutes for one rip
 * @param crosscutMinutes minutes for one crosscut
 */
public record Labor(BigDecimal perHour, BigDecimal settingMinutes, BigDecimal ripMinutes, BigDecimal crosscutMinutes) {
    /** What a plan's minutes are reckoned by when the job names no labor; costs nothing. From memory. */
    public static final Labor UNPAID =
            new Labor(BigDecimal.ZERO, new BigDecimal("6"), new BigDecimal("1.5"), BigDecimal.ONE);

    /**
     * Refuses what is negative.
     *
     * @throws IllegalArgumentException when one of them is
     */
    public Labor {
        positive("perHour", perHour);
        positive("settingMinutes", settingMinutes);
        positive("ripMinutes", ripMinutes);
        positive("crosscutMinutes", crosscutMinutes);
    }

    private static void positive(String field, BigDecimal number) {
        if (number.signum() < 0)
            throw new IllegalArgumentException(field + " is " + number + "; it cannot be negative.");
    }
}
