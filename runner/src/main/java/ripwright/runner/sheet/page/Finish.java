package ripwright.runner.sheet.page;

import static java.util.stream.Collectors.counting;
import static java.util.stream.Collectors.groupingBy;
import static java.util.stream.Collectors.joining;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import ripwright.bill.Part;
import ripwright.job.Job;
import ripwright.plan.Blank;
import ripwright.plan.Offcut;
import ripwright.plan.Plan;
import ripwright.plan.Shortage;
import ripwright.runner.sheet.drawing.Isolated;
import ripwright.runner.sheet.page.Table.Group;
import ripwright.stock.Board;
import ripwright.stock.History;
import ripwright.stock.Species;

/** What comes after the last cut: racking the offcuts, buying what is short. */
final class Finish {
    private final Job job;
    private final Plan plan;
    private final Pieces pieces;
    private final Tape tape;

    Finish(Job job, Plan plan, Pieces pieces, Tape tape) {
        this.job = job;
        this.plan = plan;
        this.pieces = pieces;
        this.tape = tape;
    }

    List<Block> blocks() {
        List<Block> blocks = new ArrayList<>();
        if (!plan.offcuts().isEmpty()) blocks.add(rack());
        if (!plan.shortages().isEmpty()) blocks.add(buy());
        return blocks;
    }

    /** The cutting list: what is wanted, and what is made of it. */
    Block parts() {
        Map<String, Long> made = plan.boards().stream()
                .flatMap(board -> board.sections().stream())
                .flatMap(section -> section.strips().stream())
                .flatMap(strip -> strip.blanks().stream())
                .collect(groupingBy(Blank::part, counting()));
        Table table = new Table(
                "The cutting bill and what is made of it",
                List.of(
                        Table.tick(),
                        Table.text("Part"),
                        Table.number("Made"),
                        Table.number("Wanted"),
                        Table.number(tape.column("Finished") + " (thick × wide × long)"),
                        Table.number(tape.column("Blank") + " (wide × long)")),
                job.parts().stream()
                        .map(part -> part(part, made.getOrDefault(part.name(), 0L)))
                        .toList());
        String note = "Count each part off here when all of it is cut.";
        return new Block("", "Cutting list", List.of(note), Optional.of(table), true);
    }

    private Group part(Part part, long made) {
        return Group.of(List.of(
                Cell.tick("Counted " + part.name()),
                Cell.id(part.name()),
                Cell.number(Long.toString(made)),
                Cell.number(Integer.toString(part.count())),
                Cell.number(size(part)),
                Cell.number(tape.read(part.blankWidth()) + " × " + tape.read(part.blankLength()))));
    }

    /** Finished, over all; of a part with tenons what lies between its shoulders too. */
    private String size(Part part) {
        String over = tape.size(part.thickness(), part.width(), part.finishedLength());
        return part.tenon().sum().isZero() ? over : over + ", " + tape.read(part.length()) + " between shoulders";
    }

    private Block rack() {
        Table table = new Table(
                "Offcuts to keep",
                List.of(
                        Table.tick(),
                        Table.text("Offcut"),
                        Table.text("Chalk mark"),
                        Table.text("Wood"),
                        Table.number(tape.column("Thick")),
                        Table.number(tape.column("Wide")),
                        Table.number(tape.column("Long")),
                        Table.text("Left of board")),
                plan.offcuts().stream().map(this::offcut).toList());
        String note = "Chalk each offcut's mark at its marked end before it leaves the saw.";
        return new Block("", "Back to the rack", List.of(note), Optional.of(table));
    }

    private Group offcut(Offcut offcut) {
        Board piece = offcut.piece();
        String width = piece.tapered()
                ? tape.read(piece.width()) + " to " + tape.read(piece.widthAtFarEnd())
                : tape.read(piece.width());
        return Group.of(List.of(
                Cell.tick("Racked " + offcut.id()),
                Cell.id(offcut.id()),
                Cell.text(piece.history().flatMap(History::mark).orElse(offcut.id())),
                Cell.text(piece.species().name()),
                Cell.number(tape.read(piece.thickness())),
                Cell.number(width),
                Cell.number(tape.read(piece.length())),
                Cell.text(pieces.boardId(offcut.from()))));
    }

    private Block buy() {
        Table table = new Table(
                "What is short, and what would make it",
                List.of(
                        Table.text("Part"),
                        Table.number("Missing"),
                        Table.number("Board feet"),
                        Table.text("Wood"),
                        Table.number(tape.column("Thick")),
                        Table.number(tape.column("Wide, at least")),
                        Table.number(tape.column("Long, at least"))),
                plan.shortages().stream().map(this::shortage).toList());
        String note =
                "Board feet are a total with kerfs and waste; each board must be at least as wide and as long as said.";
        return new Block("", "Buy", List.of(note), Optional.of(table));
    }

    private Group shortage(Shortage shortage) {
        Shortage.Buy buy = shortage.buy();
        String wood = buy.species().isEmpty()
                ? "any"
                : buy.species().stream().map(Species::name).map(Isolated::name).collect(joining(" or "));
        return Group.of(List.of(
                Cell.id(shortage.part()),
                Cell.number(Integer.toString(shortage.count())),
                Cell.number(Tape.boardFeet(buy.boardFeet())),
                Cell.text(wood),
                Cell.number(tape.read(buy.thickness())),
                Cell.number(tape.read(buy.narrowest())),
                Cell.number(tape.read(buy.shortest()))));
    }
}
