package ripwright.json;

import ripwright.json.tree.Fields;
import ripwright.json.tree.Kinds;
import ripwright.json.tree.ObjectKind;
import ripwright.measure.Length;
import ripwright.saw.TestRip;

/** How rip settings are proved. */
final class TestRipFields extends ObjectKind<TestRip> {
    private static final int MOST_TRIES = 1_000;

    private final Lengths lengths;

    TestRipFields(Lengths lengths) {
        this.lengths = lengths;
    }

    @Override
    public String expected() {
        return "an object with length and tries";
    }

    @Override
    protected TestRip read(Fields fields) {
        Length length = fields.required("length", lengths.size());
        int tries = fields.required("tries", Kinds.wholeInt(0, MOST_TRIES));
        return fields.build(
                () -> new TestRip(length, tries),
                () -> new TestRip(fields.good("length") ? length : Length.LONGEST, 0));
    }
}
