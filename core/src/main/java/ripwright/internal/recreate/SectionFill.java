package ripwright.internal.recreate;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Deque;
import java.util.List;
import java.util.random.RandomGenerator;
import org.jspecify.annotations.Nullable;
import ripwright.internal.geometry.Layout;
import ripwright.internal.knapsack.StripFill;
import ripwright.internal.knapsack.TickGrid;
import ripwright.internal.model.BoardNumbers;
import ripwright.internal.model.ClearWood;
import ripwright.internal.model.JobNumbers;
import ripwright.internal.model.PartNumbers;
import ripwright.stock.Edge;

/**
 * Chooses the strips of one section: every width has the worth of its first, second, ... strip, each filled as full as it
 * goes from what those before it left; then a bounded knapsack over the section's width, every strip one rip kerf wider
 * and the section too. Where there are defects a strip's filling depends on where it lies across the board. Exact in the
 * choice of widths for these fillings; about widths x places x strips steps.
 *
 * <p>Keeps its tables for the next section, so it serves one thread.
 */
public final class SectionFill {
    private static final int MOST_BLANKS_OFFERED = 36;
    private static final int[] NO_PARTS = {};

    /** A section and what its blanks are worth. */
    record Filled(double worth, Layout.Section section) {}

    private final JobNumbers numbers;
    private final TickGrid lengths;
    private final TickGrid widths;
    private final StripFill stripFill = new StripFill();
    private double[] worth = {}; // worth[u]: of the best choice that uses u ticks of width; below 0: none does
    private long[] used = {}; // used[u]: nanometers from the straightened edge that choice really takes, kerfs included
    private long[] givenUp = {}; // givenUp[u]: edge loss beyond what must be, for a choice that begins at u
    private final int[][] cameFrom; // cameFrom[w][u]: ticks used before the strips of width w; -1: none of width w
    private final StripChain.Link[][] last; // last[w][u]: the last strip of width w

    SectionFill(JobNumbers numbers) {
        this.numbers = numbers;
        long longest = 1;
        long widest = 1;
        for (BoardNumbers board : numbers.boards) {
            longest = Math.max(longest, board.length + numbers.crosscutKerf);
            widest = Math.max(widest, Math.max(board.widthNear, board.widthFar) + numbers.ripKerf);
        }
        lengths = new TickGrid(
                Arrays.stream(numbers.parts)
                        .mapToLong(part -> part.length + numbers.crosscutKerf)
                        .toArray(),
                longest,
                1 << 15);
        widths = new TickGrid(
                Arrays.stream(numbers.widths)
                        .map(width -> width + numbers.ripKerf)
                        .toArray(),
                widest,
                1 << 12);
        cameFrom = new int[numbers.widths.length][];
        last = new StripChain.Link[numbers.widths.length][];
    }

    /** The ticks that lengths along a board are counted in. */
    TickGrid lengths() {
        return lengths;
    }

    /** The best filling of a section from the pool, or null where nothing of it fits; the pool stays as it is. */
    @Nullable
    Filled fill(BoardNumbers board, long from, long to, boolean left, BlankPool pool, RandomGenerator random) {
        long loss = board.referenceLoss(left, to - from);
        long usable = board.usableWidth(left, from, to);
        if (usable <= 0) return null;
        long span = board.spanTo(to) - board.spanFrom(from);
        ClearWood wood = new ClearWood(board, from, to, left);
        int room = widths.mostIn(usable + numbers.ripKerf, mostStrips(usable) + 1);
        start(room, loss, wood, usable);
        List<Integer> order = new ArrayList<>();
        for (int w = 0; w < numbers.widths.length; w++) {
            if (numbers.widths[w] > usable) continue;
            int[] offered = offered(w, board, span, usable, pool, random);
            if (offered.length == 0) continue;
            order.add(w);
            StripChain chain = new StripChain(numbers, lengths, stripFill, pool.worth, offered);
            addStrips(w, chain, wood, room, usable, loss);
        }
        return best(order, room, from, to, left, loss);
    }

    private int mostStrips(long usable) {
        long narrowest = numbers.widths[numbers.widths.length - 1];
        return (int) Math.min(1 << 12, (usable + numbers.ripKerf) / (narrowest + numbers.ripKerf));
    }

    private void start(int room, long loss, ClearWood wood, long usable) {
        if (worth.length <= room) {
            worth = new double[room + 1];
            used = new long[room + 1];
            givenUp = new long[room + 1];
        }
        Arrays.fill(worth, 0, room + 1, -1);
        worth[0] = 0;
        used[0] = 0;
        givenUp[0] = 0;
        if (wood.everywhere()) return;
        for (long past : wood.pastDefects()) {
            long extra = past - loss;
            int u = extra <= 0 || extra >= usable ? 0 : widths.of(extra);
            if (u == 0 || u > room) continue;
            worth[u] = 0;
            used[u] = extra;
            givenUp[u] = extra;
        }
    }

