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
        from = model.newIntVar(board.from(), board.to(), "from " + name);
        to = model.newIntVar(board.from(), board.to(), "to " + name);
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
            model.addEquality(from, board.from());
            model.addEquality(to, board.to()).onlyEnforceIf(open);
            return;
        }
        model.addGreaterOrEqual(length(), ticks.shortestRip).onlyEnforceIf(open);
        model.addLessOrEqual(length(), ticks.longestRip);
        if (before == null) {
            model.addEquality(from, board.from()).onlyEnforceIf(open.not());
            return;
        }
        model.addImplication(open, before.open);
        LinearExprBuilder next = LinearExpr.newBuilder().add(before.to).addTerm(open, ticks.crosscutKerf);
        model.addGreaterOrEqual(from, next);
        model.addEquality(from, before.to).onlyEnforceIf(open.not());
        boolean alike = board.defects().isEmpty() && !board.board().tapered();
        if (alike) model.addGreaterOrEqual(before.length(), length());
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
