package ripwright.json;

import ripwright.json.tree.JsonOut;
import ripwright.measure.Unit;
import ripwright.plan.Offcut;
import ripwright.stock.Board;
import ripwright.stock.History;

/** Writes the offcuts of a plan, each as an entry of a stack: what is as usual is left out. */
final class OffcutOut {
    private final JsonOut json;
    private final WoodOut wood;

    OffcutOut(JsonOut json, Unit units) {
        this.json = json;
        this.wood = new WoodOut(json, (name, length) -> json.number(name, units.number(length)));
    }

    void write(Offcut offcut) {
        Board piece = offcut.piece();
        json.text("id", piece.id());
        json.text("from", offcut.from());
        wood.size(piece);
        json.text("species", piece.species().name());
        piece.history().flatMap(History::mark).ifPresent(mark -> json.text("mark", mark));
        wood.shape(piece);
    }
}
