package ripwright.runner.json;

import java.util.Locale;
import ripwright.measure.Length;
import ripwright.measure.Unit;
import ripwright.plan.Offcut;
import ripwright.runner.tree.JsonOut;
import ripwright.stock.Board;
import ripwright.stock.Defect;
import ripwright.stock.EndTrim;
import ripwright.stock.History;

/** Writes the offcuts of a plan, each as an entry of a stack: what is as usual is left out. */
final class OffcutOut {
    private final JsonOut json;
    private final Unit units;

    OffcutOut(JsonOut json, Unit units) {
        this.json = json;
        this.units = units;
    }

    void write(Offcut offcut) {
        Board piece = offcut.piece();
        json.text("id", piece.id());
        json.text("from", offcut.from());
        length("width", piece.width());
        if (piece.tapered()) length("widthAtFarEnd", piece.widthAtFarEnd());
        length("length", piece.length());
        length("thickness", piece.thickness());
        if (piece.rough()) length("millsTo", piece.millsTo());
        json.text("species", piece.species().name());
        piece.history().flatMap(History::mark).ifPresent(mark -> json.text("mark", mark));
        json.number("straightEdges", piece.straightEdges());
        if (!piece.crook().isZero()) length("crook", piece.crook());
        if (!piece.edgeLoss().isZero()) length("edgeLoss", piece.edgeLoss());
        if (!piece.endTrim().equals(EndTrim.NONE)) write(piece.endTrim());
        if (!piece.defects().isEmpty()) json.list("defects", piece.defects(), this::write);
        piece.price().ifPresent(price -> json.number("price", price));
    }

    private void write(EndTrim trim) {
        if (trim.near().equals(trim.far())) {
            length("endTrim", trim.near());
            return;
        }
        json.object("endTrim", () -> {
            length("near", trim.near());
            length("far", trim.far());
        });
    }

    private void write(Defect defect) {
        length("from", defect.from());
        length("to", defect.to());
        length("left", defect.left());
        length("right", defect.right());
        json.text("kind", defect.kind());
        json.text("blocks", defect.blocks().name().toLowerCase(Locale.ROOT));
    }

    private void length(String name, Length length) {
        json.number(name, units.number(length));
    }
}
