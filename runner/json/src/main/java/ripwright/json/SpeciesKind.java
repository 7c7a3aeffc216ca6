package ripwright.json;

import java.util.List;
import java.util.Optional;
import ripwright.json.tree.Kind;
import ripwright.json.tree.Kinds;
import ripwright.json.tree.Value;
import ripwright.stock.Species;

/** The woods a part may be of: one name, a list of names, or "any", which is none. */
final class SpeciesKind implements Kind<List<Species>> {
    static final Species ANY = new Species("any");

    @Override
    public String expected() {
        return "the name of a wood, a list of such names, or \"any\"";
    }

    @Override
    public List<Species> read(Value value) {
        if (value.text().isPresent()) {
            Species species = Names.species().read(value);
            return species.equals(ANY) ? List.of() : List.of(species);
        }
        Optional<List<Value>> items = value.items();
        if (items.isEmpty()) {
            value.refuse(this);
            return List.of();
        }
        List<Species> woods = Kinds.list(Names.species()).read(value);
        if (woods.isEmpty()) value.wrong("an empty list; name one wood at least, or write \"any\".");
        if (woods.contains(ANY)) value.wrong("\"any\" in a list; write it alone, or name woods only.");
        return woods;
    }

    @Override
    public List<Species> standIn() {
        return List.of();
    }
}
