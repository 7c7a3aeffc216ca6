package ripwright.runner.sheet.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import ripwright.bill.Part;
import ripwright.measure.Length;
import ripwright.plan.Step;
import ripwright.runner.sheet.page.Table.Column;
import ripwright.runner.sheet.page.Table.Group;

/** What is cut without a stop, one at a time: parts fitted to their openings. */
final class FitWork {
    private final Pieces pieces;
    private final Tape tape;
    private final StepCells cells;
    private final CutWords words;

    FitWork(Pieces pieces, Tape tape, StepCells cells, CutWords words) {
        this.pieces = pieces;
        this.tape = tape;
        this.cells = cells;
        this.words = words;
    }

    Block block(List<Step> steps) {
        List<Column> columns = List.of(
                Table.tick(),
                Table.step(),
                Table.text("Blank"),
                Table.text("Part"),
                Table.text("Strip"),
                Table.text("From"),
                Table.number(tape.column("Cut to")),
                Table.number(tape.column("Sneak up")),
                Table.number(tape.column("Spare")),
                new Column(tape.column("Opening"), Cell.Kind.FIELD));
        Table table = new Table(
                "Parts fitted to their openings",
                columns,
                steps.stream().map(this::group).toList());
        String note =
                "Measure the opening before each cut and write it down. \u201cCut to\u201d is as planned, sneak-up"
                        + " oversize included; the strip can make the part longer by what it has to spare. What one part takes of"
                        + " it, the later ones of its strip no longer have.";
        return new Block("Without a stop, one at a time", "Cut to fit", List.of(note), Optional.of(table));
    }

    private Group group(Step step) {
        List<List<Cell>> rows = new ArrayList<>();
        for (String id : step.makes()) {
            Cell number = rows.isEmpty() ? cells.number(step) : Cell.text("");
            rows.add(pieces.blank(id)
                    .map(blank -> blank(step, number, blank))
                    .orElseGet(() -> List.of(
                            StepCells.tick(step, id),
                            number,
                            Cell.text(id),
                            Cell.text(pieces.leftover(id, tape)).across(7))));
        }
        return new Group(rows);
    }

    private List<Cell> blank(Step step, Cell number, Pieces.BlankOf blank) {
        Optional<Part> part = pieces.part(blank.blank().part());
        Length sneakUp = part.map(Part::sneakUp).orElse(Length.ZERO);
        Length spare = step.spare().orElse(Length.ZERO);
        // What the cut comes to beyond the opening: sneak-up, and tenons where there are any.
        Length beyond = part.filter(one -> !one.length().exceeds(blank.blank().length()))
                .map(one -> blank.blank().length().minus(one.length()))
                .orElse(sneakUp);
        return List.of(
                StepCells.tick(step, blank.blank().id()),
                number,
                Cell.text(blank.blank().id()),
                Cell.text(blank.blank().part()),
                Cell.text(step.piece()),
                Cell.text(words.end(blank)),
                Cell.number(tape.read(blank.blank().length())),
                Cell.number(tape.read(sneakUp)),
                Cell.number(tape.read(spare)),
                Cell.opening(new Cell.Opening(
                        blank.blank().id(),
                        step.piece(),
                        blank.blank().length().nanometers(),
                        beyond.nanometers(),
                        spare.nanometers())));
    }
}
