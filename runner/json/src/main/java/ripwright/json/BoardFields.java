package ripwright.json;

import java.util.ArrayList;
import java.util.List;
import ripwright.json.tree.Fields;
import ripwright.json.tree.Kinds;
import ripwright.json.tree.ObjectKind;
import ripwright.stock.Board;

/** An entry of the stack: one board, or several measured alike. */
final class BoardFields extends ObjectKind<BoardFields.Entry> {
    private static final int MOST_COPIES = 10_000;

    /** What was read, and where. */
    record Entry(Fields fields, Board board, int count) {
        /** The boards it stands for: itself, or numbered copies. */
        List<Board> boards() {
            if (count == 1) return List.of(board);
            List<Board> copies = new ArrayList<>(count);
            for (int i = 1; i <= count; i++)
                copies.add(board.toBuilder().id(board.id() + "#" + i).build());
            return copies;
        }
    }

    private final WoodFields wood;
    private final Distinct ids;

    BoardFields(Lengths lengths, Distinct ids) {
        this.wood = new WoodFields(lengths);
        this.ids = ids;
    }

    @Override
    public String expected() {
        return WoodFields.EXPECTED;
    }

    @Override
    protected Entry read(Fields fields) {
        String id = WoodFields.id(fields, ids);
        int count = fields.optional("count", Kinds.wholeInt(1, MOST_COPIES), 1);
        if (fields.good("id") && count > 1) checkCopies(fields, id, count);
        Board board = wood.read(fields, id);
        return new Entry(fields, board, fields.good("count") ? count : 1);
    }

    private static void checkCopies(Fields fields, String id, int count) {
        String last = id + "#" + count;
        if (last.codePointCount(0, last.length()) > 300)
            fields.wrong("id", "too long to be numbered: with #" + count + " it is over 300 characters. Shorten it.");
    }
}
