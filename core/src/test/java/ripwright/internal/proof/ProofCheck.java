package ripwright.internal.proof;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.IntStream;
import org.apache.commons.numbers.fraction.BigFraction;
import ripwright.bill.Part;
import ripwright.internal.model.ItemTypes;
import ripwright.internal.model.JobNumbers;
import ripwright.internal.model.ScaledMoney;
import ripwright.job.Job;
import ripwright.measure.Length;
import ripwright.saw.Labor;
import ripwright.stock.Board;

/**
 * Goes over a {@link ProofRecord} without the programs that made it: lists all sets of boards, and reckons what a board is
 * worth at the prices recorded from all choices of blanks it gives. Whole numbers alone. For bills of few choices.
 */
public final class ProofCheck {
    private static final int MOST_FAULTS = 5;

    final ItemTypes types; // numbers parts and boards as the record does; whether they are alike is looked at
    final int[] wanted;
    final long[] cost; // cost[b]: of a board of type b, in scaled money rounded down
    private final Job job;
    final BillChoices choices;
    final long[][] beside; // beside[b][c]: money a board of type b earns beside choice c, or NONE
    private final long due; // money due for rip settings whatever is made
    final boolean boardsAlone;
    private final List<String> faults = new ArrayList<>();
    private final Map<Class<?>, Integer> seen = new HashMap<>();

    ProofCheck(Job job) {
        this.job = job;
        types = new ItemTypes(new JobNumbers(job));
        wanted = IntStream.range(0, types.parts())
                .map(k -> Arrays.stream(types.partsOf(k))
                        .map(p -> job.parts().get(p).count())
                        .sum())
                .toArray();
        choices = new BillChoices(wanted);
        BigFraction money = new ScaledMoney(job).money(1).value().reciprocal();
        boolean paid = job.labor().isPresent() && job.labor().get().perHour().signum() > 0;
        boardsAlone = !paid && job.salvage().signum() == 0;
        cost = new long[types.boards()];
        beside = new long[cost.length][];
        for (int b = 0; b < cost.length; b++) {
            Board board = job.board(types.boardsOf(b)[0]);
            cost[b] = job.cost(board)
                    .value()
                    .multiply(money)
                    .bigDecimalValue(0, RoundingMode.FLOOR)
                    .longValueExact();
            beside[b] = beside(money, new BoardRoom(job, types, board));
        }
        due = due(money);
        alike();
    }

    private long[] beside(BigFraction money, BoardRoom room) {
        if (!boardsAlone) return new BoardEarns(job, money, choices, room).earned();
        boolean[] given = new BoardGives(choices, room).given();
        long[] beside = new long[given.length];
        for (int c = 0; c < given.length; c++) beside[c] = given[c] ? 0 : BoardEarns.NONE;
        return beside;
    }

    /** Every width must be set once that no ripped board has. */
    private long due(BigFraction money) {
        Labor labor = job.laborOrUnpaid();
        BigDecimal minutes =
                job.testRip().tries() > 0 ? labor.settingMinutes().add(labor.ripMinutes()) : labor.settingMinutes();
        Set<Length> widths = new HashSet<>();
        for (Part part : job.parts()) widths.add(part.blankWidth());
        for (Board board : job.boards()) if (board.ripped()) widths.remove(board.width());
        return boardsAlone ? 0 : widths.size() * BoardEarns.labor(job, money, minutes);
    }

    private void alike() {
        for (int k = 0; k < wanted.length; k++)
            for (int p : types.partsOf(k))
                fault(
                        !alike(job.parts().get(p), job.parts().get(types.partsOf(k)[0])),
                        "part " + p + " is not like others of type " + k);
        for (int b = 0; b < cost.length; b++)
            for (int i : types.boardsOf(b))
                fault(
                        !alike(job.board(i), job.board(types.boardsOf(b)[0])),
                        "board " + i + " is not like others of type " + b);
    }

    private static boolean alike(Part one, Part other) {
        return List.of(one.blankLength(), one.blankWidth(), one.thickness(), one.species(), one.boards())
                .equals(List.of(
                        other.blankLength(), other.blankWidth(), other.thickness(), other.species(), other.boards()));
    }

    private boolean alike(Board one, Board other) {
        return all(one).equals(all(other));
    }