    /** Extends every choice so far by strips of width {@code w}: one, two, ... as long as they fit and add something. */
    private void addStrips(int w, StripChain chain, ClearWood wood, int room, long usable, long loss) {
        int[] before = reserve(w, room);
        StripChain.Link[] links = last[w];
        long width = numbers.widths[w];
        int step = widths.of(width + numbers.ripKerf);
        double[] was = Arrays.copyOf(worth, room + 1);
        long[] wasUsed = Arrays.copyOf(used, room + 1);
        for (int u = 0; u + step <= room; u++) {
            if (was[u] < 0) continue;
            StripChain.Link link = chain.root();
            long y = wasUsed[u];
            for (int v = u + step; v <= room && y + width <= usable; v += step) {
                StripChain.Link next = link.next(wood.view(loss + y, width));
                y += width + numbers.ripKerf;
                if (next.worth == link.worth && (wood.everywhere() || width < numbers.narrowestRip)) break;
                link = next;
                if (was[u] + link.worth > worth[v]) {
                    worth[v] = was[u] + link.worth;
                    used[v] = y;
                    before[v] = u;
                    links[v] = link;
                }
            }
        }
    }

    private int[] reserve(int w, int room) {
        if (cameFrom[w] == null || cameFrom[w].length <= room) {
            cameFrom[w] = new int[room + 1];
            last[w] = new StripChain.Link[room + 1];
        }
        Arrays.fill(cameFrom[w], 0, room + 1, -1);
        return cameFrom[w];
    }

    private int[] offered(int w, BoardNumbers board, long length, long usable, BlankPool pool, RandomGenerator random) {
        long strips = (usable + numbers.ripKerf) / (numbers.widths[w] + numbers.ripKerf);
        int[] copies = new int[numbers.partsOfWidth[w].length];
        int total = 0;
        for (int i = 0; i < copies.length; i++) {
            PartNumbers part = numbers.parts[numbers.partsOfWidth[w][i]];
            if (part.length > length || !pool.offers(part, board.index)) continue;
            long most = strips * ((length + numbers.crosscutKerf) / (part.length + numbers.crosscutKerf));
            copies[i] = (int) Math.min(most, pool.left[part.index]);
            total += copies[i];
        }
        return total == 0 ? NO_PARTS : inOrder(w, copies, total, random);
    }

    /** Longest first, more or less; when there are too many, each copy is kept with the same chance. */
    private int[] inOrder(int w, int[] copies, int total, RandomGenerator random) {
        double keep = (double) MOST_BLANKS_OFFERED / total;
        double noise = random.nextInt(3) * 0.25;
        int[] parts = new int[Math.min(total, 2 * MOST_BLANKS_OFFERED)];
        double[] keys = new double[parts.length];
        int n = 0;
        for (int i = 0; i < copies.length; i++) {
            int part = numbers.partsOfWidth[w][i];
            double key = numbers.parts[part].length * (1 - noise * random.nextDouble());
            for (int c = 0; c < copies[i] && n < parts.length; c++) {
                if (keep < 1 && random.nextDouble() > keep) continue;
                int j = n++;
                for (; j > 0 && keys[j - 1] < key; j--) {
                    keys[j] = keys[j - 1];
                    parts[j] = parts[j - 1];
                }
                keys[j] = key;
                parts[j] = part;
            }
        }
        return Arrays.copyOf(parts, n);
    }

    private @Nullable Filled best(List<Integer> order, int room, long from, long to, boolean left, long loss) {
        int u = 0;
        for (int v = 1; v <= room; v++) if (worth[v] > worth[u]) u = v;
        if (worth[u] <= 0) return null;
        Deque<Layout.Strip> strips = new ArrayDeque<>();
        int at = u;
        for (int i = order.size() - 1; i >= 0; i--) {
            int w = order.get(i);
            if (cameFrom[w][at] < 0) continue; // no strip of width w in this choice
            for (StripChain.Link l = last[w][at]; l != null && l.before != null; l = l.before) {
                List<Layout.Blank> blanks = new ArrayList<>();
                for (int b = 0; b < l.blanks.length; b++) {
                    blanks.add(new Layout.Blank(l.part(b), l.starts[b]));
                }
                strips.addFirst(new Layout.Strip(numbers.widths[w], blanks));
            }
            at = cameFrom[w][at];
        }
        Edge edge = left ? Edge.LEFT : Edge.RIGHT;
        return new Filled(worth[u], new Layout.Section(from, to, edge, loss + givenUp[at], List.copyOf(strips)));
    }
}
