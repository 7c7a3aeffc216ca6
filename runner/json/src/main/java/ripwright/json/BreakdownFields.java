package ripwright.json;

import ripwright.job.Breakdown;
import ripwright.json.tree.Fields;
import ripwright.json.tree.ObjectKind;

/** How boards are cut into sections. */
final class BreakdownFields extends ObjectKind<Breakdown> {
    private final Lengths lengths;

    BreakdownFields(Lengths lengths) {
        this.lengths = lengths;
    }

    @Override
    public String expected() {
        return "an object with over";
    }

    @Override
    protected Breakdown read(Fields fields) {
        return new Breakdown(fields.required("over", lengths.any()));
    }
}
