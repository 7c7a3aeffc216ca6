package ripwright.internal.sequence;

import static ripwright.internal.sequence.Shop.bench;
import static ripwright.internal.sequence.Shop.blank;
import static ripwright.internal.sequence.Shop.cut;
import static ripwright.internal.sequence.Shop.in;
import static ripwright.internal.sequence.Shop.maple;
import static ripwright.internal.sequence.Shop.part;
import static ripwright.internal.sequence.Shop.section;
import static ripwright.internal.sequence.Shop.strip;

import ripwright.internal.geometry.Layout;
import ripwright.testing.JobBuilder;

/** One board 6 1/2 x 61 in with an inch of trim at each end: three rails, two slats, two offcuts. */
public final class RailsAndSlats {
    private RailsAndSlats() {}

    public static JobBuilder shop() {
        return bench().stack(maple("m-1", "6.5", "61").endTrim(in("1"), in("1")))
                .parts(
                        part("rail", "20", "2").count(3),
                        part("slat", "12", "1.5").count(2));
    }

    public static Layout layout() {
        return cut(
                0,
                section(
                        "1",
                        "41.125",
                        strip("2", blank(0, "1"), blank(0, "21.125")),
                        strip("2", blank(0, "1")),
                        strip("1.5", blank(1, "1"), blank(1, "13.125"))));
    }
}
