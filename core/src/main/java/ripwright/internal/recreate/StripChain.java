package ripwright.internal.recreate;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;
import ripwright.internal.knapsack.StripFill;
import ripwright.internal.knapsack.TickGrid;
import ripwright.internal.model.ClearWood;
import ripwright.internal.model.JobNumbers;
import ripwright.internal.model.PartNumbers;

/**
 * Strips of one width filled one after another from the same blanks. A link is one strip; what follows it depends on the
 * view of the next strip. Links are made when first asked for and kept, as many places across a board see the same.
 */
public final class StripChain {
    /** One strip, filled after those before it. */
    final class Link {
        final @Nullable Link before;
        final double worth; // of this strip's blanks and of those before it
        final int[] blanks; // places in part
        final long[] starts; // where each begins, nanometers from the board's marked end
        private final boolean[] used; // used[i]: blank i is in this strip or in one before
        private @Nullable Link[] next = new @Nullable Link[2];

        private Link(@Nullable Link before, boolean[] used, int[] blanks, long[] starts) {
            this.before = before;
            this.used = used;
            this.blanks = blanks;
            this.starts = starts;
            double sum = before == null ? 0 : before.worth;
            for (int blank : blanks) sum += worthOf[part[blank]];
            worth = sum;
        }

        /** The next strip, where it lies at {@code view}. */
        Link next(ClearWood.View view) {
            if (view.number() >= next.length) next = Arrays.copyOf(next, Math.max(view.number() + 1, 2 * next.length));
            Link link = next[view.number()];
            if (link == null) {
                link = fill(this, view);
                next[view.number()] = link;
            }
            return link;
        }

        /** The part of the {@code i}-th blank. */
        int part(int i) {
            return part[blanks[i]];
        }
    }

    private static final int MOST_ROUNDED = 6; // blanks whose rounding up is made good, so that filling stays quick

    private final JobNumbers numbers;
    private final TickGrid grid;
    private final StripFill stripFill;
    private final double[] worthOf; // worthOf[p]: of one blank of part p
    private final int[] part; // part[i]: of blank i; those to be used first stand first
    private final int[] ticks; // ticks[i]: of blank i, a kerf included
    private final int[] places; // scratch: which blanks are offered
    private final int[] sizes; // scratch: their ticks
    private final Link root;

    StripChain(JobNumbers numbers, TickGrid grid, StripFill stripFill, double[] worthOf, int[] part) {
        this.numbers = numbers;
        this.grid = grid;
        this.stripFill = stripFill;
        this.worthOf = worthOf;
        this.part = part;
        ticks = new int[part.length];
        for (int i = 0; i < part.length; i++) ticks[i] = grid.of(numbers.parts[part[i]].length + numbers.crosscutKerf);
        places = new int[part.length];
        sizes = new int[part.length];
        root = new Link(null, new boolean[part.length], new int[0], new long[0]);
    }

    /** No strip yet. */
    Link root() {
        return root;
    }

    private Link fill(Link before, ClearWood.View view) {
        Filling filling = new Filling(before.used.clone());
        if (view.alike()) fillAll(filling, view.forShow());
        else fillShowFirst(filling, view);
        return filling.link(before);
    }

    private void fillAll(Filling filling, List<ClearWood.Interval> intervals) {
        for (int i = intervals.size() - 1; i >= 0; i--)
            filling.add(intervals.get(i).start(), intervals.get(i).end(), true, i == intervals.size() - 1);
    }

    /** Show parts go where nothing blocks them; hidden ones then fill what is left between, sound defects and all. */
    private void fillShowFirst(Filling filling, ClearWood.View view) {
        ClearWood.Interval last = view.forHidden().isEmpty()
                ? null
                : view.forHidden().get(view.forHidden().size() - 1);
        for (ClearWood.Interval hidden : view.forHidden()) {
            long x = hidden.start();
            for (ClearWood.Interval show : view.forShow()) {
                if (show.start() < hidden.start() || show.end() > hidden.end()) continue;
                long start = Math.max(show.start(), x);
                if (start >= show.end()) continue;
                ClearWood.Interval span = filling.addShow(start, show.end(), show.end() == hidden.end());
                if (span.start() == span.end()) continue;
                filling.add(x, span.start() - numbers.crosscutKerf, false, false);
                x = span.end() + numbers.crosscutKerf;
            }
            filling.add(x, hidden.end(), false, hidden.equals(last));
        }
    }

