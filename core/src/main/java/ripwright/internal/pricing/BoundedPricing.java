package ripwright.internal.pricing;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.PriorityQueue;
import java.util.function.BooleanSupplier;

/**
 * The pricing problem of one board with the bill's counts: its best layout that holds no more of any item type than is
 * wanted, over all its sections together; without the counts it is a relaxation that {@link BoardPricing} solves. Best-first
 * branch and bound: a node gives each of the three places for a section an upper bound for each type, and its value is the
 * best layout within them, each place for itself. Where that holds too many of a type, the node is split: one place has at
 * most so many of it, or it has more and the others have so many less between them. The first node whose layout keeps the
 * counts is optimal; where the work budget ends first, the value of the best open node is still an upper bound.
 *
 * @see "A. H. Land, A. G. Doig, An automatic method of solving discrete programming problems, Econometrica 28 (1960) 497-520"
 */
public final class BoundedPricing {
    private static final int PLACES = 3;

    private final BoardClass wood;
    private final int i; // the board's place in the wood
    private final BoardProfile shape;
    private final SectionTables[] sources; // one for each place
    private final SectionCandidates[] taken;
    private final long[] prices;
    private final int[] wanted; // wanted[k]: blanks of part type k there may be
    private final PriorityQueue<Node> open = new PriorityQueue<>();

    /** Limits on the places, and the best layout within them. */
    @SuppressWarnings("ArrayRecordComponent") // never changed once made, never compared
    private record Node(int[][] least, int[][] most, long worth, List<Pattern.Section> sections)
            implements Comparable<Node> {
        @Override
        public int compareTo(Node other) {
            return Long.compare(other.worth, worth);
        }
    }

    BoundedPricing(
            BoardClass wood,
            int i,
            BoardProfile shape,
            SectionTables[] sources,
            SectionCandidates[] taken,
            long[] prices,
            int[] wanted) {
        this.wood = wood;
        this.i = i;
        this.shape = shape;
        this.sources = sources;
        this.taken = taken;
        this.prices = prices;
        this.wanted = wanted;
        int[][] none = new int[PLACES][wanted.length];
        int[][] all = new int[PLACES][];
        Arrays.fill(all, wanted);
        offer(none, all);
    }

    /**
     * The best layout. After so many steps, when told to stop, or as soon as none is worth more than {@code enough}, one that is worth at least as
     * much; it need not be within the bill then.
     */
    Pattern best(int mostSteps, long enough, BooleanSupplier stop) {
        for (int n = 0; ; n++) {
            Node node = open.peek();
            if (node == null) return new Pattern(wood.boardTypes[i], StripPricing.NONE, List.of());
            int[] made = made(node.sections);
            int type = tooMany(made);
            if (type < 0 || n == mostSteps || node.worth <= enough || stop.getAsBoolean())
                return new Pattern(wood.boardTypes[i], node.worth, node.sections);
            open.poll();
            split(node, type);
        }
    }

    private int[] made(List<Pattern.Section> sections) {
        return new Pattern(0, 0, sections).made(wanted.length);
    }

    private int tooMany(int[] made) {
        for (int k = 0; k < made.length; k++) if (made[k] > wanted[k]) return k;
        return -1;
    }

    private void split(Node node, int type) {
        int[] many = new int[PLACES];
        for (int s = 0; s < PLACES; s++) many[s] = made(List.of(node.sections.get(s)))[type];
        int place = 0;
        for (int s = 1; s < PLACES; s++)
            if (many[s] - node.least[s][type] > many[place] - node.least[place][type]) place = s;
        int sum = many[0] + many[1] + many[2];
        int most = Math.max(node.least[place][type], Math.min(many[place] - 1, wanted[type] * many[place] / sum));
        offer(node.least, with(node.most, place, type, most));
        int[][] least = with(node.least, place, type, most + 1);
        int[][] rest = node.most;
        for (int s = 0; s < PLACES; s++) {
            int others = 0;
            for (int o = 0; o < PLACES; o++) if (o != s) others += least[o][type];
            if (wanted[type] - others < least[s][type]) return;
            rest = with(rest, s, type, Math.min(rest[s][type], wanted[type] - others));
        }
        offer(least, rest);
    }

    private static int[][] with(int[][] limits, int place, int type, int limit) {
        int[][] other = limits.clone();
        other[place] = limits[place].clone();
        other[place][type] = limit;
        return other;
    }

    private void offer(int[][] least, int[][] most) {
        SectionTables[] by = new SectionTables[PLACES];
        for (int s = 0; s < PLACES; s++) {
            by[s] = sources[s];
            for (int o = 0; o < s; o++) if (Arrays.equals(most[o], most[s])) by[s] = by[o];
            if (by[s] == sources[s]) by[s].price(prices, most[s]);
        }
        SectionTriples placed = new SectionTriples(wood, i, shape, by, taken);
        if (!placed.found()) return;
        List<Pattern.Section> sections = new ArrayList<>();
        for (int s = 0; s < PLACES; s++) {
            int t = placed.length(s);
            sections.add(t == 0 ? new Pattern.Section(0, List.of()) : by[s].section(i, t));
        }
        open.add(new Node(least, most, placed.worth(), sections));
    }
}
