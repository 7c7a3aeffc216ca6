package ripwright.internal.recreate;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.random.RandomGenerator;
import org.jspecify.annotations.Nullable;
import ripwright.internal.geometry.Layout;
import ripwright.internal.model.BoardNumbers;
import ripwright.internal.model.JobNumbers;
import ripwright.internal.model.LayoutPrice;
import ripwright.internal.model.PartNumbers;
import ripwright.internal.model.PricedLayout;
import ripwright.stock.Edge;

/**
 * Cuts one board from a pool of blanks: one to three sections at lengths drawn by {@link SectionLengths}, each filled by
 * {@link SectionFill}. A good layout, not the best: chance makes the next one differ. Serves one thread.
 */
public final class BoardRecreate {
    private static final int MOST_SECTIONS = 3;
    private static final int TORN_GROUPS_REFUSED = 11; // for each that is let pass, where no board makes it whole

    private final JobNumbers numbers;
    private final SectionFill sectionFill;
    private final SectionLengths lengths;
    private final boolean moneyBeyondStock; // whether anything but the boards bought costs or fetches money

    BoardRecreate(JobNumbers numbers) {
        this.numbers = numbers;
        sectionFill = new SectionFill(numbers);
        lengths = new SectionLengths(numbers, sectionFill.lengths());
        moneyBeyondStock = numbers.ripCost > 0
                || numbers.crosscutCost > 0
                || Arrays.stream(numbers.boards).anyMatch(board -> board.salvageRate > 0);
    }

    /** A layout of the board, its blanks taken out of the pool; null where nothing of it can be cut. */
    @Nullable
    PricedLayout cut(int board, BlankPool pool, RandomGenerator random) {
        System.arraycopy(pool.closed, 0, pool.barred, 0, pool.closed.length);
        while (true) {
            List<Layout.Section> sections = sections(numbers.boards[board], pool, random);
            if (sections.isEmpty()) return null;
            PricedLayout priced = trimmed(new Layout(board, sections));
            int torn = tornGroup(priced.made());
            if (torn < 0 || random.nextInt(TORN_GROUPS_REFUSED + 1) == 0) {
                for (int part : priced.made()) {
                    pool.left[part]--;
                    if (numbers.parts[part].group >= 0) pool.closed[numbers.parts[part].group] = true;
                }
                return priced;
            }
            pool.barred[torn] = true;
        }
    }

    /** A together group that the layout makes some but not all of, or -1. */
    private int tornGroup(int[] made) {
        if (numbers.groups == 0) return -1;
        int[] missing = new int[numbers.groups];
        boolean[] begun = new boolean[numbers.groups];
        for (PartNumbers part : numbers.parts) if (part.group >= 0) missing[part.group] += part.count;
        for (int index : made) {
            int group = numbers.parts[index].group;
            if (group < 0) continue;
            begun[group] = true;
            missing[group]--;
        }
        for (int g = 0; g < numbers.groups; g++) if (begun[g] && missing[g] > 0) return g;
        return -1;
    }

    private List<Layout.Section> sections(BoardNumbers board, BlankPool pool, RandomGenerator random) {
        if (board.span() <= 0) return List.of();
        if (board.ripped) return ripped(board, pool, random);
        BlankPool rest = pool.copy();
        boolean fromFar = (board.tapered() || board.defects.length > 0) && random.nextBoolean();
        int mostSections = sectionCount(board, random);
        List<Layout.Section> sections = new ArrayList<>();
        long near = board.begin;
        long far = board.end;
        if (board.defects.length > 0 && random.nextInt(6) == 0) {
            long[] defect = board.defects[random.nextInt(board.defects.length)];
            if (fromFar) far = Math.min(far, board.sectionTo(defect[0]));
            else near = Math.max(near, board.sectionFrom(defect[1]));
        }
        while (sections.size() < mostSections && far - near >= Math.max(1, numbers.shortestRip)) {
            long room = board.spanTo(far) - board.spanFrom(near);
            if (room <= 0) break;
            long most = Math.min(room, numbers.longestRip - ends(board, near, far, fromFar));
            long length = sectionLength(board, room, most, mostSections - sections.size(), rest, random);
            if (length <= 0) break;
            long from = fromFar ? sectionFrom(board, board.spanTo(far) - length, near) : near;
            long to = fromFar ? far : sectionTo(board, board.spanFrom(near) + length, far);
            SectionFill.Filled filled = sectionFill.fill(board, from, to, leftEdge(board, random), rest, random);
            if (filled == null) break;
            for (Layout.Strip strip : filled.section().strips())
                for (Layout.Blank blank : strip.blanks()) rest.left[blank.part()]--;
            boolean more = sections.size() + 1 < mostSections;
            Layout.Section section = more ? shrunk(board, filled.section(), !fromFar, fromFar) : filled.section();
            sections.add(section);
            if (fromFar) far = board.endUpTo(section.from() - numbers.crosscutKerf);
            else near = section.to() + numbers.crosscutKerf;
        }
        if (fromFar) Collections.reverse(sections);
        return sections;
    }

