package ripwright.testing;

import java.util.List;
import ripwright.internal.geometry.Layout;
import ripwright.measure.BoardFeet;
import ripwright.measure.Money;

/**
 * The best that can be done with a job.
 *
 * @param complete whether every part can be made
 * @param cost the lowest cost of making as much as can be made
 * @param made the board feet of the finished parts that are made, the most there can be
 * @param layouts one way to do it
 */
public record Optimum(boolean complete, Money cost, BoardFeet made, List<Layout> layouts) {
    /** Keeps a copy of the list. */
    public Optimum {
        layouts = List.copyOf(layouts);
    }
}
