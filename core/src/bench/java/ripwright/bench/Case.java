package ripwright.bench;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.OptionalLong;
import ripwright.job.Job;
import ripwright.job.Limits;

/**
 * One job to plan.
 *
 * @param job the job, whose own limits do not count
 * @param known the best net cost known, to the cent
 * @param seed what the searches draw their chances from
 */
record Case(Job job, Optional<BigDecimal> known, long seed) {
    /** The job, to be planned within {@code seconds}. */
    Job within(BigDecimal seconds) {
        return job.withLimits(new Limits(Optional.of(seconds), OptionalLong.of(seed), OptionalInt.empty()));
    }
}
