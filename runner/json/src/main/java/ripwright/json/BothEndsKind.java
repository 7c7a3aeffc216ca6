package ripwright.json;

import java.util.function.BiFunction;
import ripwright.bill.Tenon;
import ripwright.json.tree.Fields;
import ripwright.json.tree.Kind;
import ripwright.json.tree.ObjectKind;
import ripwright.json.tree.Value;
import ripwright.measure.Length;
import ripwright.stock.EndTrim;

/** One length for both ends, or an object with one for each. */
final class BothEndsKind<T> implements Kind<T> {
    private final Kind<Length> each;
    private final BiFunction<Length, Length, T> of;
    private final T standIn;

    private BothEndsKind(Kind<Length> each, BiFunction<Length, Length, T> of, T standIn) {
        this.each = each;
        this.of = of;
        this.standIn = standIn;
    }

    static Kind<EndTrim> endTrim(Kind<Length> each) {
        return new BothEndsKind<>(each, EndTrim::new, EndTrim.NONE);
    }

    static Kind<Tenon> tenon(Kind<Length> each) {
        return new BothEndsKind<>(each, Tenon::new, Tenon.NONE);
    }

    @Override
    public String expected() {
        return each.expected() + ", or an object with near and far";
    }

    @Override
    public T read(Value value) {
        if (value.isObject()) return new BothEnds().read(value);
        if (value.number().isEmpty() && value.text().isEmpty()) {
            value.refuse(this);
            return standIn();
        }
        Length length = each.read(value);
        return of.apply(length, length);
    }

    @Override
    public T standIn() {
        return standIn;
    }

    private final class BothEnds extends ObjectKind<T> {
        @Override
        public String expected() {
            return BothEndsKind.this.expected();
        }

        @Override
        protected T read(Fields fields) {
            return of.apply(fields.required("near", each), fields.required("far", each));
        }
    }
}
