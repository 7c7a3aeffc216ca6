package ripwright.testing;

import com.google.ortools.sat.BoolVar;
import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import com.google.ortools.sat.Literal;
import org.jspecify.annotations.Nullable;
import ripwright.testing.Ticks.TickBoard;

/**
 * Room for one section of a board: where it lies, which edge rides the fence, what that edge loses. A section that is not
 * open has no length and lies at the end of the one before. All in ticks.
 */
final class CutSection {
    final TickBoard board;
    final int place; // of its board in the job
    final BoolVar open;
    final IntVar from;
    final IntVar to;
    final IntVar spanFrom; // its blanks lie from here
    final IntVar spanTo; // to here
    final IntVar clearFrom; // it carries no raw end trim from here
    final IntVar clearTo; // to here
    final IntVar edgeLoss; // of the reference edge; more than it must where that passes bad wood
    final Literal ridesRight; // else its left edge rides the fence
    private final Ticks ticks;
    private final CpModel model;
    private final Literal straight; // the reference edge is

    /** The section {@code number} of a board, behind {@code before}. */
    CutSection(Ticks ticks, CpModel model, int place, int number, @Nullable CutSection before) {
        this.ticks = ticks;
        this.model = model;
        this.place = place;
        this.board = ticks.boards.get(place);
        String name = place + " " + number;
        open = model.newBoolVar("open " + name);
        int begin = ticks.over == 0 ? board.from() : 0;
        int end = ticks.over == 0 ? board.to() : board.length();
        from = model.newIntVar(begin, end, "from " + name);
        to = model.newIntVar(begin, end, "to " + name);
        edgeLoss = model.newIntVar(0, widest(), "edge loss " + name);
        boolean turns = !board.board().tapered()
                && !board.board().ripped()
                && !board.defects().isEmpty();
        ridesRight = turns ? model.newBoolVar("rides right " + name) : model.falseLiteral();
        straight = switch (board.board().straightEdges()) {
            case 2 -> model.trueLiteral();
            case 1 -> ridesRight.not();
            default -> model.falseLiteral();
        };
        lies(before);
        if (ticks.over == 0) {
            spanFrom = from;
            spanTo = to;
            clearFrom = from;
            clearTo = to;
        } else {
            spanFrom = model.newIntVar(0, 2L * end, "span from " + name);
            spanTo = model.newIntVar(-end, end, "span to " + name);
            clearFrom = model.newIntVar(0, end, "clear from " + name);
            clearTo = model.newIntVar(0, end, "clear to " + name);
            leavesOver(before);
        }
        if (board.board().ripped()) model.addEquality(edgeLoss, 0);
        else loses();
    }

    int widest() {
        return Math.max(board.near(), board.far());
    }

    LinearExpr length() {
        return LinearExpr.weightedSum(new IntVar[] {to, from}, new long[] {1, -1});
    }

    private void lies(@Nullable CutSection before) {
        model.addEquality(from, to).onlyEnforceIf(open.not());
        if (board.board().ripped()) {
            model.addEquality(from, ticks.over == 0 ? board.from() : 0);
            model.addEquality(to, ticks.over == 0 ? board.to() : board.length()).onlyEnforceIf(open);
            return;
        }
        model.addGreaterOrEqual(length(), ticks.shortestRip).onlyEnforceIf(open);
        model.addLessOrEqual(length(), ticks.longestRip);
        if (before == null) {
            model.addEquality(from, ticks.over == 0 ? board.from() : 0).onlyEnforceIf(open.not());
            return;
        }
        model.addImplication(open, before.open);
        LinearExprBuilder next = LinearExpr.newBuilder().add(before.to).addTerm(open, ticks.crosscutKerf);
        model.addGreaterOrEqual(from, next);
        model.addEquality(from, before.to).onlyEnforceIf(open.not());
        boolean alike =
                ticks.over == 0 && board.defects().isEmpty() && !board.board().tapered();
        if (alike) model.addGreaterOrEqual(before.length(), length());
    }

    /** Its length without the raw end trim that it carries. */
    LinearExpr clear() {
        return LinearExpr.weightedSum(new IntVar[] {clearTo, clearFrom}, new long[] {1, -1});
    }

    LinearExpr span() {
        return LinearExpr.weightedSum(new IntVar[] {spanTo, spanFrom}, new long[] {1, -1});
    }

