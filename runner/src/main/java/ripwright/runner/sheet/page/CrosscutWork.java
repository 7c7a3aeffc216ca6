package ripwright.runner.sheet.page;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import ripwright.bill.Part;
import ripwright.measure.Length;
import ripwright.plan.Step;
import ripwright.runner.sheet.drawing.Isolated;
import ripwright.runner.sheet.page.Table.Column;
import ripwright.runner.sheet.page.Table.Group;

/** What is done at the crosscut saw once the strips are ripped: stop by stop, then the fitted parts. */
final class CrosscutWork {
    private static final String HOW_TO_READ =
            "A blank \u201cat 10\u201d starts 10 from the end of its strip that lay nearer the board's marked end.";

    private final Pieces pieces;
    private final Tape tape;
    private final StepCells cells;

    CrosscutWork(Pieces pieces, Tape tape, StepCells cells) {
        this.pieces = pieces;
        this.tape = tape;
        this.cells = cells;
    }

    Block square(List<Step> steps) {
        Table table = new Table(
                "Ends to cut off square",
                List.of(Table.tick(), Table.step(), Table.text("Strip"), Table.number(tape.column("Width"))),
                steps.stream().map(this::square).toList());
        List<String> notes =
                List.of("Cut the rough marked end of each strip off square, as little as cleans it up and no end"
                        + " trim or check stays on. Every length is measured from that end.");
        return new Block("Before the first stop", "Square one end", notes, Optional.of(table));
    }

    private Group square(Step step) {
        return new Group(List.of(List.of(
                StepCells.tick(step, step.piece()),
                cells.number(step),
                Cell.text(step.piece()),
                Cell.number(pieces.strip(step.piece())
                        .map(strip -> tape.read(strip.strip().width()))
                        .orElse("")))));
    }

    Block stop(Run run, int turn, int of) {
        Length stop = run.steps().get(0).stop().orElse(Length.ZERO);
        String length = tape.full(stop);
        Table table = new Table(
                "Blanks to cut " + length + " long",
                List.of(
                        Table.step(),
                        Table.text("Strip"),
                        Table.number(tape.column("Width")),
                        Table.text("Part"),
                        Table.ticks("Blanks, and where on the strip each starts")),
                run.steps().stream().map(this::cut).toList());
        List<String> notes = turn == 1 ? List.of(HOW_TO_READ) : List.of();
        return new Block("Stop setting " + turn + " of " + of, "Crosscut at " + length, notes, Optional.of(table));
    }

    /** A row for each part, a box for each blank. */
    private Group cut(Step step) {
        Map<String, List<Pieces.BlankOf>> byPart = new LinkedHashMap<>();
        for (Pieces.BlankOf blank : blanks(step))
            byPart.computeIfAbsent(blank.blank().part(), part -> new ArrayList<>())
                    .add(blank);
        List<String> others = others(step);
        int height = byPart.size() + (others.isEmpty() ? 0 : 1);
        List<List<Cell>> rows = new ArrayList<>();
        byPart.forEach((part, blanks) -> {
            List<Cell> row = start(step, rows.isEmpty(), height);
            row.add(Cell.text(part));
            row.add(Cell.ticks(blanks.stream()
                    .map(blank -> StepCells.tick(
                            step,
                            blank.blank().id(),
                            Isolated.name(blank.blank().id()) + " at " + tape.read(startOf(blank))))
                    .toList()));
            rows.add(row);
        });
        if (!others.isEmpty()) {
            List<Cell> row = start(step, rows.isEmpty(), height);
            row.add(Cell.text("left over"));
            row.add(Cell.ticks(others.stream()
                    .map(id -> StepCells.tick(step, id, Isolated.name(id) + ", " + leftover(id)))
                    .toList()));
            rows.add(row);
        }
        return new Group(rows);
    }

    private List<Cell> start(Step step, boolean first, int height) {
        List<Cell> row = new ArrayList<>();
        if (first) {
            row.add(cells.number(step).down(height));
            row.add(Cell.text(step.piece()).down(height));
            row.add(Cell.number(pieces.strip(step.piece())
                            .map(strip -> tape.read(strip.strip().width()))
                            .orElse(""))
                    .down(height));
        }
        return row;
    }

