package ripwright.solve;

import java.util.Set;
import ripwright.pattern.PricedLayout;

/**
 * A group of parts that all come from one board.
 *
 * @param group its name
 * @param parts the places of its parts in the bill
 */
public record Together(String group, Set<Integer> parts) {
    /** Keeps a copy of the set. */
    public Together {
        parts = Set.copyOf(parts);
    }

    boolean madeBy(PricedLayout layout) {
        for (int part : layout.made()) if (parts.contains(part)) return true;
        return false;
    }
}
