package ripwright.internal.pricing;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.BooleanSupplier;
import ripwright.internal.model.ItemTypes;
import ripwright.internal.model.ScaledLabor;

/** The strips and sections of one wood at given prices. */
public final class SectionTables {
    private final BoardClass wood;
    private final StripPricing[] strips; // of each width
    private final SectionPricing sections;
    private final BooleanSupplier abort;

    SectionTables(BoardClass wood, ItemTypes types, ScaledLabor charges, BoardProfile[] shapes, BooleanSupplier abort) {
        this.wood = wood;
        this.abort = abort;
        int[] wanted = new int[types.parts()];
        for (int k = 0; k < wanted.length; k++) wanted[k] = types.wanted(k);
        strips = new StripPricing[wood.widths.length];
        for (int v = 0; v < strips.length; v++)
            strips[v] = EnumeratedStrips.suit(wood, v, wanted, charges)
                    ? EnumeratedStrips.of(wood, v, wanted, charges)
                    : new KnapsackStrips(wood, v, charges);
        sections = new SectionPricing(wood, charges, strips, shapes, abort);
    }

    void price(long[] prices, int[] most) {
        for (StripPricing strip : strips) {
            if (abort.getAsBoolean()) throw new PricingStopped();
            strip.price(prices, most);
        }
        sections.price();
    }

    SectionPricing sections() {
        return sections;
    }

    /** What the best strip of width {@code v} and {@code t} ticks is worth. */
    long strip(int v, int t) {
        return strips[v].best(1, t);
    }

    /** The part types of that strip. */
    int[] blanks(int v, int t) {
        return strips[v].blanks(1, t).get(0);
    }

    /** The best section of {@code t} ticks on board {@code i}. */
    Pattern.Section section(int i, int t) {
        int[] many = sections.strips(i, t);
        List<Pattern.Strip> cut = new ArrayList<>();
        for (int v = 0; v < many.length; v++) {
            if (many[v] == 0) continue;
            long width = wood.numbers.widths[wood.widths[v]];
            for (int[] blanks : strips[v].blanks(many[v], t))
                cut.add(new Pattern.Strip(width, Arrays.stream(blanks).boxed().toList()));
        }
        return new Pattern.Section(t * wood.lengthTick - wood.numbers.crosscutKerf, cut);
    }
}
