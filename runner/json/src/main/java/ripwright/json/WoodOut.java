package ripwright.json;

import java.util.Locale;
import java.util.function.BiConsumer;
import ripwright.json.tree.JsonOut;
import ripwright.measure.Length;
import ripwright.stock.Board;
import ripwright.stock.Defect;
import ripwright.stock.EndTrim;

/** Writes what boards of a stack and offcuts have in common; what is as usual is left out. */
final class WoodOut {
    private final JsonOut json;
    private final BiConsumer<String, Length> length;

    /** Lengths are written by {@code length}. */
    WoodOut(JsonOut json, BiConsumer<String, Length> length) {
        this.json = json;
        this.length = length;
    }

    /** How large it is. */
    void size(Board piece) {
        length.accept("width", piece.width());
        if (piece.tapered()) length.accept("widthAtFarEnd", piece.widthAtFarEnd());
        length.accept("length", piece.length());
        length.accept("thickness", piece.thickness());
        if (piece.rough()) length.accept("millsTo", piece.millsTo());
    }

    /** Its edges, its ends, its defects and its price. */
    void shape(Board piece) {
        json.number("straightEdges", piece.straightEdges());
        if (!piece.crook().isZero()) length.accept("crook", piece.crook());
        if (!piece.edgeLoss().isZero()) length.accept("edgeLoss", piece.edgeLoss());
        if (!piece.endTrim().equals(EndTrim.NONE)) write(piece.endTrim());
        if (piece.squareEnds() > 0) json.number("squareEnds", piece.squareEnds());
        if (piece.testOnly()) json.text("only", "test");
        if (!piece.defects().isEmpty()) json.list("defects", piece.defects(), this::write);
        piece.price().ifPresent(price -> json.number("price", price));
    }

    private void write(EndTrim trim) {
        if (trim.near().equals(trim.far())) {
            length.accept("endTrim", trim.near());
            return;
        }
        json.object("endTrim", () -> {
            length.accept("near", trim.near());
            length.accept("far", trim.far());
        });
    }

    private void write(Defect defect) {
        length.accept("from", defect.from());
        length.accept("to", defect.to());
        length.accept("left", defect.left());
        length.accept("right", defect.right());
        json.text("kind", defect.kind());
        json.text("blocks", defect.blocks().name().toLowerCase(Locale.ROOT));
    }
}
