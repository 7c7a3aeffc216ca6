package ripwright.internal.sequence;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import ripwright.internal.geometry.Layout;
import ripwright.internal.geometry.LayoutLeftovers;
import ripwright.internal.geometry.Leftover;
import ripwright.internal.geometry.OffcutWorth;
import ripwright.internal.geometry.Piece;
import ripwright.internal.geometry.RackEntry;
import ripwright.internal.pieces.CutPieces;
import ripwright.internal.pieces.PlanIds;
import ripwright.internal.testwood.TestPlan;
import ripwright.job.Job;
import ripwright.measure.Money;
import ripwright.plan.Offcut;
import ripwright.stock.Board;
import ripwright.stock.History;

/** What goes to the rack: every leftover worth it, as test blanks leave it, in the order of the job. */
public final class ListedOffcuts {
    /** Longer ids are not chalked on wood. */
    private static final int LONGEST_MARK = 16;

    private final Job job;
    private final PlanIds ids;
    private final OffcutWorth salvage;
    private final List<Offcut> offcuts = new ArrayList<>();
    private final Map<String, List<String>> idsOf = new HashMap<>();
    private Money worth = Money.ZERO;

    ListedOffcuts(Job job, List<Layout> layouts, CutPieces cutting, TestPlan tests, PlanIds ids) {
        this.job = job;
        this.ids = ids;
        this.salvage = new OffcutWorth(job);
        Map<Integer, Layout> layoutOf = new HashMap<>();
        for (Layout layout : layouts) layoutOf.put(layout.board(), layout);
        List<Board> boards = job.boards();
        for (int i = 0; i < boards.size(); i++) {
            Board board = boards.get(i);
            Optional<Layout> layout = Optional.ofNullable(layoutOf.get(i));
            if (layout.isPresent()) ofLayout(layout.get(), cutting, tests);
            else if (tests.opens(board))
                tests.rest(Piece.across(board, 0, board.length().nanometers()))
                        .ifPresent(rest -> keep(board.id(), rest));
        }
    }

    /** All of them. */
    List<Offcut> all() {
        return List.copyOf(offcuts);
    }

    /** The ids of those left of a board, a section or a strip. */
    List<String> of(String piece) {
        return idsOf.getOrDefault(piece, List.of());
    }

    /** What they are worth, exactly. */
    Money worth() {
        return worth;
    }

    private void ofLayout(Layout layout, CutPieces cutting, TestPlan tests) {
        for (Leftover leftover : new LayoutLeftovers(job, layout).all())
            tests.rest(leftover.piece()).ifPresent(rest -> keep(cutting.source(layout.board(), leftover), rest));
    }

    private void keep(String from, Piece piece) {
        if (!salvage.keeps(piece)) return;
        String id = ids.offcut(piece.board());
        String mark = id.codePointCount(0, id.length()) <= LONGEST_MARK ? id : ids.next(PlanIds.Kind.MARK);
        History history = new History(
                Optional.of(mark),
                Optional.empty(),
                Optional.of(job.name()),
                Optional.of(piece.board().id()));
        Board entry = new RackEntry(piece).as(id, price(piece.board()), history);
        offcuts.add(new Offcut(from, entry));
        idsOf.computeIfAbsent(from, key -> new ArrayList<>()).add(id);
        worth = worth.plus(salvage.worth(piece));
    }

    /** The offcut keeps the price it is worth here, whatever the next job's species cost. */
    private Optional<BigDecimal> price(Board board) {
        return board.price().or(() -> Optional.ofNullable(job.prices().get(board.species())));
    }
}
