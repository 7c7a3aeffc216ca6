package ripwright.internal.firstfit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.IntPredicate;
import ripwright.bill.Part;
import ripwright.internal.geometry.Layout;
import ripwright.job.Job;

/**
 * First-fit decreasing, as one would plan with a pencil: the widest parts first, of equal width the longest; each goes into the
 * first strip of its width that has room, else a new strip is ripped from the first board that has room. Parts of one
 * {@code together} group are laid out when the first of them is due, on the first board that takes them all; where none does,
 * none is made. Leaves test wood to chance.
 *
 * @see "D. S. Johnson, Near-Optimal Bin Packing Algorithms, PhD thesis, MIT (1973), for the rule on one dimension; from memory"
 */
public final class FirstFitDecreasing {
    private final Job job;
    private final List<FirstFitBoard> boards = new ArrayList<>();

    private FirstFitDecreasing(Job job, IntPredicate cut) {
        this.job = job;
        for (int place = 0; place < job.boards().size(); place++)
            if (cut.test(place)) boards.add(new FirstFitBoard(job, place));
    }

    /** The layouts of the boards that are cut, in the order of the job. Parts that did not fit are left out. */
    public static List<Layout> plan(Job job) {
        return new FirstFitDecreasing(job, place -> true).plan();
    }

    /** The same where the board at that place of {@code job.boards()} stays whole. */
    public static List<Layout> holdingBack(Job job, int board) {
        return new FirstFitDecreasing(job, place -> place != board).plan();
    }

    /** Every copy of every part by its place in the bill: widest first, then longest, then as in the bill. */
    public static List<Integer> widestFirst(Job job) {
        List<Integer> copies = new ArrayList<>();
        for (int part = 0; part < job.parts().size(); part++)
            for (int i = 0; i < job.parts().get(part).count(); i++) copies.add(part);
        copies.sort(order(job));
        return copies;
    }

    /** Widest first, then longest. */
    public static Comparator<Integer> order(Job job) {
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
        for (FirstFitBoard board : boards) if (board.intoStrip(part)) return;
        for (FirstFitBoard board : boards) if (board.intoNewStrip(part)) return;
    }

    private void together(List<Integer> copies) {
        for (int place = 0; place < boards.size(); place++) {
            FirstFitBoard trial = boards.get(place).copy();
            if (copies.stream().allMatch(trial::into)) {
                boards.set(place, trial);
                return;
            }
        }
    }
}
