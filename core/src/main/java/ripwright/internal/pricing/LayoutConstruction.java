package ripwright.internal.pricing;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import ripwright.internal.geometry.Layout;
import ripwright.internal.model.BoardNumbers;
import ripwright.internal.model.ClearWood;
import ripwright.internal.model.ItemTypes;
import ripwright.internal.model.JobNumbers;
import ripwright.internal.model.LayoutPrice;
import ripwright.internal.model.PartNumbers;
import ripwright.internal.model.PricedLayout;
import ripwright.stock.Edge;

/**
 * Makes a layout of real blanks from a pattern. Blanks there are none left of are left out, and where a strip loses some
 * that way it is filled again with what there still is, the dearest filling first. Sections are cut as short as their
 * blanks allow, or as the pattern has them where that fetches more. No layout comes of it where a defect is in the way.
 */
public final class LayoutConstruction {
    private final JobNumbers numbers;
    private final ItemTypes types;
    private final BoardNumbers board;
    private final long[] prices; // of part types; any unit
    private final int[] left; // left[p]: of part p
    private final List<Filled> sections = new ArrayList<>();

    /** A section and the parts in its strips. */
    private record Filled(long length, List<Row> rows) {
        long content(JobNumbers numbers) {
            return rows.stream().mapToLong(row -> row.length(numbers)).max().orElse(0);
        }
    }

    /** A strip and its parts. */
    private record Row(long width, List<Integer> parts) {
        long length(JobNumbers numbers) {
            long sum = -numbers.crosscutKerf;
            for (int part : parts) sum += numbers.parts[part].length + numbers.crosscutKerf;
            return Math.max(0, sum);
        }
    }

    private LayoutConstruction(JobNumbers numbers, ItemTypes types, int board, long[] prices, int[] most) {
        this.numbers = numbers;
        this.types = types;
        this.board = numbers.boards[board];
        this.prices = prices;
        left = most.clone();
        for (PartNumbers part : numbers.parts) if (!part.fits[board]) left[part.index] = 0;
    }

    /** The layout of that board; empty where none comes of the pattern. */
    static Optional<PricedLayout> of(
            JobNumbers numbers, ItemTypes types, int board, Pattern pattern, long[] prices, int[] most) {
        int[] allowed = most.clone();
        while (true) {
            LayoutConstruction placing = new LayoutConstruction(numbers, types, board, prices, allowed);
            for (Pattern.Section section : pattern.sections()) placing.fill(section);
            Optional<PricedLayout> best = placing.best();
            if (best.isEmpty() || !placing.barTorn(best.get().made(), allowed)) return best;
        }
    }

    /** Takes parts of together groups out of {@code allowed} that are made in part; whether there were any. */
    private boolean barTorn(int[] made, int[] allowed) {
        int[] missing = new int[numbers.groups];
        for (PartNumbers part : numbers.parts) if (part.group >= 0) missing[part.group] += part.count;
        boolean[] begun = new boolean[numbers.groups];
        for (int p : made) {
            int group = numbers.parts[p].group;
            if (group < 0) continue;
            missing[group]--;
            begun[group] = true;
        }
        boolean torn = false;
        for (PartNumbers part : numbers.parts) {
            if (part.group < 0 || !begun[part.group] || missing[part.group] == 0) continue;
            allowed[part.index] = 0;
            torn = true;
        }
        return torn;
    }

    private void fill(Pattern.Section section) {
        List<Row> rows = new ArrayList<>();
        for (Pattern.Strip strip : section.strips()) {
            List<Integer> parts = take(strip.partTypes(), section.length());
            if (parts.size() < strip.partTypes().size()) {
                for (int part : parts) left[part]++;
                parts = new StripRefill(numbers, types, prices, left).fill(strip.width(), section.length());
                for (int part : parts) left[part]--;
            }
            if (parts.isEmpty()) continue;
            parts.sort(Comparator.comparing((Integer p) -> -numbers.parts[p].length)
                    .thenComparing(p -> p));
            rows.add(new Row(strip.width(), parts));
        }
        rows.sort(Comparator.comparing(row -> -row.width()));
        if (!rows.isEmpty()) sections.add(new Filled(section.length(), rows));
    }

