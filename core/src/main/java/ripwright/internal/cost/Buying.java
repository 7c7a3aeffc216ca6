package ripwright.internal.cost;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.ToLongFunction;
import ripwright.bill.Part;
import ripwright.internal.geometry.BoardEdges;
import ripwright.internal.geometry.Layout;
import ripwright.internal.pieces.MadeCounts;
import ripwright.job.Job;
import ripwright.measure.Area;
import ripwright.measure.BoardFeet;
import ripwright.measure.Length;
import ripwright.plan.Shortage;
import ripwright.stock.Board;
import ripwright.stock.Edge;
import ripwright.stock.Species;

/**
 * What is short and what to buy for it. The smallest board that would do is the blank and what boards here lose at their ends
 * and edges at most, or what is left over at an end where that is more: the stack's boards of that wood, else all of that
 * thickness, else all. The amount is the missing blanks with a kerf each way and {@link WasteAllowance#ORDINARY} on top, counted as wood is sold,
 * and never less than one such board.
 */
public final class Buying {
    private final Job job;

    public Buying(Job job) {
        this.job = job;
    }

    public List<Shortage> shortages(List<Layout> layouts) {
        int[] made = new MadeCounts(job, layouts).counts();
        List<Shortage> shortages = new ArrayList<>();
        for (int i = 0; i < made.length; i++) {
            Part part = job.parts().get(i);
            int missing = part.count() - made[i];
            if (missing > 0) shortages.add(new Shortage(part.name(), missing, buy(part, missing)));
        }
        return shortages;
    }

    private Shortage.Buy buy(Part part, int missing) {
        List<Board> alike = alike(part);
        Length section = part.blankLength().max(job.saw().shortestRip().orElse(Length.ZERO));
        long over = job.breakdown().over().nanometers();
        long ends = Math.max(over, most(alike, board -> board.endTrim().near().nanometers()))
                + Math.max(over, most(alike, board -> board.endTrim().far().nanometers()));
        long edges = most(alike, board -> edgeLosses(board, section));
        Length shortest = section.plus(new Length(ends));
        Length narrowest = part.blankWidth().plus(new Length(edges));
        Area blanks = Area.of(
                part.blankLength().plus(job.saw().crosscutKerf()),
                part.blankWidth().plus(job.saw().ripKerf()));
        BoardFeet net = BoardFeet.counted(blanks, part.thickness()).times(missing);
        BoardFeet board = BoardFeet.counted(Area.of(shortest, narrowest), part.thickness());
        BoardFeet amount = WasteAllowance.ORDINARY.buy(net);
        return new Shortage.Buy(
                (amount.compareTo(board) < 0 ? board : amount).rounded(),
                part.species().stream()
                        .sorted(Comparator.comparing(Species::name))
                        .toList(),
                part.thickness(),
                shortest,
                narrowest);
    }

    /** The boards whose losses count for that part's wood. */
    private List<Board> alike(Part part) {
        List<Board> wood = job.stack().stream()
                .filter(board -> isOf(part, board) && part.takes(board.species()))
                .toList();
        if (!wood.isEmpty()) return wood;
        List<Board> thick =
                job.boards().stream().filter(board -> isOf(part, board)).toList();
        return thick.isEmpty() ? job.boards() : thick;
    }

    private static boolean isOf(Part part, Board board) {
        return !board.testOnly() && board.millsTo().equals(part.thickness());
    }

    /** What the left edge and the other lose in a section of that length, or of the whole board when it is shorter. */
    private static long edgeLosses(Board board, Length section) {
        BoardEdges edges = new BoardEdges(board);
        long left = edges.straight(Edge.LEFT)
                ? 0
                : edges.straighteningLoss(section.min(board.length()).nanometers());
        return left + (edges.straight(Edge.RIGHT) ? 0 : board.edgeLoss().nanometers());
    }

    private static long most(List<Board> boards, ToLongFunction<Board> loss) {
        return boards.stream().mapToLong(loss).max().orElse(0);
    }
}