    /**
     * Each end is the board's own, or lies between the trims at a whole reading, the near one perhaps a kerf behind the section
     * before; no blank lies in a trim nor within what is left over.
     */
    private void leavesOver(@Nullable CutSection before) {
        BoolVar rawFrom = model.newBoolVar("raw from");
        BoolVar rawTo = model.newBoolVar("raw to");
        BoolVar behind = model.newBoolVar("a kerf behind");
        IntVar readFrom = model.newIntVar(0, board.length(), "reading");
        IntVar readTo = model.newIntVar(0, board.length(), "reading");
        model.addEquality(from, 0).onlyEnforceIf(new Literal[] {open, rawFrom});
        model.addGreaterOrEqual(from, board.from()).onlyEnforceIf(new Literal[] {open, rawFrom.not()});
        model.addEquality(from, LinearExpr.term(readFrom, ticks.reading))
                .onlyEnforceIf(new Literal[] {open, rawFrom.not(), behind.not()});
        if (before == null) model.addEquality(behind, 0);
        else
            model.addEquality(from, LinearExpr.affine(before.to, 1, ticks.crosscutKerf))
                    .onlyEnforceIf(new Literal[] {open, behind});
        model.addEquality(to, board.length()).onlyEnforceIf(new Literal[] {open, rawTo});
        model.addLessOrEqual(to, board.to()).onlyEnforceIf(new Literal[] {open, rawTo.not()});
        model.addEquality(to, LinearExpr.term(readTo, ticks.reading)).onlyEnforceIf(new Literal[] {open, rawTo.not()});
        model.addEquality(spanFrom, ticks.firstStart(board)).onlyEnforceIf(rawFrom);
        model.addEquality(spanFrom, LinearExpr.affine(from, 1, ticks.over)).onlyEnforceIf(rawFrom.not());
        model.addEquality(spanTo, ticks.lastEnd(board)).onlyEnforceIf(rawTo);
        model.addEquality(spanTo, LinearExpr.affine(to, 1, -ticks.over)).onlyEnforceIf(rawTo.not());
        model.addEquality(clearFrom, board.from()).onlyEnforceIf(rawFrom);
        model.addEquality(clearFrom, from).onlyEnforceIf(rawFrom.not());
        model.addEquality(clearTo, board.to()).onlyEnforceIf(rawTo);
        model.addEquality(clearTo, to).onlyEnforceIf(rawTo.not());
        model.addLessOrEqual(clearFrom, clearTo).onlyEnforceIf(open);
    }

    /** A reference edge that is not straight loses the larger of the edge loss and what the crook asks of the length. */
    private void loses() {
        model.addGreaterOrEqual(edgeLoss, board.edgeLoss()).onlyEnforceIf(new Literal[] {open, straight.not()});
        if (board.board().crook().isZero()) return;
        for (int loss = board.edgeLoss(); loss < ticks.crook(board); loss++) {
            BoolVar more = model.newBoolVar("loses more than " + loss);
            model.addGreaterOrEqual(edgeLoss, loss + 1L).onlyEnforceIf(more);
            model.addLessOrEqual(length(), ticks.longestAtLoss(board, loss))
                    .onlyEnforceIf(new Literal[] {more.not(), straight.not()});
        }
    }

    /** When open it holds {@code across} beside its edge losses, as wide as it is at its narrower end. */
    void holds(LinearExpr across) {
        holds(across, open);
    }

    /** It holds {@code across} beside its edge losses when {@code here} is true, which implies that it is open. */
    void holds(LinearExpr across, Literal here) {
        if (board.board().ripped()) {
            model.addLessOrEqual(across, board.near()).onlyEnforceIf(here);
            return;
        }
        LinearExprBuilder left =
                LinearExpr.newBuilder().add(across).add(edgeLoss).add(board.rightLoss());
        LinearExprBuilder right =
                LinearExpr.newBuilder().add(across).add(edgeLoss).add(board.leftLoss());
        fits(left.build(), new Literal[] {here, ridesRight.not()});
        fits(right.build(), new Literal[] {here, ridesRight});
    }

    private void fits(LinearExpr across, Literal[] both) {
        if (!board.board().tapered()) {
            model.addLessOrEqual(across, board.near()).onlyEnforceIf(both);
            return;
        }
        int rise = board.far() - board.near();
        IntVar narrow = rise > 0 ? from : to;
        LinearExpr width = LinearExpr.affine(narrow, rise, (long) board.near() * board.length());
        model.addLessOrEqual(LinearExpr.term(across, board.length()), width).onlyEnforceIf(both);
    }
}
