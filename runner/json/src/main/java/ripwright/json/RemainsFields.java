package ripwright.json;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import ripwright.json.tree.Kind;
import ripwright.json.tree.Kinds;
import ripwright.json.tree.ObjectKind;
import ripwright.plan.Caution;
import ripwright.plan.CutBoard;
import ripwright.plan.Offcut;
import ripwright.plan.Section;
import ripwright.plan.Shortage;
import ripwright.plan.Strip;
import ripwright.stock.Board;
import ripwright.stock.History;

/** What a plan leaves: offcuts, shortages, cautions. */
final class RemainsFields {
    private static final Kind<String> ID = Names.of("id");

    private final Lengths lengths;

    private final String job;
    private final Map<String, String> boardOf = new HashMap<>(); // the board that a piece is cut from

    /** Of the plan of that job, whose boards are cut like that. */
    RemainsFields(Lengths lengths, String job, List<CutBoard> boards) {
        this.lengths = lengths;
        this.job = job;
        for (CutBoard board : boards) {
            boardOf.put(board.board(), board.board());
            for (Section section : board.sections()) {
                boardOf.put(section.id(), board.board());
                for (Strip strip : section.strips()) boardOf.put(strip.id(), board.board());
            }
        }
    }

    Kind<Offcut> offcut() {
        WoodFields wood = new WoodFields(lengths);
        return ObjectKind.of("an object with id, from, width, length, thickness, species and straightEdges", fields -> {
            String id = fields.required("id", ID);
            String from = fields.required("from", ID);
            Optional<String> mark = fields.optional("mark", Names.of("mark"));
            Optional<String> board = Optional.ofNullable(boardOf.get(from));
            History history = new History(mark, Optional.empty(), Optional.of(job), board);
            Board piece = wood.read(fields, id, false);
            return new Offcut(from, piece.toBuilder().onRack(history).build());
        });
    }

    Kind<Shortage> shortage() {
        Kind<Shortage.Buy> buy = ObjectKind.of(
                "an object with boardFeet, species, thickness, shortest and narrowest",
                fields -> new Shortage.Buy(
                        fields.required("boardFeet", Amounts.figure()),
                        fields.required("species", new SpeciesKind()),
                        fields.required("thickness", lengths.any()),
                        fields.required("shortest", lengths.any()),
                        fields.required("narrowest", lengths.any())));
        return ObjectKind.of(
                "an object with part, count and buy",
                fields -> new Shortage(
                        fields.required("part", Names.of("part's name")),
                        fields.required("count", Kinds.wholeInt(1, Integer.MAX_VALUE)),
                        fields.required("buy", buy)));
    }

    Kind<Caution> caution() {
        return ObjectKind.of(
                "an object with text",
                fields -> new Caution(
                        fields.optional("steps", Kinds.list(Kinds.wholeInt(1, Integer.MAX_VALUE)), List.of()),
                        fields.required("text", Kinds.of("text", "", value -> value.text()))));
    }
}
