package ripwright.resume;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import ripwright.bill.Part;
import ripwright.internal.geometry.OffcutWorth;
import ripwright.internal.geometry.Piece;
import ripwright.internal.geometry.RackEntry;
import ripwright.job.Job;
import ripwright.resume.HeldPiece.Kind;
import ripwright.stock.Board;
import ripwright.stock.History;

/**
 * The pieces in hand as boards to plan with. What the rack would keep lies on the rack of the job that is left: using it costs
 * what it would fetch, as with any offcut. All else that was cut costs nothing. A strip as wide as a blank that is wanted is
 * ripped already; any other is a board with two straight edges, to be ripped again.
 */
final class HandStock {
    private static final int LONGEST_MARK = 16; // longer ids are not chalked on wood

    private final Job job;
    private final List<Part> wanted;
    private final boolean keepStrips; // not to be ripped again when they are as wide as a blank that is wanted
    private final Map<String, SizeNow> pieces = new LinkedHashMap<>();
    private final List<Board> stack = new ArrayList<>();
    private final List<Board> rack = new ArrayList<>();

    HandStock(Job job, List<SizeNow> now, List<Part> wanted, boolean keepStrips) {
        this.job = job;
        this.wanted = wanted;
        this.keepStrips = keepStrips;
        for (SizeNow piece : now) {
            if (!piece.inHand() || !worthListing(piece)) continue;
            Board board = board(piece);
            pieces.put(board.id(), piece);
            if (board.fromRack()) rack.add(board);
            else stack.add(board);
        }
    }

    /** What is not on the rack, in the order of the job that was begun. */
    List<Board> stack() {
        return List.copyOf(stack);
    }

    List<Board> rack() {
        return List.copyOf(rack);
    }

    /** What each of the boards is. */
    Map<String, SizeNow> pieces() {
        return java.util.Collections.unmodifiableMap(pieces);
    }

    private Board board(SizeNow piece) {
        if (piece.planned().kind() == Kind.BOARD)
            return piece.wood().board().toBuilder().id(piece.id()).build();
        Board.Builder board = new RackEntry(piece.wood()).board(piece.id()).toBuilder();
        Board wood = piece.wood().board();
        boolean test = piece.planned().kind() == Kind.TEST_BLANK;
        if (test) board.testOnly(true);
        else if (keepStrips && ripped(piece)) board.ripped(true);
        boolean keeps = new OffcutWorth(job).keeps(piece.wood());
        if (!keeps && !test) return board.price(BigDecimal.ZERO).build();
        board.price(test || wood.testOnly() ? BigDecimal.ZERO : job.price(wood));
        Optional<String> mark = Optional.of(piece.id()).filter(id -> id.length() <= LONGEST_MARK);
        return board.onRack(new History(mark, Optional.empty(), Optional.of(job.name()), Optional.of(piece.board())))
                .build();
    }

    private boolean gives(SizeNow piece, Part part) {
        return piece.gives(part, job.breakdown().over());
    }

    /** Whether it is a strip that a part not made yet comes from as it is. */
    private boolean ripped(SizeNow piece) {
        Piece wood = piece.wood();
        boolean strip =
                wood.leftStraight() && wood.rightStraight() && wood.right().isPresent();
        return strip
                && wanted.stream()
                        .anyMatch(part -> part.blankWidth().nanometers() == wood.narrowWidth() && gives(piece, part));
    }

    /** What was cut is listed when a part or a test blank can come of it, or the rack would keep it. */
    private boolean worthListing(SizeNow piece) {
        Piece wood = piece.wood();
        boolean test = job.testRip().tries() > 0
                && wood.clearLength() >= job.testRip().length().nanometers()
                && wood.narrowWidth() > job.saw().ripKerf().nanometers();
        return piece.planned().kind() == Kind.BOARD
                || test
                || wanted.stream().anyMatch(part -> gives(piece, part))
                || new OffcutWorth(job).keeps(wood);
    }
}
