package ripwright.json;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import ripwright.json.tree.Fields;
import ripwright.json.tree.Kinds;
import ripwright.measure.Length;
import ripwright.measure.OnePlace;
import ripwright.stock.Board;
import ripwright.stock.EndTrim;
import ripwright.stock.Species;

/** What boards of a stack, offcuts of a rack and offcuts of a plan have in common. */
final class WoodFields {
    /** What an entry of a stack or a rack must be. */
    static final String EXPECTED = "an object with id, species, thickness, width, length and straightEdges";

    private static final int MOST_DEFECTS = 1_000;

    private final Lengths lengths;

    /** What a piece of wood is good for alone. */
    private enum Only {
        TEST
    }

    WoodFields(Lengths lengths) {
        this.lengths = lengths;
    }

    /** The id of an entry, noted when it was met before. */
    static String id(Fields fields, Distinct ids) {
        String id = fields.required("id", Names.id());
        if (fields.good("id")) fields.value("id").ifPresent(value -> ids.check(value, id));
        return id;
    }

    /** A board under that id and without a history; a stand-in when something is wrong with it. */
    Board read(Fields fields, String id, boolean ripped) {
        Species species = fields.required("species", Names.species());
        Length thickness = fields.required("thickness", lengths.size());
        Length millsTo = fields.optional("millsTo", lengths.size(), thickness);
        Length width = fields.required("width", lengths.size());
        Length widthAtFarEnd = fields.optional("widthAtFarEnd", lengths.size(), width);
        Length length = fields.required("length", lengths.size());
        Length crook = fields.optional("crook", lengths.any(), Length.ZERO);
        int straightEdges = fields.required("straightEdges", Kinds.wholeInt(0, 2));
        Length edgeLoss = fields.optional("edgeLoss", lengths.any(), Length.ZERO);
        EndTrim endTrim = fields.optional("endTrim", BothEndsKind.endTrim(lengths.any()), EndTrim.NONE);
        int squareEnds = fields.optional("squareEnds", Kinds.wholeInt(0, 2), 0);
        boolean testOnly = fields.optional("only", Kinds.choice(Only.class)).isPresent();
        List<DefectFields.Entry> defects =
                fields.optional("defects", Kinds.list(new DefectFields(lengths), MOST_DEFECTS), List.of());
        Optional<BigDecimal> price = fields.optional("price", Amounts.money());
        checkMilling(fields, thickness, millsTo);
        checkCrook(fields, straightEdges, crook);
        checkSquareEnds(fields, squareEnds, straightEdges, endTrim);
        if (ripped) checkRipped(fields, straightEdges, width, widthAtFarEnd);
        outline(fields, width, widthAtFarEnd, length)
                .ifPresent(board -> defects.forEach(defect -> defect.checkOn(board)));
        return fields.build(
                () -> {
                    Board.Builder board = Board.measured(id, species.name(), thickness, width, length)
                            .rough(thickness, millsTo)
                            .width(width, widthAtFarEnd)
                            .edges(straightEdges, edgeLoss, crook)
                            .endTrim(endTrim.near(), endTrim.far())
                            .squareEnds(squareEnds)
                            .testOnly(testOnly)
                            .defects(defects.stream()
                                    .map(entry -> entry.defect().orElseThrow())
                                    .toList())
                            .ripped(ripped);
                    price.ifPresent(board::price);
                    return board.build();
                },
                () -> standIn(fields, species, price));
    }

    /** The same, ripped already where the entry says so. */
    Board read(Fields fields, String id) {
        return read(fields, id, fields.optional("ripped", Kinds.flag(), false));
    }

    private void checkMilling(Fields fields, Length thickness, Length millsTo) {
        if (fields.good("thickness", "millsTo") && millsTo.exceeds(thickness))
            fields.wrong(
                    "millsTo",
                    lengths.text(millsTo) + " is more than the thickness of " + lengths.text(thickness)
                            + ". Milling takes wood off.");
    }

    private void checkCrook(Fields fields, int straightEdges, Length crook) {
        if (fields.good("crook", "straightEdges") && straightEdges == 2 && !crook.isZero())
            fields.wrong(
                    "crook",
                    lengths.text(crook)
                            + " on a board with two straight edges. Set straightEdges to 1 or 0, or leave crook out.");
    }

    private void checkSquareEnds(Fields fields, int squareEnds, int straightEdges, EndTrim endTrim) {
        if (squareEnds == 0 || !fields.good("squareEnds", "straightEdges", "endTrim")) return;
        if (straightEdges < 2)
            fields.wrong(
                    "squareEnds",
                    squareEnds + " on a board with " + (straightEdges == 1 ? "one straight edge" : "no straight edge")
                            + "; an end is square to two. Leave squareEnds out.");
        else if (!endTrim.near().isZero())
            fields.wrong(
                    "squareEnds",
                    squareEnds + ", so the marked end is square, but " + lengths.text(endTrim.near())
                            + " is to be trimmed there. Leave out one of the two.");
        else if (squareEnds > 1 && !endTrim.far().isZero())
            fields.wrong(
                    "squareEnds",
                    squareEnds + ", so the far end is square, but " + lengths.text(endTrim.far())
                            + " is to be trimmed there. Leave out one of the two.");
    }

    private void checkRipped(Fields fields, int straightEdges, Length width, Length widthAtFarEnd) {
        if (fields.good("straightEdges") && straightEdges != 2)
            fields.wrong(
                    "straightEdges",
                    straightEdges + " on a ripped board, which has two. Set it to 2, or leave ripped out.");
        if (fields.good("width", "widthAtFarEnd") && !width.equals(widthAtFarEnd))
            fields.wrong(
                    "widthAtFarEnd",
                    lengths.text(widthAtFarEnd) + " on a ripped board, which is " + lengths.text(width)
                            + " wide everywhere. Leave it out.");
    }

    /** A board of that size, for defects to lie on; empty when the size is not known. */
    private static Optional<Board> outline(Fields fields, Length width, Length widthAtFarEnd, Length length) {
        if (!fields.good("width", "length") || widthAtFarEnd.isZero()) return Optional.empty();
        return Optional.of(Board.measured("?", "?", new Length(1), width, length)
                .width(width, widthAtFarEnd)
                .build());
    }

    /** Has a price of its own where it cannot be told whether it needs one. */
    private static Board standIn(Fields fields, Species species, Optional<BigDecimal> price) {
        Length size = new Length(OnePlace.NANOMETERS + 1); // of what has none: the least a job may have
        Board.Builder board = Board.measured("?", species.name(), size, size, size);
        if (!fields.good("species") || price.isPresent()) board.price(price.orElse(BigDecimal.ZERO));
        return board.build();
    }
}
