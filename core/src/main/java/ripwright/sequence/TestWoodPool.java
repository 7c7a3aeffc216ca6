package ripwright.sequence;

import java.util.ArrayList;
import java.util.List;
import ripwright.job.Job;
import ripwright.measure.Money;
import ripwright.pattern.Layout;
import ripwright.plan.TestBlank.Source;
import ripwright.stock.Board;

/**
 * All wood test blanks can be cut from: rack offcuts and boards nothing is cut from, and the leftovers of what is cut.
 * A leftover beside sections is there from the start, one beside a section's last strip after that strip's setting, one
 * at a strip's end after the strip's own; one between two blanks comes too late for any.
 */
final class TestWoodPool {
    private final Job job;
    private final Cutting cutting;
    private final Salvage salvage;
    private final List<TestWood> wood = new ArrayList<>();
    private int pieces;

    TestWoodPool(Job job, List<Layout> layouts, Cutting cutting) {
        this.job = job;
        this.cutting = cutting;
        this.salvage = new Salvage(job);
        List<Board> boards = job.boards();
        for (int i = 0; i < boards.size(); i++) if (!cutting.cuts(i)) uncut(boards.get(i));
        for (Layout layout : layouts)
            for (Leftover leftover : new Leftovers(job, layout).all()) leftover(layout.board(), leftover);
    }

    List<TestWood> wood() {
        return List.copyOf(wood);
    }

    /** An uncut board is worth what opening it costs. */
    private void uncut(Board board) {
        Source source = board.fromRack() ? Source.RACK : Source.FRESH;
        Piece whole = Piece.across(board, 0, board.length().nanometers());
        if (!isLongEnough(whole)) return;
        pieces++;
        Money worth = job.cost(board);
        wood.add(new TestWood(job, pieces, whole, source, board.id(), -1, false, worth));
        wood.add(new TestWood(job, pieces, whole, source, board.id(), -1, true, worth));
    }

    /** A leftover is worth what the rack makes of it. */
    private void leftover(int board, Leftover leftover) {
        Piece piece = leftover.piece();
        if (!isLongEnough(piece)) return;
        pieces++;
        Source source = salvage.keeps(piece) ? Source.FRESH : Source.WASTE;
        Money worth = salvage.worth(piece);
        String from = job.board(board).id();
        int after = -1;
        if (leftover.of() != Leftover.Of.BOARD) {
            SectionCut section = cutting.sectionsOf(board).get(leftover.section());
            boolean beside = leftover.of() == Leftover.Of.SECTION;
            StripCut last = section.strips().get(beside ? section.strips().size() - 1 : leftover.strip());
            from = beside ? section.id() : last.id();
            after = cutting.settingOf(last);
        }
        if (leftover.nearEnd()) wood.add(new TestWood(job, pieces, piece, source, from, after, false, worth));
        if (leftover.farEnd()) wood.add(new TestWood(job, pieces, piece, source, from, after, true, worth));
    }

    private boolean isLongEnough(Piece piece) {
        return piece.clearLength() >= job.testRip().length().nanometers();
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
