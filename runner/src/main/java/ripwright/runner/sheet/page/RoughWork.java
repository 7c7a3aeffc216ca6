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
    private static final String PAST_A_STREAK = "straight already: wood taken off a straight edge passes a streak";

    private final Pieces pieces;
    private final Tape tape;
    private final StepCells cells;
    private final boolean leavesOver;

    RoughWork(Pieces pieces, Tape tape, StepCells cells, boolean leavesOver) {
        this.leavesOver = leavesOver;
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
                        Table.text("What it is, and the edge its triangle points to")),
                steps.stream().map(this::breakdown).toList());
        List<String> notes = new ArrayList<>(List.of(
                "Hook the tape over the marked end. Mark every reading before the first cut and cut on the waste side. Write"
                        + " each piece's id on its face at the end that lay nearer the marked end, and on each section a"
                        + " triangle that points to the edge named. The drawings below show the same."));
        if (!leavesOver)
            notes.add(
                    "This job leaves nothing over at break-down: sections are cut by tape to the exact length of parts,"
                            + " and these ends become the ends of parts. Cut them square and to the mark.");
        return new Block("", "Break down", notes, Optional.of(table));
    }

    /** The edge of a section that rides the fence, in a word. */
    static String edge(Section section) {
        return section.referenceEdge() == Edge.LEFT ? "left" : "right";
    }

    /** Whether a step of it cuts anything: a section may be its whole board. */
    private boolean uncut(Step step) {
        return step.makes().size() == 1
                && pieces.board(step.piece())
                        .filter(board -> extent(step.makes().get(0))
                                .filter(region -> region.from() == 0
                                        && region.to() == board.length().nanometers())
                                .isPresent())
                        .isPresent();
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
            row.add(Cell.text(what(id) + (uncut(step) ? "; no cut, the whole board" : "")));
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
        Optional<Section> section = pieces.section(id).map(Pieces.SectionOf::section);
        if (section.isPresent()) return "section, " + edge(section.get()) + " edge";
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
                        Table.number(tape.column("Leaves")),
                        Table.words("Why")),
                steps.stream().map(this::straighten).toList());
        String note =
                "The edge named here rides the fence at every rip: seen from the marked end, face up. Take off what is"
                        + " said and no more; the strips are reckoned from there. A jointer may do what this rip does, in"
                        + " light passes to the same width left. A hollow edge rides the fence or lies down on the jointer"
                        + " first; then the round one is cut straight. Draw the triangle again where it was cut away.";
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
                Cell.text(section.map(RoughWork::edge).orElse("one edge")),
                Cell.number(section.map(wood -> tape.read(wood.edgeLoss())).orElse("until straight")),
                Cell.number(leaves),
                Cell.text(pieces.straightAlready(step.piece()) ? PAST_A_STREAK : "not straight yet")));
    }

    private Optional<Length> widthOf(Pieces.SectionOf placed) {
        Section section = placed.section();
        return pieces.board(placed.board())
                .map(board -> board.widthAt(section.from()).min(board.widthAt(section.to())));
    }
}
