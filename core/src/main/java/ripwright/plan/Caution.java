package ripwright.plan;

import java.util.List;

/**
 * What to mind at the saw.
 *
 * @param steps the numbers of the steps it is about, from 1; empty when it is about all
 * @param text what to mind
 */
public record Caution(List<Integer> steps, String text) {
    /** Keeps a copy of the list. */
    public Caution {
        steps = List.copyOf(steps);
    }
}
