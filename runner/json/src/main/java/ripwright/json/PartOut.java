package ripwright.json;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import ripwright.bill.Part;
import ripwright.bill.Tenon;
import ripwright.json.tree.JsonOut;
import ripwright.stock.Species;

/** Writes lines of a cutting bill, with lengths that come back exactly; what is as usual is left out. */
final class PartOut {
    private final JsonOut json;
    private final LengthOut length;

    PartOut(JsonOut json, LengthOut length) {
        this.json = json;
        this.length = length;
    }

    void write(Part part) {
        json.text("name", part.name());
        json.number("count", part.count());
        length.write("length", part.length());
        length.write("width", part.width());
        length.write("thickness", part.thickness());
        List<String> species = part.species().stream()
                .sorted(Comparator.comparing(Species::name))
                .map(Species::name)
                .toList();
        if (species.size() == 1) json.text("species", species.get(0));
        else if (!species.isEmpty()) json.texts("species", species);
        json.text("face", part.face().name().toLowerCase(Locale.ROOT));
        if (!part.sneakUp().isZero()) length.write("sneakUp", part.sneakUp());
        if (!part.edgeAllowance().isZero()) length.write("edgeAllowance", part.edgeAllowance());
        if (part.fitted()) json.flag("fitted", true);
        if (!part.tested()) json.flag("test", false);
        if (!part.tenon().equals(Tenon.NONE)) write(part.tenon());
        part.together().ifPresent(group -> json.text("together", group));
        if (!part.boards().isEmpty())
            json.texts("boards", part.boards().stream().sorted().toList());
    }

    private void write(Tenon tenon) {
        if (tenon.near().equals(tenon.far())) {
            length.write("tenon", tenon.near());
            return;
        }
        json.object("tenon", () -> {
            length.write("near", tenon.near());
            length.write("far", tenon.far());
        });
    }
}
