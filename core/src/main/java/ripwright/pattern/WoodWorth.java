package ripwright.pattern;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/** What the best layout of every board of one wood is worth at given prices. */
final class WoodWorth {
    private final Wood wood;
    private final Kinds kinds;
    private final Charges charges;
    private final BooleanSupplier abort;
    private final SectionSource source;
    private final BoardWorth[] boards; // of those that are not ripped
    private final int[] rippedWidth; // rippedWidth[i]: the width's place in wood.widths; -1: none, or not ripped
    private final BoardShape[] shapes;
    private final long[] worth;
    private final @Nullable Sketch[] sketches; // where one was made already
    private SectionSource[] sources = {}; // for layouts within the bill, once one is asked for
    private Taken[] taken = {};

    WoodWorth(Wood wood, Kinds kinds, Coins coins, Charges charges, BooleanSupplier abort) {
        this.wood = wood;
        this.kinds = kinds;
        this.charges = charges;
        this.abort = abort;
        int n = wood.boards.length;
        shapes = new BoardShape[n];
        for (int i = 0; i < n; i++) shapes[i] = new BoardShape(wood, wood.boards[i], charges, coins);
        source = new SectionSource(wood, kinds, charges, shapes, abort);
        boards = new BoardWorth[n];
        rippedWidth = new int[n];
        worth = new long[n];
        sketches = new @Nullable Sketch[n];
        Taken shared = new Taken(wood, source.sections(), shapes[0]);
        int[] byLoss = new int[wood.length + 1];
        for (int i = 0; i < n; i++) {
            boards[i] = new BoardWorth(wood, source.sections(), i, shapes[i], shared, byLoss);
            rippedWidth[i] = -1;
            if (!wood.boards[i].ripped) continue;
            for (int v = 0; v < wood.widths.length; v++)
                if (wood.numbers.widths[wood.widths[v]] == wood.boards[i].widthNear) rippedWidth[i] = v;
        }
    }

    /** Reckons all boards. */
    void price(long[] prices, int[] most) {
        source.price(prices, most);
        for (int i = 0; i < worth.length; i++) reckon(i);
    }

    /** Reckons board {@code i} alone. */
    void priceOnly(int i, long[] prices, int[] most) {
        source.price(prices, most);
        reckon(i);
    }

    private void reckon(int i) {
        sketches[i] = null;
        worth[i] = wood.boards[i].ripped ? ripped(i) : boards[i].best();
    }

    /** Reckons board {@code i} again, if its sections have more of a blank together than is wanted. */
    void sharpen(int i, long[] prices, int[] most, int mostSteps, long enough, BooleanSupplier stop) {
        if (worth[i] <= enough || wood.boards[i].ripped) return;
        int[] made = sketch(i).made(most.length);
        if (IntStream.range(0, made.length).allMatch(k -> made[k] <= most[k])) return;
        if (sources.length == 0) {
            sources = new SectionSource[3];
            taken = new Taken[3];
            for (int s = 0; s < 3; s++) {
                sources[s] = new SectionSource(wood, kinds, charges, shapes, abort);
                taken[s] = new Taken(wood, sources[s].sections(), shapes[i]);
            }
        }
        for (SectionSource each : sources) each.sections().only(i);
        Sketch best = new WithinBill(wood, i, shapes[i], sources, taken, prices, most).best(mostSteps, enough, stop);
        worth[i] = best.worth();
        sketches[i] = best;
    }

    private long ripped(int i) {
        if (rippedWidth[i] < 0) return StripWorth.NONE;
        return source.strip(rippedWidth[i], shapes[i].length) - shapes[i].trimming;
    }

    long worth(int i) {
        return worth[i];
    }

    Sketch sketch(int i) {
        Sketch known = sketches[i];
        if (known == null) {
            known = new Sketch(wood.boardKinds[i], worth[i], sections(i));
            sketches[i] = known;
        }
        return known;
    }

    private List<Sketch.Section> sections(int i) {
        BoardNumbers board = wood.boards[i];
        if (!board.ripped)
            return Arrays.stream(boards[i].bestSections())
                    .mapToObj(t -> source.section(i, t))
                    .toList();
        List<Integer> blanks = Arrays.stream(source.blanks(rippedWidth[i], shapes[i].length))
                .boxed()
                .toList();
        return List.of(new Sketch.Section(board.to - board.from, List.of(new Sketch.Strip(board.widthNear, blanks))));
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
}