    /** The blanks put into one strip so far. */
    private final class Filling {
        private final boolean[] used;
        private final List<long[]> placed = new ArrayList<>(); // {blank, start}

        Filling(boolean[] used) {
            this.used = used;
        }

        /** Fills an interval from its start; blanks too short for the crosscut limit only where nothing comes after. */
        void add(long start, long end, boolean showToo, boolean last) {
            if (end <= start) return;
            int offered = 0;
            for (int i = 0; i < part.length; i++) {
                PartNumbers candidate = numbers.parts[part[i]];
                if (used[i] || (candidate.show && !showToo)) continue;
                if (!last && candidate.length < numbers.shortestCrosscut) continue;
                offered = offer(i, offered, end - start);
            }
            place(offered, start, end);
        }

        /** Fills an interval with show parts alone, from its end when {@code atEnd}; the span they cover. */
        ClearWood.Interval addShow(long start, long end, boolean atEnd) {
            int offered = 0;
            for (int i = 0; i < part.length; i++) {
                PartNumbers candidate = numbers.parts[part[i]];
                if (used[i] || !candidate.show || candidate.length < numbers.shortestCrosscut) continue;
                offered = offer(i, offered, end - start);
            }
            int first = placed.size();
            long stop = place(offered, start, end);
            if (!atEnd || placed.size() == first) return new ClearWood.Interval(start, stop);
            for (int i = first; i < placed.size(); i++) placed.get(i)[1] += end - stop;
            return new ClearWood.Interval(start + end - stop, end);
        }

        private int offer(int i, int offered, long room) {
            if (numbers.parts[part[i]].length > room) return offered;
            places[offered] = i;
            sizes[offered] = ticks[i];
            return offered + 1;
        }

        /** Places a fullest filling, longest blanks first; where its last blank ends, or {@code start}. */
        private long place(int offered, long start, long end) {
            int[] chosen = fullest(offered, end - start + numbers.crosscutKerf);
            sortLongestFirst(chosen);
            long x = start;
            for (int blank : chosen) {
                used[blank] = true;
                placed.add(new long[] {blank, x});
                x += numbers.parts[part[blank]].length + numbers.crosscutKerf;
            }
            return chosen.length == 0 ? start : x - numbers.crosscutKerf;
        }

        /**
         * Where ticks are coarse, a filling that just fits comes to up to one tick more than the room for each of its blanks:
         * the fullest that does is looked for from there down.
         */
        private int[] fullest(int offered, long room) {
            for (int ticks = grid.mostIn(room, mostBlanks(offered, room)); ; ) {
                int filled = stripFill.fill(sizes, offered, ticks);
                int[] chosen = new int[stripFill.chosenCount()];
                long length = 0;
                for (int i = 0; i < chosen.length; i++) {
                    chosen[i] = places[stripFill.chosen(i)];
                    length += numbers.parts[part[chosen[i]]].length + numbers.crosscutKerf;
                }
                if (length <= room) return chosen;
                ticks = filled - 1;
            }
        }

        private int mostBlanks(int offered, long room) {
            if (grid.even) return 0;
            long shortest = room;
            for (int i = 0; i < offered; i++)
                shortest = Math.min(shortest, numbers.parts[part[places[i]]].length + numbers.crosscutKerf);
            return (int) Math.min(Math.min(offered, MOST_ROUNDED), room / Math.max(1, shortest));
        }

        private void sortLongestFirst(int[] chosen) {
            for (int i = 1; i < chosen.length; i++) {
                int blank = chosen[i];
                int j = i - 1;
                for (; j >= 0 && longer(blank, chosen[j]); j--) chosen[j + 1] = chosen[j];
                chosen[j + 1] = blank;
            }
        }

        private boolean longer(int a, int b) {
            long difference = numbers.parts[part[a]].length - numbers.parts[part[b]].length;
            return difference > 0 || (difference == 0 && part[a] < part[b]);
        }

        Link link(Link before) {
            placed.sort((a, b) -> Long.compare(a[1], b[1]));
            int[] blanks = new int[placed.size()];
            long[] starts = new long[blanks.length];
            for (int i = 0; i < blanks.length; i++) {
                blanks[i] = (int) placed.get(i)[0];
                starts[i] = placed.get(i)[1];
            }
            return new Link(before, used, blanks, starts);
        }
    }
}
