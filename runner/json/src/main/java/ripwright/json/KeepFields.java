package ripwright.json;

import ripwright.job.Keep;
import ripwright.json.tree.Fields;
import ripwright.json.tree.ObjectKind;
import ripwright.measure.Length;

/** The smallest offcut worth racking. */
final class KeepFields extends ObjectKind<Keep> {
    private final Lengths lengths;

    KeepFields(Lengths lengths) {
        this.lengths = lengths;
    }

    @Override
    public String expected() {
        return "an object with length and width";
    }

    @Override
    protected Keep read(Fields fields) {
        Length length = fields.required("length", lengths.size());
        Length width = fields.required("width", lengths.size());
        return fields.build(() -> new Keep(length, width), () -> new Keep(Length.LONGEST, Length.LONGEST));
    }
}