    /** Takes blanks of those types as long as there are some, and as they fit. */
    private List<Integer> take(List<Integer> wanted, long room) {
        List<Integer> parts = new ArrayList<>();
        long used = -numbers.crosscutKerf;
        for (int type : wanted) {
            for (int part : types.partsOf(type)) {
                if (left[part] == 0) continue;
                used += numbers.parts[part].length + numbers.crosscutKerf;
                if (used > room + (board.ripped ? 0 : numbers.crosscutKerf)) return parts;
                left[part]--;
                parts.add(part);
                break;
            }
        }
        return parts;
    }

    private Optional<PricedLayout> best() {
        if (sections.isEmpty()) return Optional.empty();
        if (board.ripped) return placed(List.of(board.to - board.from));
        List<Long> shortest = sections.stream()
                .map(section -> Math.max(section.content(numbers), numbers.shortestRip))
                .toList();
        List<Long> sketched = new ArrayList<>();
        for (int i = 0; i < shortest.size(); i++)
            sketched.add(Math.max(
                    shortest.get(i),
                    Math.min(numbers.longestRip, sections.get(i).length())));
        Optional<PricedLayout> a = placed(shortest);
        Optional<PricedLayout> b = sketched.equals(shortest) ? a : placed(sketched);
        Optional<PricedLayout> c = placed(toTheEnd(shortest));
        return Collections.<Optional<PricedLayout>>max(
                List.of(a, b, c),
                Comparator.comparing(l -> l.map(layout -> -layout.net()).orElse(Long.MIN_VALUE)));
    }

    /** Those lengths, the last drawn out to the end of the board. */
    private List<Long> toTheEnd(List<Long> lengths) {
        List<Long> all = new ArrayList<>(lengths);
        int last = all.size() - 1;
        long before = 0;
        for (int i = 0; i < last; i++) before += lengths.get(i) + numbers.crosscutKerf;
        long rest = board.to - board.from - before;
        all.set(last, Math.max(lengths.get(last), Math.min(numbers.longestRip, rest)));
        return all;
    }

    private Optional<PricedLayout> placed(List<Long> lengths) {
        boolean fromFar = board.widthFar > board.widthNear;
        long x = board.from;
        List<Layout.Section> cut = new ArrayList<>();
        for (int i = 0; i < lengths.size(); i++) {
            long end = x + lengths.get(i);
            if (end > board.to || lengths.get(i) > numbers.longestRip) return Optional.empty();
            long from = fromFar ? board.to - (end - board.from) : x;
            Layout.Section section = section(sections.get(i), from, from + lengths.get(i));
            if (!fits(section)) return Optional.empty();
            cut.add(section);
            x = end + numbers.crosscutKerf;
        }
        if (fromFar) Collections.reverse(cut);
        return Optional.of(LayoutPrice.of(numbers, new Layout(board.index, cut)));
    }

    private Layout.Section section(Filled filled, long from, long to) {
        List<Layout.Strip> strips = new ArrayList<>();
        for (Row row : filled.rows) {
            List<Layout.Blank> blanks = new ArrayList<>();
            long x = from;
            for (int part : row.parts) {
                blanks.add(new Layout.Blank(part, x));
                x += numbers.parts[part].length + numbers.crosscutKerf;
            }
            strips.add(new Layout.Strip(row.width, blanks));
        }
        long loss = board.ripped ? 0 : board.referenceLoss(true, to - from);
        return new Layout.Section(from, to, Edge.LEFT, loss, strips);
    }

    private boolean fits(Layout.Section section) {
        if (section.to() - section.from() < numbers.shortestRip && !board.ripped) return false;
        ClearWood wood = new ClearWood(board, section.from(), section.to(), true);
        long y = section.edgeLoss();
        for (Layout.Strip strip : section.strips()) {
            if (!clear(wood.view(y, strip.width()), strip)) return false;
            y += strip.width() + numbers.ripKerf;
        }
        long usable = board.sectionWidth(section.from(), section.to()) - board.otherLoss(true);
        return y - numbers.ripKerf <= usable;
    }

    private boolean clear(ClearWood.View view, Layout.Strip strip) {
        for (Layout.Blank blank : strip.blanks()) {
            PartNumbers part = numbers.parts[blank.part()];
            List<ClearWood.Interval> clear = part.show ? view.forShow() : view.forHidden();
            long end = blank.from() + part.length;
            if (clear.stream().noneMatch(wood -> wood.start() <= blank.from() && end <= wood.end())) return false;
        }
        return true;
    }
}
