package ripwright.bound;

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
import ripwright.job.Job;
import ripwright.measure.Length;
import ripwright.pattern.Coins;
import ripwright.pattern.JobNumbers;
import ripwright.pattern.Kinds;
import ripwright.saw.Labor;
import ripwright.stock.Board;

/**
 * Goes over a {@link ProofRecord} without the programs that made it: lists all sets of boards, and reckons what a board is
 * worth at the prices recorded from all choices of blanks it gives. Whole numbers alone. For bills of few choices.
 */
final class ProofCheck {
    private static final int MOST_FAULTS = 5;

    final Kinds kinds; // numbers parts and boards as the record does; whether they are alike is looked at
    final int[] wanted;
    final long[] cost; // cost[b]: of a board of kind b, in coins rounded down
    private final Job job;
    private final BillChoices choices;
    private final long[][] beside; // beside[b][c]: coins a board of kind b earns beside choice c, or NONE
    private final long due; // coins due for rip settings whatever is made
    private final boolean boardsAlone;
    private final List<String> faults = new ArrayList<>();
    private final Map<Class<?>, Integer> seen = new HashMap<>();

    ProofCheck(Job job) {
        this.job = job;
        kinds = new Kinds(new JobNumbers(job));
        wanted = IntStream.range(0, kinds.parts())
                .map(k -> Arrays.stream(kinds.partsOf(k))
                        .map(p -> job.parts().get(p).count())
                        .sum())
                .toArray();
        choices = new BillChoices(wanted);
        BigFraction coins = new Coins(job).money(1).value().reciprocal();
        boolean paid = job.labor().isPresent() && job.labor().get().perHour().signum() > 0;
        boardsAlone = !paid && job.salvage().signum() == 0;
        cost = new long[kinds.boards()];
        beside = new long[cost.length][];
        for (int b = 0; b < cost.length; b++) {
            Board board = job.board(kinds.boardsOf(b)[0]);
            cost[b] = job.cost(board)
                    .value()
                    .multiply(coins)
                    .bigDecimalValue(0, RoundingMode.FLOOR)
                    .longValueExact();
            beside[b] = beside(coins, new BoardRoom(job, kinds, board));
        }
        due = due(coins);
        alike();
    }

    private long[] beside(BigFraction coins, BoardRoom room) {
        if (!boardsAlone) return new BoardEarns(job, coins, choices, room).earned();
        boolean[] given = new BoardGives(choices, room).given();
        long[] beside = new long[given.length];
        for (int c = 0; c < given.length; c++) beside[c] = given[c] ? 0 : BoardEarns.NONE;
        return beside;
    }

    /** Every width must be set once that no ripped board has. */
    private long due(BigFraction coins) {
        Labor labor = job.laborOrUnpaid();
        BigDecimal minutes =
                job.testRip().tries() > 0 ? labor.settingMinutes().add(labor.ripMinutes()) : labor.settingMinutes();
        Set<Length> widths = new HashSet<>();
        for (Part part : job.parts()) widths.add(part.blankWidth());
        for (Board board : job.boards()) if (board.ripped()) widths.remove(board.width());
        return boardsAlone ? 0 : widths.size() * BoardEarns.labor(job, coins, minutes);
    }

