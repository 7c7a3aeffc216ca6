package ripwright.internal.search;

import java.util.Set;
import ripwright.internal.model.PricedLayout;

/**
 * A group of parts that all come from one board.
 *
 * @param group its name
 * @param parts the places of its parts in the bill
 */
public record TogetherGroup(String group, Set<Integer> parts) {
    /** Keeps a copy of the set. */
    public TogetherGroup {
        parts = Set.copyOf(parts);
    }

    boolean madeBy(PricedLayout layout) {
        for (int part : layout.made()) if (parts.contains(part)) return true;
        return false;
    }
}
