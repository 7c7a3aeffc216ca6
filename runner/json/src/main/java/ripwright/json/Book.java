package ripwright.json;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import ripwright.measure.Unit;
import ripwright.settle.Settlement;
import ripwright.stock.Board;

/**
 * The plans that are booked against a rack, oldest first.
 *
 * @param units what its lengths are written in
 * @param booked every plan that is not taken back
 */
public record Book(Unit units, List<Booked> booked) {
    /** Keeps a copy of the list. */
    public Book {
        booked = List.copyOf(booked);
    }

    /** The first entry of the plan with that digest. */
    public Optional<Booked> of(String plan) {
        return booked.stream().filter(entry -> entry.plan().equals(plan)).findFirst();
    }

    /** With one plan more, the last. */
    public Book with(Booked entry) {
        List<Booked> more = new ArrayList<>(booked);
        more.add(entry);
        return new Book(units, more);
    }

    /** Without one of them. */
    public Book without(Booked entry) {
        List<Booked> fewer = new ArrayList<>(booked);
        fewer.remove(entry);
        return new Book(units, fewer);
    }

    /** The ids of all offcuts that ever entered or left the rack. */
    public Set<String> ids() {
        Set<String> ids = new HashSet<>();
        for (Booked entry : booked) {
            for (Settlement.Taken taken : entry.settlement().taken())
                ids.add(taken.offcut().id());
            for (Board entered : entry.settlement().entered()) ids.add(entered.id());
        }
        return ids;
    }

    /** The last plan that took the offcut of that id from the rack. */
    public Optional<Booked> tookLast(String id) {
        return last(entry -> entry.settlement().taken().stream()
                .anyMatch(taken -> taken.offcut().id().equals(id)));
    }

    /** The last plan that cut that very board of a stack: the same id and the same measures. */
    public Optional<Booked> cutLast(Board board) {
        return last(entry -> entry.settlement().cut().contains(board));
    }

    private Optional<Booked> last(Predicate<Booked> wanted) {
        for (int i = booked.size() - 1; i >= 0; i--) if (wanted.test(booked.get(i))) return Optional.of(booked.get(i));
        return Optional.empty();
    }

    /** The offcut of that id as a plan entered it. */
    public Optional<Board> entered(String id) {
        return booked.stream()
                .flatMap(entry -> entry.settlement().entered().stream())
                .filter(offcut -> offcut.id().equals(id))
                .findFirst();
    }
}