    private List<Pieces.BlankOf> blanks(Step step) {
        return step.makes().stream().flatMap(id -> pieces.blank(id).stream()).toList();
    }

    private List<String> others(Step step) {
        Set<String> blanks =
                blanks(step).stream().map(blank -> blank.blank().id()).collect(Collectors.toSet());
        return step.makes().stream().filter(id -> !blanks.contains(id)).toList();
    }

    private static Length startOf(Pieces.BlankOf blank) {
        return blank.blank().from().minus(blank.strip().section().section().from());
    }

    private String leftover(String id) {
        return pieces.offcut(id)
                .map(offcut -> tape.read(offcut.piece().length()) + " long, for the rack")
                .or(() -> pieces.testBlank(id).map(test -> tape.read(test.length()) + " long, test blank"))
                .orElse("");
    }

    Block fit(List<Step> steps) {
        List<Column> columns = List.of(
                Table.tick(),
                Table.step(),
                Table.text("Blank"),
                Table.text("Part"),
                Table.text("Strip"),
                Table.number(tape.column("Starts at")),
                Table.number(tape.column("Cut to")),
                Table.number(tape.column("Sneak up")),
                Table.number(tape.column("Spare")),
                new Column(tape.column("Opening"), Cell.Kind.FIELD));
        Table table = new Table(
                "Parts fitted to their openings",
                columns,
                steps.stream().map(this::fit).toList());
        List<String> notes = List.of(
                "Measure the opening before each cut and write it down. The length here is planned, sneak-up oversize"
                        + " included; the strip can make the part longer by what it has to spare.");
        return new Block("Without a stop, one at a time", "Cut to fit", notes, Optional.of(table));
    }

    private Group fit(Step step) {
        List<List<Cell>> rows = new ArrayList<>();
        for (Pieces.BlankOf blank : blanks(step)) {
            rows.add(List.of(
                    StepCells.tick(step, blank.blank().id()),
                    cells.number(step),
                    Cell.text(blank.blank().id()),
                    Cell.text(blank.blank().part()),
                    Cell.text(step.piece()),
                    Cell.number(tape.read(startOf(blank))),
                    Cell.number(tape.read(blank.blank().length())),
                    Cell.number(tape.read(sneakUp(blank))),
                    Cell.number(step.spare().map(tape::read).orElse("0")),
                    Cell.field()));
        }
        for (String id : others(step)) {
            Cell number = rows.isEmpty() ? cells.number(step) : Cell.text("");
            rows.add(List.of(
                    StepCells.tick(step, id),
                    number,
                    Cell.text(id),
                    Cell.text(leftover(id)).across(7)));
        }
        return new Group(rows);
    }

    private Length sneakUp(Pieces.BlankOf blank) {
        return pieces.part(blank.blank().part()).map(Part::sneakUp).orElse(Length.ZERO);
    }

    Block trim(List<Step> steps) {
        Table table = new Table(
                "Other crosscuts",
                List.of(Table.tick(), Table.step(), Table.text("Piece"), Table.text("Makes"), Table.text("What it is")),
                steps.stream().map(this::trim).toList());
        return new Block("", "Other crosscuts", List.of(), Optional.of(table));
    }

    private Group trim(Step step) {
        List<List<Cell>> rows = new ArrayList<>();
        for (String id : step.makes()) {
            List<Cell> row = new ArrayList<>();
            row.add(StepCells.tick(step, id));
            if (rows.isEmpty()) {
                row.add(cells.number(step).down(step.makes().size()));
                row.add(Cell.text(step.piece()).down(step.makes().size()));
            }
            row.add(Cell.text(id));
            row.add(Cell.text(leftover(id)));
            rows.add(row);
        }
        if (rows.isEmpty())
            rows.add(List.of(
                    StepCells.tick(step, step.piece()),
                    cells.number(step),
                    Cell.text(step.piece()),
                    Cell.text("nothing that is kept").across(2)));
        return new Group(rows);
    }
}