    /** How much longer a section may come out than the span of its blanks. */
    private long ends(BoardNumbers board, long near, long far, boolean fromFar) {
        if (numbers.over == 0) return 0;
        long kept = fromFar ? far - board.spanTo(far) : board.spanFrom(near) - near;
        long raw = fromFar ? board.from : board.end - board.to;
        return kept + numbers.over + numbers.reading + raw;
    }

    /** Where a section begins whose first blank begins there; not before {@code near}. */
    private static long sectionFrom(BoardNumbers board, long span, long near) {
        return Math.max(near, board.sectionFrom(span));
    }

    private static long sectionTo(BoardNumbers board, long span, long far) {
        return Math.min(far, board.sectionTo(span));
    }

    private List<Layout.Section> ripped(BoardNumbers board, BlankPool pool, RandomGenerator random) {
        SectionFill.Filled filled = sectionFill.fill(board, board.begin, board.end, true, pool, random);
        return filled == null ? List.of() : List.of(filled.section());
    }

    private int sectionCount(BoardNumbers board, RandomGenerator random) {
        int most = 1;
        double another = board.crook > 0 || board.tapered() || board.defects.length > 0 ? 0.6 : 0.4;
        while (most < MOST_SECTIONS && random.nextDouble() < another) most++;
        long room = board.end - board.begin;
        for (int needed = 1; needed < MOST_SECTIONS; needed++)
            if (needed * numbers.longestRip < room && numbers.longestRip < room) most = Math.max(most, needed + 1);
        return most;
    }

    private boolean leftEdge(BoardNumbers board, RandomGenerator random) {
        if (board.tapered() || board.defects.length == 0) return true;
        return board.leftStraight == board.rightStraight ? random.nextBoolean() : random.nextInt(8) > 0;
    }

    /** All that is left, or the sum of a few blanks that may be cut from this board. */
    private long sectionLength(
            BoardNumbers board, long room, long most, int sectionsLeft, BlankPool pool, RandomGenerator random) {
        boolean whole = (sectionsLeft == 1 && (most == room || random.nextInt(3) > 0)) || random.nextInt(12) == 0;
        if (whole) return most;
        return lengths.draw(board, room, most, pool, random);
    }

    /** The layout with those sections cut shorter that fetch more so. */
    private PricedLayout trimmed(Layout layout) {
        PricedLayout best = LayoutPrice.of(numbers, layout);
        BoardNumbers board = numbers.boards[layout.board()];
        if (!moneyBeyondStock || board.ripped) return best;
        for (int i = 0; i < layout.sections().size(); i++) {
            for (int ends = 1; ends < 4; ends++) {
                List<Layout.Section> sections = new ArrayList<>(best.layout().sections());
                boolean atFar = (ends & 1) != 0;
                if (atFar && sharesCut(sections, i)) continue;
                Layout.Section shorter = shrunk(board, sections.get(i), atFar, (ends & 2) != 0);
                if (shorter.equals(sections.get(i))) continue;
                sections.set(i, shorter);
                PricedLayout other = LayoutPrice.of(numbers, new Layout(layout.board(), sections));
                if (other.net() < best.net()) best = other;
            }
        }
        return best;
    }

    /** Whether the next section begins where this one ends, at no reading of its own. */
    private boolean sharesCut(List<Layout.Section> sections, int i) {
        return numbers.over > 0
                && i + 1 < sections.size()
                && sections.get(i + 1).from() - sections.get(i).to() == numbers.crosscutKerf;
    }

    /** The section cut off where its strips have no blanks any more, as far as it may be ripped that short. */
    private Layout.Section shrunk(BoardNumbers board, Layout.Section section, boolean atFar, boolean atNear) {
        long first = section.to();
        long last = section.from();
        for (Layout.Strip strip : section.strips()) {
            for (Layout.Blank blank : strip.blanks()) {
                first = Math.min(first, blank.from());
                last = Math.max(last, blank.from() + numbers.parts[blank.part()].length);
            }
        }
        long from = atNear ? sectionFrom(board, first, section.from()) : section.from();
        long to = atFar ? sectionTo(board, last, section.to()) : section.to();
        if (to - from < numbers.shortestRip) {
            if (!atFar) from = Math.max(section.from(), board.beginUpTo(to - numbers.shortestRip));
            else to = Math.min(section.to(), board.endFrom(from + numbers.shortestRip));
        }
        if (to - from < numbers.shortestRip) from = Math.max(section.from(), board.beginUpTo(to - numbers.shortestRip));
        boolean left = section.referenceEdge() == Edge.LEFT;
        long least = board.referenceLoss(left, section.to() - section.from());
        boolean asLittleAsItMay = section.edgeLoss() == least && board.defects.length == 0;
        long loss = asLittleAsItMay ? board.referenceLoss(left, to - from) : section.edgeLoss();
        return new Layout.Section(from, to, section.referenceEdge(), loss, section.strips());
    }
}
