package ripwright.json;

import java.util.Optional;
import ripwright.json.tree.Fields;
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
        return WoodFields.EXPECTED;
    }

    @Override
    protected Board read(Fields fields) {
        String id = WoodFields.id(fields, ids);
        Optional<String> mark = fields.optional("mark", Names.of("mark"));
        Optional<String> since = fields.optional("since", Names.of("date since when"));
        History from = fields.optional("cameFrom", new CameFromFields(), History.UNKNOWN);
        return wood.read(fields, id).toBuilder()
                .onRack(new History(mark, since, from.job(), from.board()))
                .build();
    }
}
