package ripwright.testing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import ripwright.bill.Part;
import ripwright.internal.geometry.Layout;
import ripwright.job.Job;

/**
 * Plans as one would with a pencil: the widest parts first, of equal width the longest; each goes into the first strip of
 * its width that has room, else a new strip is ripped from the first board that has room. Parts of one {@code together}
 * group are laid out when the first of them is due, on the first board that takes them all; where none does, none is made.
 */
public final class HandRule {
    private final Job job;
    private final List<HandBoard> boards = new ArrayList<>();

    private HandRule(Job job) {
        this.job = job;
        for (int place = 0; place < job.boards().size(); place++) boards.add(new HandBoard(job, place));
    }

    /** The layouts of the boards that are cut, in the order of the job. Parts that did not fit are left out. */
    public static List<Layout> plan(Job job) {
        return new HandRule(job).plan();
    }

    /** Every copy of every part by its place in the bill: widest first, then longest, then as in the bill. */
    static List<Integer> widestFirst(Job job) {
        List<Integer> copies = new ArrayList<>();
        for (int part = 0; part < job.parts().size(); part++)
            for (int i = 0; i < job.parts().get(part).count(); i++) copies.add(part);
        copies.sort(order(job));
        return copies;
    }

    /** Widest first, then longest. */
    static Comparator<Integer> order(Job job) {
        return Comparator.<Integer, Part>comparing(
                        part -> job.parts().get(part),
                        Comparator.comparing(Part::blankWidth).reversed())
                .thenComparing(
                        part -> job.parts().get(part),
                        Comparator.comparing(Part::blankLength).reversed());
    }

    private List<Layout> plan() {
        Set<String> done = new HashSet<>();
        List<Integer> copies = widestFirst(job);
        for (int part : copies) {
            Optional<String> group = job.parts().get(part).together();
            if (group.isEmpty()) one(part);
            else if (done.add(group.get()))
                together(copies.stream()
                        .filter(copy -> job.parts().get(copy).together().equals(group))
                        .toList());
        }
        return boards.stream().flatMap(board -> board.layout().stream()).toList();
    }

    private void one(int part) {
        for (HandBoard board : boards) if (board.intoStrip(part)) return;
        for (HandBoard board : boards) if (board.intoNewStrip(part)) return;
    }

    private void together(List<Integer> copies) {
        for (int place = 0; place < boards.size(); place++) {
            HandBoard trial = boards.get(place).copy();
            if (copies.stream().allMatch(trial::into)) {
                boards.set(place, trial);
                return;
            }
        }
    }
}
