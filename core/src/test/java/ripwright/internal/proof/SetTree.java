package ripwright.internal.proof;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/** What leads to one node of a set's tree: how many blanks of a type each of its boards makes. */
public final class SetTree {
    private final ProofCheck check;
    private final String name;
    private final int[] boards;
    private final long dearest; // money; what a plan must not cost less than beyond its boards
    private final int[][] least;
    private final int[][] most;

    SetTree(ProofCheck check, String name, int[] boards, long dearest) {
        this.check = check;
        this.name = name;
        this.boards = boards;
        this.dearest = dearest;
        least = new int[boards.length][check.wanted.length];
        most = new int[boards.length][];
        for (int s = 0; s < boards.length; s++) most[s] = check.wanted.clone();
    }

    private SetTree(SetTree from, List<Branch> branches) {
        check = from.check;
        name = from.name + " > " + branches;
        boards = from.boards;
        dearest = from.dearest;
        least = Arrays.stream(from.least).map(int[]::clone).toArray(int[][]::new);
        most = Arrays.stream(from.most).map(int[]::clone).toArray(int[][]::new);
        for (Branch branch : branches) {
            int s = branch.board();
            int k = branch.partType();
            if (branch.atLeast()) least[s][k] = Math.max(least[s][k], branch.many());
            else most[s][k] = Math.min(most[s][k], branch.many());
        }
    }

    void node(ProofRecord.Node node) {
        check.see(node);
        if (node instanceof ProofRecord.Fork fork) {
            fork(fork.ways());
            for (ProofRecord.Way way : fork.ways()) new SetTree(this, way.branches()).node(way.node());
        } else if (node instanceof ProofRecord.Closed closed) {
            closed(closed);
        } else if (node instanceof ProofRecord.Barred barred) {
            barred(barred);
        } else if (node == ProofRecord.Leaf.TORN) {
            check.fault(IntStream.range(0, boards.length).noneMatch(this::torn), name + ": nothing is torn");
        } else {
            check.fault(true, name + ": left open");
        }
    }

    /** How many blanks a board makes at most, since the others make their least. */
    private int[] mostOf(int s) {
        int[] own = most[s].clone();
        for (int k = 0; k < own.length; k++) {
            int left = check.wanted[k];
            for (int o = 0; o < boards.length; o++) left -= o == s ? 0 : least[o][k];
            own[k] = Math.min(own[k], left);
        }
        return own;
    }

    private boolean torn(int s) {
        int[] own = mostOf(s);
        return IntStream.range(0, own.length).anyMatch(k -> least[s][k] > own[k]);
    }

    /** Whatever is made takes one of the ways: tries every number of each blank that a branch is about. */
    private void fork(List<ProofRecord.Way> ways) {
        List<Branch> about = new ArrayList<>();
        for (ProofRecord.Way way : ways)
            for (Branch branch : way.branches())
                if (about.stream().noneMatch(other -> same(other, branch))) about.add(branch);
        covered(ways, about, new int[about.size()], 0);
    }

    private void covered(List<ProofRecord.Way> ways, List<Branch> about, int[] made, int decided) {
        if (decided < made.length) {
            Branch next = about.get(decided);
            int from = least[next.board()][next.partType()];
            for (int n = from; n <= most[next.board()][next.partType()]; n++) {
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
        check.fault(!some, name + ": no way for " + Arrays.toString(made) + " of " + about);
    }

    private void closed(ProofRecord.Closed closed) {
        String here = name + ", closed by " + Arrays.toString(closed.prices());
        check.fault(Arrays.stream(closed.prices()).anyMatch(price -> price < 0), here + ": a price below zero");
        long lacks = check.bill(closed.prices());
        for (int i = 0; i < closed.more().length; i++) {
            Branch branch = closed.branches().get(i);
            long more = closed.more()[i];
            int[] limits = branch.atLeast() ? least[branch.board()] : most[branch.board()];
            int limit = limits[branch.partType()];
            boolean leads = branch.atLeast() ? limit >= branch.many() : limit <= branch.many();
            check.fault(!leads, here + ": " + branch + " does not lead here");
            check.fault(branch.atLeast() ? more < 0 : more > 0, here + ": " + branch + " adds " + more);
            lacks += more * branch.many();
        }
        for (int s = 0; s < boards.length; s++) {
            long[] own = closed.prices().clone();
            for (int i = 0; i < closed.more().length; i++)
                if (closed.branches().get(i).board() == s)
                    own[closed.branches().get(i).partType()] += closed.more()[i];
            for (int k = 0; k < own.length; k++) own[k] = Math.max(0, own[k]);
            long worth = check.worth(boards[s], own, mostOf(s));
            long said = closed.worths()[s];
            check.fault(said < worth, here + ": board " + s + " is worth " + said + "; a layout brings " + worth);
            lacks -= said;
        }
        check.fault(
                check.boardsAlone ? lacks <= 0 : lacks < dearest,
                here + ": " + lacks + " lacks, " + dearest + " is due");
    }

    private void barred(ProofRecord.Barred barred) {
        int s = barred.board();
        for (int k = 0; k < check.wanted.length; k++)
            check.fault(least[s][k] < barred.made()[k], name + ": it need not give so many of type " + k);
        for (int c = 0; c < check.choices.size(); c++) {
            boolean holds = check.beside[boards[s]][c] > BoardEarns.NONE;
            for (int k = 0; k < check.wanted.length; k++) holds &= check.choices.many(c, k) >= barred.made()[k];
            if (check.fault(holds, name + ": the board gives all of " + Arrays.toString(barred.made()))) return;
        }
    }

    private static boolean same(Branch one, Branch other) {
        return one.board() == other.board() && one.partType() == other.partType();
    }
}
