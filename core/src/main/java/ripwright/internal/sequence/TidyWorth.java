package ripwright.internal.sequence;

import java.util.List;
import ripwright.job.Job;
import ripwright.measure.Length;

/**
 * How well a few strips are set in order, told apart by what counts most first.
 *
 * @param kept how much of them goes back to the rack
 * @param paid how many crosscuts they take where time costs something, else 0
 * @param spare free wood beside fitted blanks, each up to an inch
 * @param crosscuts how many crosscuts they take
 * @param apart how far blanks of one group lie apart
 * @param hidden how many hidden parts come from poor wood
 * @param lumps the squares of what is left of each strip, added up: more for one long piece than for two short ones
 */
public record TidyWorth(double kept, long paid, long spare, long crosscuts, long apart, long hidden, double lumps) {
    private static final long ENOUGH = Length.inches("1").nanometers();
    private static final double NANOMETER = 1e-9;

    /** Of strips of one width. */
    static TidyWorth of(Job job, List<TidyStrip> strips, long apart) {
        boolean paid = job.laborOrUnpaid().perHour().signum() > 0;
        double kept = 0;
        long crosscuts = 0;
        long spare = 0;
        long hidden = 0;
        double lumps = 0;
        for (TidyStrip strip : strips) {
            double price = job.price(job.board(strip.place)).doubleValue();
            kept += strip.kept() * price;
            crosscuts += strip.crosscuts();
            spare += strip.spared() * Math.min(ENOUGH, strip.gap());
            hidden += strip.hiddenInPoorWood();
            lumps += (double) strip.gap() * strip.gap();
        }
        return new TidyWorth(kept, paid ? crosscuts : 0, spare, crosscuts, apart, hidden, lumps);
    }

    /** Whether it is to be preferred and neither costs more nor brings less back. */
    boolean betterThan(TidyWorth other) {
        if (kept < other.kept * (1 - NANOMETER) || paid > other.paid) return false;
        if (spare != other.spare) return spare > other.spare;
        if (crosscuts != other.crosscuts) return crosscuts < other.crosscuts;
        if (apart != other.apart) return apart < other.apart;
        if (hidden != other.hidden) return hidden > other.hidden;
        return lumps > other.lumps * (1 + NANOMETER);
    }
}
