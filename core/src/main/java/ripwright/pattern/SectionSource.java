package ripwright.pattern;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.BooleanSupplier;

/** The strips and sections of one wood at given prices. */
final class SectionSource {
    private final Wood wood;
    private final StripWorth[] strips; // of each width
    private final SectionWorth sections;
    private final BooleanSupplier abort;

    SectionSource(Wood wood, Kinds kinds, Charges charges, BoardShape[] shapes, BooleanSupplier abort) {
        this.wood = wood;
        this.abort = abort;
        int[] wanted = new int[kinds.parts()];
        for (int k = 0; k < wanted.length; k++) wanted[k] = kinds.wanted(k);
        strips = new StripWorth[wood.widths.length];
        for (int v = 0; v < strips.length; v++)
            strips[v] = FewBlanks.suit(wood, v, wanted, charges)
                    ? FewBlanks.of(wood, v, wanted, charges)
                    : new ManyBlanks(wood, v, charges);
        sections = new SectionWorth(wood, charges, strips, shapes, abort);
    }

    void price(long[] prices, int[] most) {
        for (StripWorth strip : strips) {
            if (abort.getAsBoolean()) throw new PricingStopped();
            strip.price(prices, most);
        }
        sections.price();
    }

    SectionWorth sections() {
        return sections;
    }

    /** What the best strip of width {@code v} and {@code t} ticks is worth. */
    long strip(int v, int t) {
        return strips[v].best(1, t);
    }

    /** The part kinds of that strip. */
    int[] blanks(int v, int t) {
        return strips[v].blanks(1, t).get(0);
    }

    /** The best section of {@code t} ticks on board {@code i}. */
    Sketch.Section section(int i, int t) {
        int[] many = sections.strips(i, t);
        List<Sketch.Strip> cut = new ArrayList<>();
        for (int v = 0; v < many.length; v++) {
            if (many[v] == 0) continue;
            long width = wood.numbers.widths[wood.widths[v]];
            for (int[] blanks : strips[v].blanks(many[v], t))
                cut.add(new Sketch.Strip(width, Arrays.stream(blanks).boxed().toList()));
        }
        return new Sketch.Section(t * wood.lengthTick - wood.numbers.crosscutKerf, cut);
    }
}
