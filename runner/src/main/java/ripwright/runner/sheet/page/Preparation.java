package ripwright.runner.sheet.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import ripwright.runner.sheet.page.Table.Group;
import ripwright.runner.sheet.place.BoardMap;
import ripwright.stock.Board;
import ripwright.stock.History;

/** What comes before the first cut: what to mind and what to fetch. */
final class Preparation {
    private final CautionNotes cautions;
    private final List<BoardMap> maps;
    private final Tape tape;

    Preparation(CautionNotes cautions, List<BoardMap> maps, Tape tape) {
        this.cautions = cautions;
        this.maps = maps;
        this.tape = tape;
    }

    List<Block> blocks() {
        List<Block> blocks = new ArrayList<>();
        blocks.add(mind());
        if (!maps.isEmpty()) blocks.add(pull());
        return blocks;
    }

    private Block mind() {
        return new Block("", "Cautions", cautions.general(), Optional.empty());
    }

    private Block pull() {
        List<Group> rows = new ArrayList<>();
        for (int i = 0; i < maps.size(); i++) rows.add(row(maps.get(i), i + 1));
        Table table = new Table(
                "Boards from stack and rack",
                List.of(
                        Table.tick(),
                        Table.text("Board"),
                        Table.text("Where"),
                        Table.text("Chalk mark"),
                        Table.text("Wood"),
                        Table.number(tape.column("Thick")),
                        Table.number(tape.column("Wide")),
                        Table.number(tape.column("Long")),
                        new Table.Column("Figure", Cell.Kind.FIGURE)),
                rows);
        String note =
                "Lay each board face up and chalk its mark at the marked end, the end all readings start from. Left and"
                        + " right are as seen from there.";
        return new Block("", "Pull the boards", List.of(note), Optional.of(table));
    }

    private Group row(BoardMap map, int figure) {
        Board board = map.board();
        String width = board.tapered()
                ? tape.read(board.width()) + " to " + tape.read(board.widthAtFarEnd())
                : tape.read(board.width());
        return Group.of(List.of(
                Cell.tick("Pulled " + board.id()),
                Cell.id(board.id()),
                Cell.text(board.fromRack() ? "rack" : "stack"),
                Cell.text(board.history().flatMap(History::mark).orElse(board.id())),
                Cell.text(board.species().name()),
                Cell.number(tape.read(board.thickness())),
                Cell.number(width),
                Cell.number(tape.read(board.length())),
                Cell.of(Cell.Kind.FIGURE, Integer.toString(figure))));
    }
}
