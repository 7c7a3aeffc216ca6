package ripwright.json;

import ripwright.json.tree.Kind;
import ripwright.json.tree.Kinds;
import ripwright.json.tree.ObjectKind;
import ripwright.measure.Length;
import ripwright.plan.Setting;
import ripwright.plan.Step;
import ripwright.plan.TestBlank;

/** A plan's order of work: settings, test blanks, steps. */
final class WorkFields {
    private static final Kind<String> ID = Names.of("id");
    private static final Kind<TestBlank.Source> SOURCE = Kinds.choice(TestBlank.Source.class);

    private final Kind<Length> length;

    WorkFields(Kind<Length> length) {
        this.length = length;
    }

    Kind<Setting> setting() {
        Kind<Setting.Test> test = ObjectKind.of(
                "an object with blank and source",
                fields -> new Setting.Test(fields.required("blank", ID), fields.required("source", SOURCE)));
        return ObjectKind.of(
                "an object with id and width",
                fields -> new Setting(
                        fields.required("id", ID), fields.required("width", length), fields.optional("test", test)));
    }

    Kind<TestBlank> testBlank() {
        return ObjectKind.of(
                "an object with id, from, source, width, length, thickness, species and proves",
                fields -> new TestBlank(
                        fields.required("id", ID),
                        fields.required("from", ID),
                        fields.required("source", SOURCE),
                        fields.required("width", length),
                        fields.required("length", length),
                        fields.required("thickness", length),
                        fields.required("species", Names.species()),
                        fields.required("proves", Kinds.list(ID))));
    }

    Kind<Step> step() {
        return ObjectKind.of(
                "an object with n, does, piece and makes",
                fields -> new Step(
                        fields.required("n", Kinds.wholeInt(0, Integer.MAX_VALUE)),
                        fields.optional("saw", Kinds.choice(Step.Saw.class)),
                        fields.required("does", Kinds.choice(Step.Does.class)),
                        fields.optional("setting", ID),
                        fields.optional("stop", length),
                        fields.required("piece", ID),
                        fields.required("makes", Kinds.list(ID)),
                        fields.optional("spare", length)));
    }
}
