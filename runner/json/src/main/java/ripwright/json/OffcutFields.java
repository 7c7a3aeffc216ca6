package ripwright.json;

import java.util.Optional;
import ripwright.json.tree.Fields;
import ripwright.json.tree.Kinds;
import ripwright.json.tree.ObjectKind;
import ripwright.stock.Board;
import ripwright.stock.History;

/** An offcut on the rack. */
final class OffcutFields extends ObjectKind<Board> {
    private final WoodFields wood;
    private final Distinct ids;

    OffcutFields(Lengths lengths, Distinct ids) {
        this.wood = new WoodFields(lengths);
        this.ids = ids;
    }

    @Override
    public String expected() {
        return "an object with id, species, thickness, width, length and straightEdges";
    }

    @Override
    protected Board read(Fields fields) {
        String id = fields.required("id", Names.id());
        Optional<String> mark = fields.optional("mark", Names.of("mark"));
        Optional<String> since = fields.optional("since", Names.of("date since when"));
        History from = fields.optional("cameFrom", new CameFromFields(), History.UNKNOWN);
        boolean ripped = fields.optional("ripped", Kinds.flag(), false);
        if (fields.good("id")) fields.value("id").ifPresent(value -> ids.check(value, id));
        return wood.read(fields, id, ripped).toBuilder()
                .onRack(new History(mark, since, from.job(), from.board()))
                .build();
    }
}
