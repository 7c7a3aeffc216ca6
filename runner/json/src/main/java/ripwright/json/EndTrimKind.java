package ripwright.json;

import ripwright.json.tree.Fields;
import ripwright.json.tree.Kind;
import ripwright.json.tree.ObjectKind;
import ripwright.json.tree.Value;
import ripwright.measure.Length;
import ripwright.stock.EndTrim;

/** One length for both ends, or an object with one for each. */
final class EndTrimKind implements Kind<EndTrim> {
    private final Kind<Length> each;

    EndTrimKind(Kind<Length> each) {
        this.each = each;
    }

    @Override
    public String expected() {
        return each.expected() + ", or an object with near and far";
    }

    @Override
    public EndTrim read(Value value) {
        if (value.isObject()) return new BothEnds().read(value);
        if (value.number().isEmpty() && value.text().isEmpty()) {
            value.refuse(this);
            return standIn();
        }
        Length trim = each.read(value);
        return new EndTrim(trim, trim);
    }

    @Override
    public EndTrim standIn() {
        return EndTrim.NONE;
    }

    private final class BothEnds extends ObjectKind<EndTrim> {
        @Override
        public String expected() {
            return EndTrimKind.this.expected();
        }

        @Override
        protected EndTrim read(Fields fields) {
            return new EndTrim(fields.required("near", each), fields.required("far", each));
        }
    }
}
