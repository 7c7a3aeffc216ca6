package ripwright.internal.pricing;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import ripwright.internal.model.BoardNumbers;
import ripwright.internal.model.ItemTypes;
import ripwright.internal.model.ScaledLabor;
import ripwright.internal.model.ScaledMoney;

/** What the best layout of every board of one wood is worth at given prices. */
public final class BoardClassPricing {
    private final BoardClass wood;
    private final ItemTypes types;
    private final ScaledLabor charges;
    private final BooleanSupplier abort;
    private final SectionTables source;
    private final BoardPricing[] boards; // of those that are not ripped
    private final int[] rippedWidth; // rippedWidth[i]: the width's place in wood.widths; -1: none, or not ripped
    private final BoardProfile[] shapes;
    private final long[] worth;
    private final @Nullable Pattern[] patterns; // where one was made already
    private SectionTables[] sources = {}; // for layouts within the bill, once one is asked for
    private SectionCandidates[] taken = {};

    BoardClassPricing(BoardClass wood, ItemTypes types, ScaledMoney money, ScaledLabor charges, BooleanSupplier abort) {
        this.wood = wood;
        this.types = types;
        this.charges = charges;
        this.abort = abort;
        int n = wood.boards.length;
        shapes = new BoardProfile[n];
        for (int i = 0; i < n; i++) shapes[i] = new BoardProfile(wood, wood.boards[i], charges, money);
        source = new SectionTables(wood, types, charges, shapes, abort);
        boards = new BoardPricing[n];
        rippedWidth = new int[n];
        worth = new long[n];
        patterns = new @Nullable Pattern[n];
        SectionCandidates shared = new SectionCandidates(wood, source.sections(), shapes[0]);
        int[] byLoss = new int[wood.length + 1];
        for (int i = 0; i < n; i++) {
            boards[i] = new BoardPricing(wood, source.sections(), i, shapes[i], shared, byLoss);
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
        patterns[i] = null;
        worth[i] = wood.boards[i].ripped ? ripped(i) : boards[i].best();
    }

    /** Reckons board {@code i} again, if its sections have more of a blank together than is wanted. */
    void sharpen(int i, long[] prices, int[] most, int mostSteps, long enough, BooleanSupplier stop) {
        if (worth[i] <= enough || wood.boards[i].ripped) return;
        int[] made = pattern(i).made(most.length);
        if (IntStream.range(0, made.length).allMatch(k -> made[k] <= most[k])) return;
        if (sources.length == 0) {
            sources = new SectionTables[3];
            taken = new SectionCandidates[3];
            for (int s = 0; s < 3; s++) {
                sources[s] = new SectionTables(wood, types, charges, shapes, abort);
                taken[s] = new SectionCandidates(wood, sources[s].sections(), shapes[i]);
            }
        }
        for (SectionTables each : sources) each.sections().only(i);
        Pattern best =
                new BoundedPricing(wood, i, shapes[i], sources, taken, prices, most).best(mostSteps, enough, stop);
        worth[i] = best.worth();
        patterns[i] = best;
    }

    private long ripped(int i) {
        if (rippedWidth[i] < 0) return StripPricing.NONE;
        return source.strip(rippedWidth[i], shapes[i].length) - shapes[i].trimming;
    }

    long worth(int i) {
        return worth[i];
    }

    Pattern pattern(int i) {
        Pattern known = patterns[i];
        if (known == null) {
            known = new Pattern(wood.boardTypes[i], worth[i], sections(i));
            patterns[i] = known;
        }
        return known;
    }

    private List<Pattern.Section> sections(int i) {
        BoardNumbers board = wood.boards[i];
        if (!board.ripped)
            return Arrays.stream(boards[i].bestSections())
                    .mapToObj(t -> source.section(i, t))
                    .toList();
        List<Integer> blanks = Arrays.stream(source.blanks(rippedWidth[i], shapes[i].length))
                .boxed()
                .toList();
        return List.of(new Pattern.Section(board.to - board.from, List.of(new Pattern.Strip(board.widthNear, blanks))));
    }

    /** A layout of board {@code i} that gives just these blanks; {@link PricingProblem.Given} says what it is. */
    PricingProblem.Given holding(int i, int[] made) {
        BoardNumbers board = wood.boards[i];
        for (int k = 0; k < made.length; k++)
            if (made[k] > 0 && !takes(k)) return new PricingProblem.Given(Optional.empty(), true);
        LayoutFeasibility holding = new LayoutFeasibility(wood, shapes[i], made, abort);
        Optional<List<Pattern.Section>> found = holding.find();
        boolean sure = !holding.gaveUp() && !board.ripped && shapes[i].alike();
        return new PricingProblem.Given(found.map(sections -> new Pattern(wood.boardTypes[i], 0, sections)), sure);
    }

    private boolean takes(int partType) {
        return Arrays.stream(wood.partTypes).flatMapToInt(Arrays::stream).anyMatch(k -> k == partType);
    }
}
