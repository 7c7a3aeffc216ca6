package ripwright.runner.sheet.page;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import ripwright.measure.Length;
import ripwright.plan.Step;
import ripwright.runner.sheet.drawing.Isolated;
import ripwright.runner.sheet.page.Table.Group;

/** What is done at the crosscut saw once the strips are ripped: squaring, then stop by stop. The words are {@link CutWords}. */
final class CrosscutWork {
    private final Pieces pieces;
    private final Tape tape;
    private final StepCells cells;
    private final CutWords words;

    CrosscutWork(Pieces pieces, Tape tape, StepCells cells, CutWords words) {
        this.pieces = pieces;
        this.tape = tape;
        this.cells = cells;
        this.words = words;
    }

    /** A row for strips of one section that lose as much. */
    Block square(List<Step> steps) {
        List<List<Step>> alike = new ArrayList<>();
        for (Step step : steps) {
            boolean joins = !alike.isEmpty()
                    && row(step).equals(row(alike.get(alike.size() - 1).get(0)));
            if (!joins) alike.add(new ArrayList<>());
            alike.get(alike.size() - 1).add(step);
        }
        Table table = new Table(
                "Ends to cut off square",
                List.of(
                        Table.step(),
                        Table.text("Section"),
                        Table.text(tape.column("Cut off")),
                        Table.ticks("Strips, in the order of the steps")),
                alike.stream().map(this::squares).toList());
        List<String> notes = List.of(
                "Cut the marked end of each strip off square: about as much as is said, less if that cleans it up,"
                        + " never more, as all lengths of the strip start there. Look at the fresh end: while it shows a"
                        + " check, cut again. Write the strip's id behind the cut if it falls with the end.");
        return new Block("Before the first stop", "Square one end of each strip", notes, Optional.of(table));
    }

    private List<String> row(Step step) {
        return pieces.strip(step.piece())
                .map(strip -> List.of(strip.section().section().id(), words.offTheEnd(strip)))
                .orElse(List.of());
    }

    private Group squares(List<Step> steps) {
        Step first = steps.get(0);
        List<String> row = row(first);
        return new Group(List.of(List.of(
                cells.numbers(steps),
                Cell.text(row.isEmpty() ? "" : row.get(0)),
                Cell.text(row.isEmpty() ? "" : row.get(1)),
                Cell.ticks(steps.stream()
                        .map(step -> StepCells.tick(step, step.piece(), Isolated.name(step.piece())))
                        .toList()))));
    }

    /** Blanks as long as their strips. */
    Block whole(List<Step> steps) {
        Table table = new Table(
                "Blanks that are their whole strip",
                List.of(Table.step(), Table.text("Strip"), Table.text("Part"), Table.ticks("Blanks")),
                steps.stream()
                        .map(step -> new Group(List.of(List.of(
                                cells.number(step),
                                Cell.text(step.piece()),
                                Cell.text(parts(blanks(step))),
                                Cell.ticks(boxes(step))))))
                        .toList());
        return new Block(
                "",
                "Long enough as they are",
                List.of("No cut: the strip is the blank. Label it."),
                Optional.of(table));
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
                        Table.words("How"),
                        Table.ticks("Blanks, in the order they come off")),
                run.steps().stream().map(this::cut).toList());
        List<String> notes = turn == 1
                ? List.of(
                        "The end named touches the stop; the blank lies between stop and blade and is held, the rest is"
                                + " free. Label each blank as it comes off. What is to be passed is cut away first, clear of it.")
                : List.of();
        return new Block("Stop setting " + turn + " of " + of, "Crosscut at " + length, notes, Optional.of(table));
    }

    private Group cut(Step step) {
        return new Group(List.of(List.of(
                cells.number(step),
                Cell.text(step.piece()),
                Cell.number(pieces.strip(step.piece())
                        .map(strip -> tape.read(strip.strip().width()))
                        .orElse("")),
                Cell.text(parts(blanks(step))),
                Cell.text(words.atStop(step, blanks(step))),
                Cell.ticks(boxes(step)))));
    }

    private static String parts(List<Pieces.BlankOf> blanks) {
        return blanks.stream().map(blank -> blank.blank().part()).distinct().collect(Collectors.joining(", "));
    }

    /** A box for each blank and for what is kept of the rest; parts named where there are several. */
    private List<Cell.Tick> boxes(Step step) {
        List<Pieces.BlankOf> blanks = blanks(step);
        boolean several =
                blanks.stream().map(blank -> blank.blank().part()).distinct().count() > 1;
        List<Cell.Tick> boxes = new ArrayList<>();
        for (Pieces.BlankOf blank : blanks) {
            String id = blank.blank().id();
            String text = Isolated.name(id)
                    + (several ? " " + Isolated.name(blank.blank().part()) : "");
            boxes.add(StepCells.tick(step, id, text));
        }
        for (String id : others(step))
            boxes.add(StepCells.tick(step, id, Isolated.name(id) + ", " + pieces.leftover(id, tape)));
        return boxes;
    }

    /** By where they start: the order in which they come off. */
    private List<Pieces.BlankOf> blanks(Step step) {
        return step.makes().stream()
                .flatMap(id -> pieces.blank(id).stream())
                .sorted(Comparator.comparing(blank -> blank.blank().from()))
                .toList();
    }

    private List<String> others(Step step) {
        Set<String> blanks =
                blanks(step).stream().map(blank -> blank.blank().id()).collect(Collectors.toSet());
        return step.makes().stream().filter(id -> !blanks.contains(id)).toList();
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
            row.add(Cell.text(pieces.leftover(id, tape)));
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