    private List<Object> all(Board board) {
        return List.of(
                board.species(),
                board.thickness(),
                board.millsTo(),
                board.width(),
                board.widthAtFarEnd(),
                board.length(),
                board.crook(),
                board.straightEdges(),
                board.edgeLoss(),
                board.endTrim(),
                board.ripped(),
                job.cost(board),
                job.price(board),
                job.parts().stream()
                        .map(part -> part.boards().isEmpty() || part.boards().contains(board.id()))
                        .toList());
    }

    boolean fault(boolean wrong, String what) {
        if (wrong && faults.size() < MOST_FAULTS) faults.add(what);
        return wrong;
    }

    /** What is wrong with a record; nothing when no plan that makes the whole bill can cost less than it says. */
    List<String> faults(ProofRecord record) {
        for (ProofRecord.Row row : record.rows()) row(row);
        sets(record, new int[cost.length], 0);
        List<String> found = List.copyOf(faults);
        faults.clear();
        return found;
    }

    /** How many nodes of each sort the records so far needed to be right. */
    Map<Class<?>, Integer> seen() {
        return Map.copyOf(seen);
    }

    void see(ProofRecord.Node node) {
        seen.merge(node.getClass(), 1, Integer::sum);
    }

    private void row(ProofRecord.Row row) {
        String name = "row " + Arrays.toString(row.prices());
        fault(Arrays.stream(row.prices()).anyMatch(price -> price < 0), name + ": a price below zero");
        long need = bill(row.prices());
        fault(need != row.need(), name + ": " + row.need() + " is needed; the bill comes to " + need);
        for (int b = 0; b < cost.length; b++) {
            long worth = worth(b, row.prices(), wanted);
            fault(
                    row.worths()[b] < worth,
                    name + ": a board of type " + b + " is worth " + row.worths()[b] + "; a layout brings " + worth);
        }
    }

    /** What the blanks of the whole bill come to. */
    long bill(long[] prices) {
        return choices.sum(choices.size() - 1, prices);
    }

    /** What a board brings in at most, none below zero. */
    long worth(int type, long[] prices, int[] most) {
        long worth = 0;
        for (int c = 0; c < choices.size(); c++) {
            if (beside[type][c] == BoardEarns.NONE) continue;
            boolean within = true;
            for (int k = 0; k < most.length; k++) within &= choices.many(c, k) <= most[k];
            if (within) worth = Math.max(worth, choices.sum(c, prices) + beside[type][c]);
        }
        return worth;
    }

    /** What the whole bill costs at least, in scaled money, by trying all that each board may give of it. */
    long cheapest() {
        long[] least = new long[choices.size()];
        Arrays.fill(least, Long.MAX_VALUE / 2);
        least[0] = due;
        for (int b = 0; b < cost.length; b++) {
            for (int n = 0; n < types.boardsOf(b).length; n++) {
                long[] before = least.clone();
                for (int c = 0; c < least.length; c++)
                    for (int part : choices.parts(c))
                        if (part > 0 && beside[b][part] > BoardEarns.NONE)
                            least[c] = Math.min(least[c], before[c - part] + cost[b] - beside[b][part]);
            }
        }
        return least[least.length - 1];
    }

    private void sets(ProofRecord record, int[] many, int decided) {
        if (decided == many.length) {
            set(record, many);
            return;
        }
        for (int n = 0; n <= types.boardsOf(decided).length; n++) {
            many[decided] = n;
            sets(record, many, decided + 1);
        }
        many[decided] = 0;
    }

    private void set(ProofRecord record, int[] many) {
        long bought = due;
        for (int b = 0; b < many.length; b++) bought += many[b] * cost[b];
        if (boardsAlone && bought >= record.money()) return;
        for (ProofRecord.Row row : record.rows()) {
            long lacks = row.need();
            for (int b = 0; b < many.length; b++) lacks -= many[b] * row.worths()[b];
            if (boardsAlone ? lacks > 0 : bought + lacks >= record.money()) return;
        }
        ProofRecord.Tried tried = record.sets().stream()
                .filter(other -> Arrays.equals(other.many(), many))
                .findFirst()
                .orElse(null);
        String name = "set " + Arrays.toString(many);
        if (fault(tried == null, name + " breaks no row and was not tried") || tried == null) return;
        new SetTree(this, name, boards(many), record.money() - bought).node(tried.root());
    }

    private static int[] boards(int[] many) {
        return IntStream.range(0, many.length)
                .flatMap(type -> IntStream.generate(() -> type).limit(many[type]))
                .toArray();
    }
}
