package ripwright.runner.sheet.page;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import ripwright.bill.Part;
import ripwright.measure.Length;
import ripwright.plan.Plan;
import ripwright.plan.Section;
import ripwright.plan.Step;
import ripwright.runner.sheet.drawing.Isolated;
import ripwright.runner.sheet.page.Outcomes.Thing;
import ripwright.stock.Board;

/** What can come out different, step by step: what the step makes, what it is done to, and the parts it is done for. */
final class Differences {
    private final Plan plan;
    private final Pieces pieces;
    private final Tape tape;

    Differences(Plan plan, Pieces pieces, Tape tape) {
        this.plan = plan;
        this.pieces = pieces;
        this.tape = tape;
    }

    List<Outcomes> all() {
        return plan.steps().stream().map(this::outcomes).toList();
    }

    private Outcomes outcomes(Step step) {
        Set<String> ids = new LinkedHashSet<>(step.makes());
        ids.add(step.piece());
        Stream<Thing> parts = step.makes().stream()
                .flatMap(id -> pieces.blank(id).stream())
                .map(blank -> blank.blank().part())
                .distinct()
                .flatMap(name -> pieces.part(name).stream())
                .map(this::part);
        return new Outcomes(
                step.n(), Stream.concat(ids.stream().map(this::piece), parts).toList());
    }

    private Thing part(Part part) {
        return new Thing(
                part.name(),
                true,
                "part " + Isolated.name(part.name()) + ", every one still to be made",
                tape.read(part.width()),
                tape.read(part.length()));
    }

    private Thing piece(String id) {
        Optional<Thing> thing = pieces.blank(id)
                .map(blank -> piece(
                        id,
                        "blank",
                        blank.strip().strip().width(),
                        blank.blank().length()))
                .or(() -> pieces.strip(id)
                        .map(strip -> piece(
                                id,
                                "strip",
                                strip.strip().width(),
                                length(strip.section().section()))))
                .or(() -> pieces.section(id).map(section -> section(id, section)))
                .or(() -> pieces.testBlank(id).map(test -> piece(id, "test blank", test.width(), test.length())))
                .or(() -> pieces.offcut(id).map(offcut -> board(id, "offcut", offcut.piece())))
                .or(() -> pieces.board(id).map(board -> board(id, "board", board)));
        return thing.orElse(new Thing(id, false, Isolated.name(id), "", ""));
    }

    private static Length length(Section section) {
        return section.to().minus(section.from());
    }

    private Thing section(String id, Pieces.SectionOf placed) {
        Section section = placed.section();
        Length width = pieces.board(placed.board())
                .map(board -> board.widthAt(section.from()).min(board.widthAt(section.to())))
                .orElse(Length.ZERO);
        return piece(id, "section", width, length(section));
    }

    private Thing board(String id, String what, Board board) {
        return piece(id, what, board.width().min(board.widthAtFarEnd()), board.length());
    }

    private Thing piece(String id, String what, Length width, Length length) {
        return new Thing(id, false, what + " " + Isolated.name(id), tape.read(width), tape.read(length));
    }
}
