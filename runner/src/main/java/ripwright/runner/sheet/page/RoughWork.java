package ripwright.runner.sheet.page;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import ripwright.measure.Length;
import ripwright.plan.Section;
import ripwright.plan.Step;
import ripwright.runner.sheet.page.Table.Group;
import ripwright.runner.sheet.place.Region;
import ripwright.stock.Board;
import ripwright.stock.Edge;

/** What is done before the first rip setting: breaking down, milling, straightening. */
final class RoughWork {
    private final Pieces pieces;
    private final Tape tape;
    private final StepCells cells;

    RoughWork(Pieces pieces, Tape tape, StepCells cells) {
        this.pieces = pieces;
        this.tape = tape;
        this.cells = cells;
    }

    Block breakdown(List<Step> steps) {
        Table table = new Table(
                "Break-down cuts, measured from the marked end",
                List.of(
                        Table.tick(),
                        Table.step(),
                        Table.text("Board"),
                        Table.text("Makes"),
                        Table.number(tape.column("From")),
                        Table.number(tape.column("To")),
                        Table.number(tape.column("Length")),
                        Table.text("What it is")),
                steps.stream().map(this::breakdown).toList());
        String note =
                "Hook the tape over the marked end. Mark every reading before the first cut, cut on the waste side, and"
                        + " write each piece's id on its face. The drawing shows the same readings.";
        return new Block("", "Break down", List.of(note), Optional.of(table));
    }

    private Group breakdown(Step step) {
        List<String> made = step.makes().stream()
                .sorted(Comparator.comparingLong(
                        id -> extent(id).map(Region::from).orElse(0L)))
                .toList();
        List<List<Cell>> rows = new ArrayList<>();
        if (made.isEmpty())
            rows.add(List.of(
                    StepCells.tick(step, step.piece()),
                    cells.number(step),
                    Cell.text(step.piece()),
                    Cell.text("nothing is kept").across(5)));
        for (String id : made) {
            List<Cell> row = new ArrayList<>();
            row.add(StepCells.tick(step, id));
            if (rows.isEmpty()) {
                row.add(cells.number(step).down(made.size()));
                row.add(Cell.text(step.piece()).down(made.size()));
            }
            row.add(Cell.text(id));
            row.add(Cell.number(
                    extent(id).map(region -> tape.read(region.from())).orElse("")));
            row.add(Cell.number(extent(id).map(region -> tape.read(region.to())).orElse("")));
            row.add(Cell.number(
                    extent(id).map(region -> tape.read(region.length())).orElse("")));
            row.add(Cell.text(what(id)));
            rows.add(row);
        }
        return new Group(rows);
    }

    private Optional<Region> extent(String id) {
        return pieces.section(id)
                .map(Pieces.SectionOf::section)
                .or(() -> pieces.strip(id).map(strip -> strip.section().section()))
                .map(section ->
                        Region.of(section.from().nanometers(), section.to().nanometers(), 0, 0))
                .or(() -> pieces.place(id));
    }

    private String what(String id) {
        if (pieces.section(id).isPresent()) return "section";
        if (pieces.strip(id).isPresent()) return "strip, ripped already";
        return pieces.offcut(id).isPresent() ? "offcut for the rack" : "test blank";
    }

    Block mill(List<Step> steps) {
        Table table = new Table(
                "Pieces to mill",
                List.of(
                        Table.tick(),
                        Table.step(),
                        Table.text("Piece"),
                        Table.text("Board"),
                        Table.number(tape.column("Now")),
                        Table.number(tape.column("Mill to"))),
                steps.stream().map(this::mill).toList());
        String note = "One face flat first, then to thickness. Mill all pieces of one thickness at one setting.";
        return new Block("", "Mill to thickness", List.of(note), Optional.of(table));
    }

    private Group mill(Step step) {
        Optional<Board> board = pieces.boardOf(step.piece());
        return Group.of(List.of(
                StepCells.tick(step, step.piece()),
                cells.number(step),
                Cell.text(step.piece()),
                Cell.text(pieces.boardId(step.piece())),
                Cell.number(board.map(wood -> tape.read(wood.thickness())).orElse("")),
                Cell.number(board.map(wood -> tape.read(wood.millsTo())).orElse(""))));
    }

    Block straighten(List<Step> steps) {
        Table table = new Table(
                "Edges to straighten",
                List.of(
                        Table.tick(),
                        Table.step(),
                        Table.text("Section"),
                        Table.text("Board"),
                        Table.text("Edge"),
                        Table.number(tape.column("Take off")),
                        Table.number(tape.column("Leaves"))),
                steps.stream().map(this::straighten).toList());
        String note =
                "The edge named here rides the fence at every rip: seen from the marked end, face up. Take off what is"
                        + " said and no more; the strips are reckoned from there.";
        return new Block("", "Straighten the reference edges", List.of(note), Optional.of(table));
    }

    private Group straighten(Step step) {
        Optional<Pieces.SectionOf> placed = pieces.section(step.piece());
        Optional<Section> section = placed.map(Pieces.SectionOf::section);
        String leaves = placed.flatMap(this::widthOf)
                .filter(width -> width.exceeds(section.orElseThrow().edgeLoss()))
                .map(width -> tape.read(width.minus(section.orElseThrow().edgeLoss())))
                .orElse("");
        return Group.of(List.of(
                StepCells.tick(step, step.piece()),
                cells.number(step),
                Cell.text(step.piece()),
                Cell.text(pieces.boardId(step.piece())),
                Cell.text(section.map(wood -> wood.referenceEdge() == Edge.LEFT ? "left" : "right")
                        .orElse("one edge")),
                Cell.number(section.map(wood -> tape.read(wood.edgeLoss())).orElse("until straight")),
                Cell.number(leaves)));
    }

    private Optional<Length> widthOf(Pieces.SectionOf placed) {
        Section section = placed.section();
        return pieces.board(placed.board())
                .map(board -> board.widthAt(section.from()).min(board.widthAt(section.to())));
    }
}
