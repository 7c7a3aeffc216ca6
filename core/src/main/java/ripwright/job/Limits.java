package ripwright.job;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.OptionalLong;

/**
 * How hard to look for a plan.
 *
 * @param seconds how long a planning may take, set-up and replay included; a tenth of a second at least is kept for writing
 *     the plan down. Absent: until the search stops getting better
 * @param seed what the search draws its chances from; absent: 0
 * @param threads how many threads it may use; absent: one for each processor, two at the most
 */
public record Limits(Optional<BigDecimal> seconds, OptionalLong seed, OptionalInt threads) {
    /** No limit given. */
    public static final Limits NONE = new Limits(Optional.empty(), OptionalLong.empty(), OptionalInt.empty());

    /**
     * Refuses a time that is not above 0 and fewer threads than one.
     *
     * @throws IllegalArgumentException when it is either
     */
    public Limits {
        if (seconds.isPresent() && seconds.get().signum() <= 0)
            throw new IllegalArgumentException("seconds is " + seconds.get() + "; it must be above 0.");
        if (threads.isPresent() && threads.getAsInt() < 1)
            throw new IllegalArgumentException("threads is " + threads.getAsInt() + "; it must be at least 1.");
    }
}
