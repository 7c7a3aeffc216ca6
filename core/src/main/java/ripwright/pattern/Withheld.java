package ripwright.pattern;

import java.util.HashSet;
import java.util.Set;
import ripwright.measure.Length;

/**
 * What a search may not use, so that test rips have wood.
 *
 * @param boards places of boards that stay whole
 * @param widths widths that no strip is ripped to
 */
public record Withheld(Set<Integer> boards, Set<Length> widths) {
    /** Everything may be used. */
    public static final Withheld NOTHING = new Withheld(Set.of(), Set.of());

    /** Keeps copies of the sets. */
    public Withheld {
        boards = Set.copyOf(boards);
        widths = Set.copyOf(widths);
    }

    /** With that board staying whole too. */
    public Withheld withBoard(int board) {
        Set<Integer> more = new HashSet<>(boards);
        more.add(board);
        return new Withheld(more, widths);
    }

    /** With no strip ripped to that width either. */
    public Withheld withWidth(Length width) {
        Set<Length> more = new HashSet<>(widths);
        more.add(width);
        return new Withheld(boards, more);
    }

    boolean keeps(int board, boolean ripped, long width) {
        return boards.contains(board) || (!ripped && !widths.isEmpty() && widths.contains(new Length(width)));
    }
}
