package ripwright.internal.proof;

import java.util.Arrays;
import java.util.Set;
import java.util.TreeSet;

/**
 * Which choices of blanks a board gives, where nothing but blanks counts: for every choice the shortest section that holds
 * it, and then whether up to three such sections come to no more than the board. The slow twin of the pricing problem, written apart
 * from it: no prices, no grid, no tables by length. Exact for clear boards that are as wide everywhere.
 */
public final class BoardGives {
    private static final long NONE = Long.MAX_VALUE / 4;

    private final BillChoices choices;
    private final BoardRoom room;

    BoardGives(BillChoices choices, BoardRoom room) {
        this.choices = choices;
        this.room = room;
    }

    /** Whether it gives each choice. */
    boolean[] given() {
        boolean[] given = new boolean[choices.size()];
        if (room.room <= 0) {
            given[0] = true;
            return given;
        }
        long[] one = room.board.ripped() ? strip() : sections();
        long[] two = room.board.ripped() ? one : together(one, one);
        long[] three = room.board.ripped() ? one : together(two, one);
        for (int c = 0; c < given.length; c++) given[c] = three[c] <= room.room + room.crosscutKerf;
        return given;
    }

    /** A kerf more than each choice takes of a ripped board. */
    private long[] strip() {
        long[] takes = new long[choices.size()];
        for (int c = 1; c < takes.length; c++)
            takes[c] = choices.only(c, room.barred()) > 0 ? NONE : room.along(choices, c) + room.crosscutKerf;
        return takes;
    }

    /** A kerf more than the shortest section that holds each choice. */
    private long[] sections() {
        long[] shortest = new long[choices.size()];
        Arrays.fill(shortest, NONE);
        shortest[0] = 0;
        int[] barred = room.barred();
        for (long length : lengths()) {
            int[][] strips = new int[room.widths.length][];
            for (int v = 0; v < strips.length; v++) strips[v] = strips(v, length);
            long across = room.usable(length) + room.ripKerf;
            for (int c = 1; c < shortest.length; c++) {
                if (shortest[c] < NONE || choices.only(c, barred) > 0) continue;
                long left = across;
                for (int v = 0; v < strips.length && left >= 0; v++) {
                    int many = strips[v][choices.only(c, room.widths[v])];
                    left = many == Integer.MAX_VALUE ? -1 : left - many * (room.width[v] + room.ripKerf);
                }
                if (left >= 0) shortest[c] = length + room.crosscutKerf;
            }
        }
        return shortest;
    }

    /** The lengths that sections need: what some strip's blanks come to, or the shortest there may be. */
    private Set<Long> lengths() {
        Set<Long> lengths = new TreeSet<>();
        for (int[] types : room.widths)
            for (int c : choices.parts(choices.only(choices.size() - 1, types)))
                if (c > 0) lengths.add(Math.max(room.shortestSection, room.along(choices, c)));
        lengths.removeIf(length -> length > room.longestSection);
        return lengths;
    }

    /** The fewest strips of that length that hold each choice of one width; the others are not told. */
    private int[] strips(int v, long length) {
        int[] fewest = new int[choices.size()];
        for (int c : choices.parts(choices.only(choices.size() - 1, room.widths[v]))) {
            if (c == 0) continue;
            fewest[c] = Integer.MAX_VALUE;
            for (int part : choices.parts(c))
                if (part > 0 && room.along(choices, part) <= length && fewest[c - part] < fewest[c] - 1)
                    fewest[c] = fewest[c - part] + 1;
        }
        return fewest;
    }

    private long[] together(long[] some, long[] one) {
        long[] both = some.clone();
        for (int c = 0; c < both.length; c++)
            for (int part : choices.parts(c)) both[c] = Math.min(both[c], some[c - part] + one[part]);
        return both;
    }
}
