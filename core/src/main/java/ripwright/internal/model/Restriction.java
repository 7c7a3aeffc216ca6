package ripwright.internal.model;

import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import ripwright.measure.Length;

/**
 * What a search may not use, so that test rips have wood.
 *
 * @param ends for places of boards how much stays uncut before the far end trim
 * @param widths widths that no strip is ripped to
 */
public record Restriction(Map<Integer, Length> ends, Set<Length> widths) {
    /** Everything may be used. */
    public static final Restriction NOTHING = new Restriction(Map.of(), Set.of());

    /** Keeps copies. */
    public Restriction {
        ends = Map.copyOf(ends);
        widths = Set.copyOf(widths);
    }

    /** With that much at the far end of that board staying uncut too. */
    public Restriction withEnd(int board, Length length) {
        Map<Integer, Length> more = new HashMap<>(ends);
        more.put(board, length);
        return new Restriction(more, widths);
    }

    /** With no strip ripped to that width either. */
    public Restriction withWidth(Length width) {
        Set<Length> more = new HashSet<>(widths);
        more.add(width);
        return new Restriction(ends, more);
    }

    long end(int board) {
        return ends.getOrDefault(board, Length.ZERO).nanometers();
    }

    /** Whether no strip is to be ripped to that width, in nanometers. */
    public boolean bars(long width) {
        return widths.contains(new Length(width));
    }
}
