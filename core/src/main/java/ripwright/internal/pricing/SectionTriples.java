package ripwright.internal.pricing;

/** The best layout of a board whose sections come from three sources, one from each at most. Exact; tries all that may be. */
public final class SectionTriples {
    private final BoardProfile shape;
    private final SectionCandidates[] taken;
    private final BoardClass wood;
    private final int[] lengths = new int[3];
    private double perTick;
    private long best = StripPricing.NONE;

    SectionTriples(BoardClass wood, int i, BoardProfile shape, SectionTables[] by, SectionCandidates[] taken) {
        this.wood = wood;
        this.shape = shape;
        this.taken = taken;
        boolean any = false;
        double rate = (double) shape.fullRate();
        for (int s = 0; s < by.length; s++) any |= taken[s].begin(by[s].sections(), i, shape);
        if (!any) return;
        for (int s = 0; s < by.length; s++) rate = taken[s].settle(rate);
        perTick = rate * (1 + 1e-12);
        double tried = perTick * shape.length / 64;
        while (true) {
            for (SectionCandidates those : taken) those.take(perTick, tried);
            combine(tried);
            double enough = enough();
            if (tried >= enough) return;
            tried = Math.min(2 * tried + 64, enough);
        }
    }

    /** What sections and leftovers of a better layout lose together at most. */
    private double enough() {
        return shape.slack(perTick, Math.max(0, best), wood.spill);
    }

    /** Section -1 of a source is none. */
    private void combine(double tried) {
        double slack = Math.min(tried, enough());
        for (int a = -1; a < taken[0].count(); a++) {
            long first = a < 0 ? 0 : taken[0].worth(a);
            int left = shape.length - (a < 0 ? 0 : taken[0].length(a));
            double lost = a < 0 ? 0 : taken[0].loss(a);
            if (lost > slack) continue;
            for (int b = -1; b < taken[1].count(); b++) {
                if (b >= 0 && lost + taken[1].loss(b) > slack) continue;
                int end = left - (b < 0 ? 0 : taken[1].length(b));
                if (end < 0) break;
                long rest = a < 0 && b < 0 ? taken[2].last(end) : taken[2].rest(end);
                long worth = first + (b < 0 ? 0 : taken[1].worth(b)) + rest;
                if (worth <= best) continue;
                best = worth;
                lengths[0] = a < 0 ? 0 : taken[0].length(a);
                lengths[1] = b < 0 ? 0 : taken[1].length(b);
                lengths[2] = taken[2].lengthOfLast(end, rest);
                slack = Math.min(tried, enough());
            }
        }
    }

    boolean found() {
        return best != StripPricing.NONE;
    }

    long worth() {
        return best;
    }

    /** How long the section of a source is, in ticks; 0 when it has none. */
    int length(int source) {
        return lengths[source];
    }
}
