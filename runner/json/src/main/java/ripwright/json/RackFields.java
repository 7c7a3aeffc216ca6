package ripwright.json;

import java.util.List;
import ripwright.json.tree.Fields;
import ripwright.json.tree.Kinds;
import ripwright.json.tree.ObjectKind;
import ripwright.stock.Board;

/** A rack file. */
final class RackFields extends ObjectKind<Rack> {
    private static final int MOST_OFFCUTS = 10_000;

    private final Distinct ids;

    /** Its ids must differ from those already met. */
    RackFields(Distinct ids) {
        this.ids = ids;
    }

    @Override
    public String expected() {
        return "an object with format, units and offcuts";
    }

    @Override
    protected Rack read(Fields fields) {
        Lengths lengths = Lengths.written(Format.read(fields));
        OffcutFields offcut = new OffcutFields(lengths, ids);

        List<Board> offcuts = fields.required("offcuts", Kinds.list(offcut, MOST_OFFCUTS));
        return new Rack(lengths.unit(), offcuts);
    }
}
