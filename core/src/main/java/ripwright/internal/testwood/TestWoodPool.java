package ripwright.internal.testwood;

import java.util.ArrayList;
import java.util.List;
import ripwright.internal.geometry.Layout;
import ripwright.internal.geometry.LayoutLeftovers;
import ripwright.internal.geometry.Leftover;
import ripwright.internal.geometry.OffcutWorth;
import ripwright.internal.geometry.Piece;
import ripwright.internal.pieces.CutPieces;
import ripwright.job.Job;
import ripwright.plan.TestBlank.Source;
import ripwright.stock.Board;

/**
 * All wood test blanks can be cut from: rack offcuts and boards nothing is cut from, and the leftovers of what is cut.
 * A leftover beside sections is there from the start, one beside a section's last strip after that strip's setting, one
 * at a strip's end after the strip's own; one between two blanks comes too late for any.
 */
public final class TestWoodPool {
    private final Job job;
    private final CutPieces cutting;
    private final OffcutWorth salvage;
    private final List<TestWood> wood = new ArrayList<>();
    private int pieces;

    TestWoodPool(Job job, List<Layout> layouts, CutPieces cutting) {
        this.job = job;
        this.cutting = cutting;
        this.salvage = new OffcutWorth(job);
        List<Board> boards = job.boards();
        for (int i = 0; i < boards.size(); i++) if (!cutting.cuts(i)) uncut(boards.get(i));
        for (Layout layout : layouts)
            for (Leftover leftover : new LayoutLeftovers(job, layout).all()) leftover(layout.board(), leftover);
    }

    List<TestWood> wood() {
        return List.copyOf(wood);
    }

    private void uncut(Board board) {
        Piece whole = Piece.across(board, 0, board.length().nanometers());
        add(whole, board.fromRack() ? Source.RACK : Source.FRESH, board.id(), -1, true, true);
    }

    private void leftover(int board, Leftover leftover) {
        add(
                leftover.piece(),
                salvage.keeps(leftover.piece()) ? Source.FRESH : Source.WASTE,
                cutting.source(board, leftover),
                cutting.freedBy(board, leftover),
                leftover.nearEnd(),
                leftover.farEnd());
    }

    private void add(Piece piece, Source source, String from, int after, boolean nearEnd, boolean farEnd) {
        if (piece.clearLength() < job.testRip().length().nanometers()) return;
        pieces++;
        if (nearEnd) wood.add(new TestWood(job, pieces, piece, source, from, after, false));
        if (farEnd) wood.add(new TestWood(job, pieces, piece, source, from, after, true));
    }

    /** No more blanks than that come out of it all. */
    long capacity() {
        long kerf = job.saw().crosscutKerf().nanometers();
        long blank = job.testRip().length().nanometers() + kerf;
        return wood.stream()
                .mapToLong(one -> (one.piece.clearLength() + kerf) / blank)
                .sum();
    }
}
