package ripwright.json;

import ripwright.json.tree.Kind;
import ripwright.json.tree.Kinds;
import ripwright.json.tree.ObjectKind;
import ripwright.measure.Length;
import ripwright.plan.Blank;
import ripwright.plan.CutBoard;
import ripwright.plan.Section;
import ripwright.plan.Strip;
import ripwright.stock.Edge;

/** How a plan's boards are cut. */
final class CutFields {
    private static final Kind<String> ID = Names.of("id");

    private final Kind<Length> length;

    CutFields(Kind<Length> length) {
        this.length = length;
    }

    Kind<CutBoard> board() {
        Kind<Section> section = section();
        return ObjectKind.of(
                "an object with board and sections",
                fields -> new CutBoard(fields.required("board", ID), fields.required("sections", Kinds.list(section))));
    }

    private Kind<Section> section() {
        Kind<Strip> strip = strip();
        return ObjectKind.of(
                "an object with id, from, to, referenceEdge, edgeLoss and strips",
                fields -> new Section(
                        fields.required("id", ID),
                        fields.required("from", length),
                        fields.required("to", length),
                        fields.required("referenceEdge", Kinds.choice(Edge.class)),
                        fields.required("edgeLoss", length),
                        fields.required("strips", Kinds.list(strip))));
    }

    private Kind<Strip> strip() {
        Kind<Blank> blank = blank();
        return ObjectKind.of(
                "an object with id, offset, width and blanks",
                fields -> new Strip(
                        fields.required("id", ID),
                        fields.required("offset", length),
                        fields.required("width", length),
                        fields.optional("setting", ID),
                        fields.required("blanks", Kinds.list(blank))));
    }

    private Kind<Blank> blank() {
        return ObjectKind.of(
                "an object with id, part, from and length",
                fields -> new Blank(
                        fields.required("id", ID),
                        fields.required("part", Names.of("part's name")),
                        fields.required("from", length),
                        fields.required("length", length)));
    }
}
