package ripwright.pattern;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** What the best layout of every board of one wood is worth at given prices. */
final class WoodWorth {
    private final Wood wood;
    private final StripWorth[] strips; // of each width
    private final SectionWorth sections;
    private final BoardWorth[] boards; // of those that are not ripped
    private final int[] rippedWidth; // rippedWidth[i]: the width's place in wood.widths; -1: none, or not ripped
    private final BoardShape[] shapes;
    private final long[] worth;

    WoodWorth(Wood wood, Kinds kinds, Coins coins, Charges charges) {
        this.wood = wood;
        int[] wanted = new int[kinds.parts()];
        for (int k = 0; k < wanted.length; k++) wanted[k] = kinds.wanted(k);
        strips = new StripWorth[wood.widths.length];
        for (int v = 0; v < strips.length; v++)
            strips[v] = FewBlanks.suit(wood, v, wanted, charges)
                    ? FewBlanks.of(wood, v, wanted, charges)
                    : new ManyBlanks(wood, v, charges);
        int n = wood.boards.length;
        shapes = new BoardShape[n];
        for (int i = 0; i < n; i++) shapes[i] = new BoardShape(wood, wood.boards[i], charges, coins);
        sections = new SectionWorth(wood, charges, strips, shapes);
        boards = new BoardWorth[n];
        rippedWidth = new int[n];
        worth = new long[n];
        int[] place = new int[wood.length + 1];
        for (int i = 0; i < n; i++) {
            boards[i] = new BoardWorth(wood, sections, i, shapes[i], place);
            rippedWidth[i] = -1;
            if (!wood.boards[i].ripped) continue;
            for (int v = 0; v < wood.widths.length; v++)
                if (wood.numbers.widths[wood.widths[v]] == wood.boards[i].widthNear) rippedWidth[i] = v;
        }
    }

    /** Reckons all boards. */
    void price(long[] prices, int[] most) {
        for (StripWorth strip : strips) strip.price(prices, most);
        sections.price();
        for (int i = 0; i < worth.length; i++) reckon(i);
    }

    /** Reckons board {@code i} alone. */
    void priceOnly(int i, long[] prices, int[] most) {
        for (StripWorth strip : strips) strip.price(prices, most);
        sections.price();
        reckon(i);
    }

    private void reckon(int i) {
        worth[i] = wood.boards[i].ripped ? ripped(i) : boards[i].best();
    }

    private long ripped(int i) {
        if (rippedWidth[i] < 0) return StripWorth.NONE;
        return strips[rippedWidth[i]].best(1, shapes[i].length) - shapes[i].trimming;
    }

    long worth(int i) {
        return worth[i];
    }

    Sketch sketch(int i) {
        List<Sketch.Section> cut = new ArrayList<>();
        if (wood.boards[i].ripped) {
            int[] blanks = strips[rippedWidth[i]].blanks(1, shapes[i].length).get(0);
            cut.add(new Sketch.Section(
                    wood.boards[i].to - wood.boards[i].from, List.of(strip(wood.boards[i].widthNear, blanks))));
        } else {
            for (int t : boards[i].bestSections()) cut.add(section(i, t));
        }
        return new Sketch(wood.boardKinds[i], worth[i], cut);
    }

    /** A layout of board {@code i} that gives just these blanks; {@link Oracle.Given} says what it is. */
    Oracle.Given holding(int i, int[] made) {
        BoardNumbers board = wood.boards[i];
        for (int k = 0; k < made.length; k++)
            if (made[k] > 0 && !takes(k)) return new Oracle.Given(Optional.empty(), true);
        Holding holding = new Holding(wood, shapes[i], made);
        Optional<List<Sketch.Section>> found = holding.find();
        boolean sure = !holding.gaveUp() && !board.ripped && shapes[i].alike();
        return new Oracle.Given(found.map(sections -> new Sketch(wood.boardKinds[i], 0, sections)), sure);
    }

    private boolean takes(int partKind) {
        return Arrays.stream(wood.partKinds).flatMapToInt(Arrays::stream).anyMatch(k -> k == partKind);
    }

    private Sketch.Section section(int i, int t) {
        int[] many = sections.strips(i, t);
        List<Sketch.Strip> cut = new ArrayList<>();
        for (int v = 0; v < many.length; v++) {
            if (many[v] == 0) continue;
            long width = wood.numbers.widths[wood.widths[v]];
            for (int[] blanks : strips[v].blanks(many[v], t)) cut.add(strip(width, blanks));
        }
        return new Sketch.Section(t * wood.lengthTick - wood.numbers.crosscutKerf, cut);
    }

    private static Sketch.Strip strip(long width, int[] blanks) {
        return new Sketch.Strip(width, Arrays.stream(blanks).boxed().toList());
    }
}
