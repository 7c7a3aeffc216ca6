package ripwright.testing;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import ripwright.internal.geometry.Layout;
import ripwright.internal.geometry.Layout.Blank;
import ripwright.internal.geometry.Layout.Section;
import ripwright.internal.geometry.Layout.Strip;
import ripwright.job.Job;
import ripwright.measure.BoardFeet;
import ripwright.measure.Length;
import ripwright.measure.Money;
import ripwright.stock.Board;
import ripwright.stock.Edge;

/**
 * The slow twin of {@link CpSatOptimum}: cuts every board of a toy-sized job in every way there is on a coarse grid, empty
 * strips and larger edge losses included, lets {@link LayoutCheck} judge each section and {@link LayoutCost} price each board.
 */
final class EveryLayout {
    private static final int MOST_SECTIONS = 3;

    private final Job job;
    private final List<Board> boards;
    private final long tick; // nanometers
    private final Function<LayoutCost, Money> price;
    private final Map<Ends, Layout> found = new HashMap<>(); // sections of the board at hand, each a layout of its own

    /** What matters of one board's layout to the others: what it makes and at which settings. */
    private record Kind(List<Integer> made, Set<Long> widths) {}

    /** Where a layout of some kind starts, where that matters, and where it ends. */
    private record Ends(Kind kind, long from, long to) {}

    EveryLayout(Job job, Length tick, Function<LayoutCost, Money> price) {
        this.job = job;
        this.boards = job.boards();
        this.tick = tick.nanometers();
        this.price = price;
    }

    /** The best of all ways. */
    Optimum best() {
        List<List<Layout>> ways = new ArrayList<>(List.of(List.of()));
        for (int b = 0; b < boards.size(); b++) {
            List<Layout> layouts = new ArrayList<>(cheapest(b).values());
            List<List<Layout>> more = new ArrayList<>(ways);
            for (List<Layout> way : ways) for (Layout layout : layouts) more.add(with(way, layout));
            ways = more;
        }
        return ways.stream()
                .filter(way -> new LayoutCheck(job, way).faults().isEmpty())
                .map(this::judged)
                .min(Comparator.comparing(Optimum::made).reversed().thenComparing(Optimum::cost))
                .orElseThrow();
    }

    private Optimum judged(List<Layout> way) {
        LayoutCheck check = new LayoutCheck(job, way);
        BoardFeet feet = BoardFeet.ZERO;
        for (int part = 0; part < job.parts().size(); part++)
            feet = feet.plus(job.parts().get(part).boardFeet().times(check.made()[part]));
        return new Optimum(check.complete(), price.apply(new LayoutCost(job, way)), feet, way);
    }

    private static <T> List<T> with(List<T> list, T one) {
        List<T> longer = new ArrayList<>(list);
        longer.add(one);
        return longer;
    }

    /**
     * The cheapest layout of a board of every kind. Of sections, and of layouts up to some section, that are of one kind and end
     * at the same places the cheapest is enough: whatever follows costs the same behind either.
     */
    private Map<Kind, Layout> cheapest(int b) {
        sections(b);
        Map<Kind, Layout> best = new HashMap<>();
        Collection<Layout> growing = found.values();
        for (int count = 1; count <= MOST_SECTIONS; count++) {
            Map<Ends, Layout> longer = new HashMap<>();
            for (Layout layout : growing) {
                best.merge(kind(layout), layout, this::cheaper);
                long next = layout.sections().get(count - 1).to()
                        + job.saw().crosscutKerf().nanometers();
                for (Layout last : found.values()) {
                    Section section = last.sections().get(0);
                    if (section.from() < next || count == MOST_SECTIONS) continue;
                    Layout grown = new Layout(b, with(layout.sections(), section));
                    if (new LayoutCheck(job, List.of(grown)).faults().isEmpty())
                        longer.merge(new Ends(kind(grown), 0, section.to()), grown, this::cheaper);
                }
            }
            growing = longer.values();
        }
        return best;
    }

    private Layout cheaper(Layout one, Layout other) {
        Money first = price.apply(new LayoutCost(job, List.of(one)));
        return first.compareTo(price.apply(new LayoutCost(job, List.of(other)))) <= 0 ? one : other;
    }

    private Kind kind(Layout layout) {
        Set<Long> widths = new TreeSet<>();
        if (!boards.get(layout.board()).ripped())
            for (Section section : layout.sections()) for (Strip strip : section.strips()) widths.add(strip.width());
        int[] made = new LayoutCheck(job, List.of(layout)).made();
        return new Kind(Arrays.stream(made).boxed().toList(), widths);
    }

    private void sections(int b) {
        found.clear();
        Board board = boards.get(b);
        long length = board.length().nanometers();
        long width = board.width().max(board.widthAtFarEnd()).nanometers();
        for (long from = 0; from < length; from += tick)
            for (long to = from + tick; to <= length; to += tick)
                for (Edge edge : Edge.values())
                    for (long loss = 0; loss < width; loss += tick) {
                        Section empty = new Section(from, to, edge, loss, List.of(new Strip(tick, List.of())));
                        if (!hopeless(b, empty)) strips(b, new Section(from, to, edge, loss, List.of()), width);
                    }
    }

    /** Whether even one narrow empty strip has no place there. */
    private boolean hopeless(int b, Section section) {
        return new LayoutCheck(job, List.of(new Layout(b, List.of(section))))
                .faults().stream().anyMatch(fault -> !fault.contains("too narrow") && !fault.contains("full width"));
    }

    /** Adds one strip more, in every way, and keeps each section that could be cut and makes something. */
    private void strips(int b, Section section, long widest) {
        for (long width = tick; width <= widest; width += tick)
            for (List<Blank> blanks : fillings(section, width, section.from())) {
                Section longer = new Section(
                        section.from(),
                        section.to(),
                        section.referenceEdge(),
                        section.edgeLoss(),
                        with(section.strips(), new Strip(width, blanks)));
                Layout alone = new Layout(b, List.of(longer));
                if (!new LayoutCheck(job, List.of(alone)).faults().isEmpty()) continue;
                if (Arrays.stream(new LayoutCheck(job, List.of(alone)).made()).sum() > 0)
                    found.merge(new Ends(kind(alone), section.from(), section.to()), alone, this::cheaper);
                strips(b, longer, width);
            }
    }

    /** Every way to lay blanks into a strip from some place on. */
    private List<List<Blank>> fillings(Section section, long width, long from) {
        List<List<Blank>> fillings = new ArrayList<>(List.of(List.of()));
        for (int part = 0; part < job.parts().size(); part++) {
            if (job.parts().get(part).blankWidth().nanometers() != width) continue;
            long length = job.parts().get(part).blankLength().nanometers();
            for (long x = from; x + length <= section.to(); x += tick) {
                Blank blank = new Blank(part, x);
                long next = x + length + job.saw().crosscutKerf().nanometers();
                for (List<Blank> rest : fillings(section, width, next)) {
                    List<Blank> filling = new ArrayList<>(List.of(blank));
                    filling.addAll(rest);
                    fillings.add(filling);
                }
            }
        }
        return fillings;
    }
}