    private void alike() {
        for (int k = 0; k < wanted.length; k++)
            for (int p : kinds.partsOf(k))
                fault(
                        !alike(job.parts().get(p), job.parts().get(kinds.partsOf(k)[0])),
                        "part " + p + " is not like others of kind " + k);
        for (int b = 0; b < cost.length; b++)
            for (int i : kinds.boardsOf(b))
                fault(
                        !alike(job.board(i), job.board(kinds.boardsOf(b)[0])),
                        "board " + i + " is not like others of kind " + b);
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

    private boolean fault(boolean wrong, String what) {
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

    private void row(ProofRecord.Row row) {
        String name = "row " + Arrays.toString(row.prices());
        fault(Arrays.stream(row.prices()).anyMatch(price -> price < 0), name + ": a price below zero");
        long need = bill(row.prices());
        fault(need != row.need(), name + ": " + row.need() + " is needed; the bill comes to " + need);
        for (int b = 0; b < cost.length; b++) {
            long worth = worth(b, row.prices(), wanted);
            fault(
                    row.worths()[b] < worth,
                    name + ": a board of kind " + b + " is worth " + row.worths()[b] + "; a layout brings " + worth);
        }
    }

    /** What the blanks of the whole bill come to. */
    private long bill(long[] prices) {
        return choices.sum(choices.size() - 1, prices);
    }

    /** What a board brings in at most, none below zero. */
    long worth(int kind, long[] prices, int[] most) {
        long worth = 0;
        for (int c = 0; c < choices.size(); c++) {
            if (beside[kind][c] == BoardEarns.NONE) continue;
            boolean within = true;
            for (int k = 0; k < most.length; k++) within &= choices.many(c, k) <= most[k];
            if (within) worth = Math.max(worth, choices.sum(c, prices) + beside[kind][c]);
        }
        return worth;
    }

    private void sets(ProofRecord record, int[] many, int decided) {
        if (decided == many.length) {
            set(record, many);
            return;
        }
        for (int n = 0; n <= kinds.boardsOf(decided).length; n++) {
            many[decided] = n;
            sets(record, many, decided + 1);
        }
        many[decided] = 0;
    }

    private void set(ProofRecord record, int[] many) {
        long bought = due;
        for (int b = 0; b < many.length; b++) bought += many[b] * cost[b];
        if (boardsAlone && bought >= record.coins()) return;
        for (ProofRecord.Row row : record.rows()) {
            long lacks = row.need();
            for (int b = 0; b < many.length; b++) lacks -= many[b] * row.worths()[b];
            if (boardsAlone ? lacks > 0 : bought + lacks >= record.coins()) return;
        }
        ProofRecord.Tried tried = record.sets().stream()
                .filter(other -> Arrays.equals(other.many(), many))
                .findFirst()
                .orElse(null);
        String name = "set " + Arrays.toString(many);
        if (fault(tried == null, name + " breaks no row and was not tried") || tried == null) return;
        new Tree(name, boards(many), record.coins() - bought).node(tried.root());
    }

    private static int[] boards(int[] many) {
        return IntStream.range(0, many.length)
                .flatMap(kind -> IntStream.generate(() -> kind).limit(many[kind]))
                .toArray();
    }

    /** What leads to one node of a set's tree: how many blanks of a kind each of its boards makes. */
    private final class Tree {
        final String name;
        final int[] boards;
        final long dearest; // coins; what a plan must not cost less than beyond its boards
        final int[][] least;
        final int[][] most;

        Tree(String name, int[] boards, long dearest) {
            this.name = name;
            this.boards = boards;
            this.dearest = dearest;
            least = new int[boards.length][wanted.length];
            most = new int[boards.length][];
            for (int s = 0; s < boards.length; s++) most[s] = wanted.clone();
        }

        Tree(Tree from, List<Branch> branches) {
            name = from.name + " > " + branches;
            boards = from.boards;
            dearest = from.dearest;
            least = Arrays.stream(from.least).map(int[]::clone).toArray(int[][]::new);
            most = Arrays.stream(from.most).map(int[]::clone).toArray(int[][]::new);
            for (Branch branch : branches) {
                int s = branch.board();
                int k = branch.partKind();
                if (branch.atLeast()) least[s][k] = Math.max(least[s][k], branch.many());
                else most[s][k] = Math.min(most[s][k], branch.many());
            }
        }

        void node(ProofRecord.Node node) {
            seen.merge(node.getClass(), 1, Integer::sum);
            if (node instanceof ProofRecord.Fork fork) {
                fork(fork.ways());
                for (ProofRecord.Way way : fork.ways()) new Tree(this, way.branches()).node(way.node());
            } else if (node instanceof ProofRecord.Closed closed) {
                closed(closed);
            } else if (node instanceof ProofRecord.Barred barred) {
                barred(barred);
            } else if (node == ProofRecord.Leaf.TORN) {
                fault(IntStream.range(0, boards.length).noneMatch(this::torn), name + ": nothing is torn");
            } else {
                fault(true, name + ": left open");
            }
        }

        /** How many blanks a board makes at most, since the others make their least. */
        int[] mostOf(int s) {
            int[] own = most[s].clone();
            for (int k = 0; k < own.length; k++) {
                int left = wanted[k];
                for (int o = 0; o < boards.length; o++) left -= o == s ? 0 : least[o][k];
                own[k] = Math.min(own[k], left);
            }
            return own;
        }

        boolean torn(int s) {
            int[] own = mostOf(s);
            return IntStream.range(0, own.length).anyMatch(k -> least[s][k] > own[k]);
        }

        /** Whatever is made takes one of the ways: tries every number of each blank that a branch is about. */
        void fork(List<ProofRecord.Way> ways) {
            List<Branch> about = new ArrayList<>();
            for (ProofRecord.Way way : ways)
                for (Branch branch : way.branches())
                    if (about.stream().noneMatch(other -> same(other, branch))) about.add(branch);
            covered(ways, about, new int[about.size()], 0);
        }

        void covered(List<ProofRecord.Way> ways, List<Branch> about, int[] made, int decided) {
            if (decided < made.length) {
                Branch next = about.get(decided);
                int from = least[next.board()][next.partKind()];
                for (int n = from; n <= most[next.board()][next.partKind()]; n++) {
                    made[decided] = n;
                    covered(ways, about, made, decided + 1);
                }
                return;
            }
            boolean some = ways.stream()
                    .anyMatch(way -> way.branches().stream().allMatch(branch -> {
                        int i = 0;
                        while (!same(about.get(i), branch)) i++;
                        return branch.atLeast() ? made[i] >= branch.many() : made[i] <= branch.many();
                    }));
            fault(!some, name + ": no way for " + Arrays.toString(made) + " of " + about);
        }

        void closed(ProofRecord.Closed closed) {
            String here = name + ", closed by " + Arrays.toString(closed.prices());
            fault(Arrays.stream(closed.prices()).anyMatch(price -> price < 0), here + ": a price below zero");
            long lacks = bill(closed.prices());
            for (int i = 0; i < closed.more().length; i++) {
                Branch branch = closed.branches().get(i);
                long more = closed.more()[i];
                int[] limits = branch.atLeast() ? least[branch.board()] : most[branch.board()];
                int limit = limits[branch.partKind()];
                boolean leads = branch.atLeast() ? limit >= branch.many() : limit <= branch.many();
                fault(!leads, here + ": " + branch + " does not lead here");
                fault(branch.atLeast() ? more < 0 : more > 0, here + ": " + branch + " adds " + more);
                lacks += more * branch.many();
            }
            for (int s = 0; s < boards.length; s++) {
                long[] own = closed.prices().clone();
                for (int i = 0; i < closed.more().length; i++)
                    if (closed.branches().get(i).board() == s)
                        own[closed.branches().get(i).partKind()] += closed.more()[i];
                for (int k = 0; k < own.length; k++) own[k] = Math.max(0, own[k]);
                long worth = worth(boards[s], own, mostOf(s));
                long said = closed.worths()[s];
                fault(said < worth, here + ": board " + s + " is worth " + said + "; a layout brings " + worth);
                lacks -= said;
            }
            fault(boardsAlone ? lacks <= 0 : lacks < dearest, here + ": " + lacks + " lacks, " + dearest + " is due");
        }

        void barred(ProofRecord.Barred barred) {
            int s = barred.board();
            for (int k = 0; k < wanted.length; k++)
                fault(least[s][k] < barred.made()[k], name + ": it need not give so many of kind " + k);
            for (int c = 0; c < choices.size(); c++) {
                boolean holds = beside[boards[s]][c] > BoardEarns.NONE;
                for (int k = 0; k < wanted.length; k++) holds &= choices.many(c, k) >= barred.made()[k];
                if (fault(holds, name + ": the board gives all of " + Arrays.toString(barred.made()))) return;
            }
        }
    }

    private static boolean same(Branch one, Branch other) {
        return one.board() == other.board() && one.partKind() == other.partKind();
    }
}
