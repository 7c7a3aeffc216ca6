package ripwright.settle;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import ripwright.stock.Board;
import ripwright.stock.History;

/**
 * A finished plan as stack and rack feel it.
 *
 * @param cut the boards that leave the stack, in the order they lay there
 * @param taken the offcuts that leave the rack, in the order they lay there
 * @param entered the offcuts that the plan leaves, as they lie on the rack from then on
 */
public record Settlement(List<Board> cut, List<Taken> taken, List<Board> entered) {
    /**
     * An offcut that leaves the rack.
     *
     * @param place how many offcuts lay before it
     * @param offcut the offcut
     */
    public record Taken(int place, Board offcut) {
        /**
         * Refuses a place before the first.
         *
         * @throws IllegalArgumentException when it is negative
         */
        public Taken {
            if (place < 0) throw new IllegalArgumentException("place is " + place + "; the first is 0.");
        }
    }

    /** Keeps copies of the lists. */
    public Settlement {
        cut = List.copyOf(cut);
        taken = List.copyOf(taken);
        entered = List.copyOf(entered);
    }

    /** The rack once the plan is booked: what is new comes last. */
    public List<Board> settled(List<Board> rack) {
        List<Board> after = without(rack, taken.stream().map(Taken::offcut).toList());
        after.addAll(entered);
        return List.copyOf(after);
    }

    /** The rack once that is taken back: what {@link #settled} was given, where nothing else has changed since. */
    public List<Board> unsettled(List<Board> rack) {
        List<Board> before = without(rack, entered);
        for (Taken back : taken) before.add(Math.min(back.place(), before.size()), back.offcut());
        return List.copyOf(before);
    }

    /** The offcuts of this plan that no longer lie on that rack as they entered it; while there are any it stands. */
    public List<Board> gone(List<Board> rack) {
        Set<Board> there = new HashSet<>(rack);
        return entered.stream().filter(offcut -> !there.contains(offcut)).toList();
    }

    /** The offcuts of that rack under an id or a mark of one that would come back to it. */
    public List<Board> inTheWay(List<Board> rack) {
        Set<String> ids = new HashSet<>();
        Set<String> marks = new HashSet<>();
        for (Taken back : taken) {
            ids.add(back.offcut().id());
            marks.add(markKey(back.offcut()));
        }
        return without(rack, entered).stream()
                .filter(offcut -> ids.contains(offcut.id()) || marks.contains(markKey(offcut)))
                .toList();
    }

    /** What is chalked on an offcut: its mark, or else its id. */
    public static String mark(Board offcut) {
        return offcut.history().flatMap(History::mark).orElse(offcut.id());
    }

    /** Marks that differ only in case are easily mistaken for each other. */
    static String markKey(Board offcut) {
        return markKey(mark(offcut));
    }

    static String markKey(String mark) {
        return mark.strip().toLowerCase(Locale.ROOT);
    }

    private static List<Board> without(List<Board> rack, List<Board> leaving) {
        Set<String> ids = leaving.stream().map(Board::id).collect(Collectors.toSet());
        List<Board> rest = new ArrayList<>(rack);
        rest.removeIf(offcut -> ids.contains(offcut.id()));
        return rest;
    }
}
