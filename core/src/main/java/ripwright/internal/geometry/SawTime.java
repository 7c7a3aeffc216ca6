package ripwright.internal.geometry;

import java.math.BigDecimal;
import ripwright.job.Job;
import ripwright.measure.Money;
import ripwright.saw.Labor;

/** How long work at the saws takes and what it costs, exactly. */
public final class SawTime {
    private final Labor labor;

    /** By that job's labor. */
    public SawTime(Job job) {
        this.labor = job.laborOrUnpaid();
    }

    /** Minutes for that work on boards. */
    public BigDecimal minutes(SawWork work) {
        return times(labor.ripMinutes(), work.strips() + work.straightened())
                .add(times(labor.crosscutMinutes(), work.crosscuts()));
    }

    /** Minutes for setting the fence {@code settings} times and ripping a test blank at {@code tested} of them. */
    public BigDecimal settingMinutes(int settings, int tested) {
        return times(labor.settingMinutes(), settings).add(times(labor.ripMinutes(), tested));
    }

    /** What so many minutes cost. */
    public Money cost(BigDecimal minutes) {
        return new Money(Money.of(labor.perHour().multiply(minutes)).value().divide(60));
    }

    private static BigDecimal times(BigDecimal minutes, int times) {
        return minutes.multiply(BigDecimal.valueOf(times));
    }
}
