package ripwright.testing;

import java.util.List;
import ripwright.internal.geometry.Layout;
import ripwright.job.Job;
import ripwright.measure.Money;

/**
 * A job whose best stock cost is known.
 *
 * @param job the job
 * @param best the lowest stock cost of all plans that make every part
 * @param layouts a way to cut it that costs just that
 */
public record Constructed(Job job, Money best, List<Layout> layouts) {
    /** Keeps a copy of the list. */
    public Constructed {
        layouts = List.copyOf(layouts);
    }
}
