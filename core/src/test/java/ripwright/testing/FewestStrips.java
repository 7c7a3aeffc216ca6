package ripwright.testing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import ripwright.bill.Part;
import ripwright.job.Job;
import ripwright.measure.Money;
import ripwright.stock.Board;

/**
 * The least stock cost of a job on clear ripped stock, by trying every board for every blank: slow and obvious. Meant for up
 * to ten blanks.
 */
public final class FewestStrips {
    private final Job job;
    private final List<Part> blanks = new ArrayList<>();
    private final long[] taken; // taken[b]: nanometers of board b, a kerf for each blank
    private Optional<Money> least = Optional.empty();

    private FewestStrips(Job job) {
        this.job = job;
        taken = new long[job.boards().size()];
        for (Part part : job.parts()) for (int n = part.count(); n > 0; n--) blanks.add(part);
    }

    /** The least cost of all parts; empty when the stack cannot make them. */
    public static Optional<Money> cost(Job job) {
        FewestStrips strips = new FewestStrips(job);
        strips.place(0, Money.ZERO);
        return strips.least;
    }

    private void place(int blank, Money spent) {
        if (least.isPresent() && spent.compareTo(least.get()) >= 0) return;
        if (blank == blanks.size()) {
            least = Optional.of(spent);
            return;
        }
        Part part = blanks.get(blank);
        long kerf = job.saw().crosscutKerf().nanometers();
        long size = part.blankLength().nanometers() + kerf;
        for (int b = 0; b < taken.length; b++) {
            Board board = job.board(b);
            long room = board.length().nanometers()
                    - board.endTrim().near().nanometers()
                    - board.endTrim().far().nanometers();
            boolean fits = taken[b] + size <= room + kerf
                    && part.takes(board.species())
                    && part.thickness().equals(board.millsTo())
                    && part.blankWidth().equals(board.width());
            if (!fits) continue;
            Money more = taken[b] == 0 ? spent.plus(job.cost(board)) : spent;
            taken[b] += size;
            place(blank + 1, more);
            taken[b] -= size;
        }
    }
}
