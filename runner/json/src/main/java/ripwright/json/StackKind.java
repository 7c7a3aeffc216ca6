package ripwright.json;

import java.util.ArrayList;
import java.util.List;
import ripwright.json.tree.Fields;
import ripwright.json.tree.Kind;
import ripwright.json.tree.Kinds;
import ripwright.json.tree.Value;
import ripwright.stock.Board;

/** The list of boards on hand. */
final class StackKind implements Kind<Stack> {
    private static final int MOST_BOARDS = 10_000;

    private final Kind<List<BoardFields.Entry>> entries;

    StackKind(Lengths lengths, Distinct ids) {
        this.entries = Kinds.list(new BoardFields(lengths, ids), MOST_BOARDS);
    }

    @Override
    public String expected() {
        return "a list of boards";
    }

    @Override
    public Stack read(Value value) {
        List<BoardFields.Entry> read = entries.read(value);
        int count = read.stream().mapToInt(BoardFields.Entry::count).sum(); // at most 10,000 x 10,000
        if (count > MOST_BOARDS) value.wrong(count + " boards; a job has at most " + MOST_BOARDS + ".");
        List<Board> boards = new ArrayList<>();
        List<Fields> fields = new ArrayList<>();
        for (BoardFields.Entry entry : read) {
            for (Board board : count > MOST_BOARDS ? List.of(entry.board()) : entry.boards()) {
                boards.add(board);
                fields.add(entry.fields());
            }
        }
        return new Stack(boards, fields);
    }

    @Override
    public Stack standIn() {
        return new Stack(List.of(), List.of());
    }
}
