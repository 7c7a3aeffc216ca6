package ripwright.json;

import java.util.Optional;
import ripwright.json.tree.JsonOut;
import ripwright.measure.Unit;
import ripwright.stock.Board;
import ripwright.stock.History;

/** Writes entries of a stack and of a rack, with lengths that come back exactly. */
final class StockOut {
    private final JsonOut json;
    private final WoodOut wood;

    StockOut(JsonOut json, Unit units) {
        this.json = json;
        this.wood = new WoodOut(json, new LengthOut(json, units)::write);
    }

    /** Boards of a stack that are measured alike. */
    void board(Board board, int count) {
        json.text("id", board.id());
        if (count > 1) json.number("count", count);
        json.text("species", board.species().name());
        wood.size(board);
        if (board.ripped()) json.flag("ripped", true);
        wood.shape(board);
    }

    /** An offcut on the rack. */
    void offcut(Board offcut) {
        History history = offcut.history().orElse(History.UNKNOWN);
        json.text("id", offcut.id());
        history.mark().ifPresent(mark -> json.text("mark", mark));
        json.text("species", offcut.species().name());
        wood.size(offcut);
        if (offcut.ripped()) json.flag("ripped", true);
        wood.shape(offcut);
        history.since().ifPresent(since -> json.text("since", since));
        Optional<String> board = history.board();
        if (history.job().isPresent() && board.isPresent())
            json.object("cameFrom", () -> {
                history.job().ifPresent(job -> json.text("job", job));
                json.text("board", board.get());
            });
    }
}
