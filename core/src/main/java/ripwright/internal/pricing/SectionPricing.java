package ripwright.internal.pricing;

import java.util.Arrays;
import java.util.function.BooleanSupplier;
import ripwright.internal.model.ScaledLabor;
import ripwright.internal.model.ScaledMoney;

/**
 * What the best section of each length is worth on each of a wood's boards: a knapsack of strips over the width, reckoned
 * only for lengths somebody asks for, and then for all boards at once. Beside the strips lies what the rack may want.
 */
public final class SectionPricing {
    private final BoardClass wood;
    private final ScaledLabor charges;
    private final StripPricing[] strips; // of each width
    private final BoardProfile[] shapes;
    private final BooleanSupplier abort;
    private final boolean everyLength; // whether a section may be worth more only because it is longer
    private final long[][] worth; // worth[i][t]: of the best section t ticks long on board i, once reckoned
    private int only = -1; // the one board to be reckoned; -1: all
    private final boolean[] reckoned; // the lengths that are
    private final boolean[] rises; // whether some strips of t ticks are worth more than of a tick less
    private int[] lengths = {}; // those a section may have with profit, in rising order
    private final double[] across; // across[t]: no section of t ticks is worth more for each nanometer of width
    private final long[] choice; // choice[i]: worth of the best strips whose widths come to the i-th sum
    private final long[] within; // within[i]: or to less
    private final SectionKnapsack passes;

    SectionPricing(
            BoardClass wood, ScaledLabor charges, StripPricing[] strips, BoardProfile[] shapes, BooleanSupplier abort) {
        this.abort = abort;
        this.wood = wood;
        this.charges = charges;
        this.strips = strips;
        this.shapes = shapes;
        everyLength = wood.offcutRate > 0 || Arrays.stream(shapes).anyMatch(shape -> shape.flush > 0);
        worth = new long[shapes.length][wood.length + 1];
        reckoned = new boolean[wood.length + 1];
        rises = new boolean[wood.length + 1];
        across = new double[wood.length + 1];
        choice = new long[wood.sums.count()];
        within = new long[choice.length];
        passes = new SectionKnapsack(wood, charges, strips);
    }

    /** From the next prices on reckons board {@code i} alone. */
    void only(int i) {
        only = i;
    }

    /** Forgets what was reckoned at other prices. */
    void price() {
        Arrays.fill(reckoned, false);
        Arrays.fill(rises, everyLength);
        if (!everyLength) for (StripPricing strip : strips) strip.markRises(rises);
        int from = Math.max(1, wood.shortest);
        if (from < rises.length) rises[from] = true;
        int n = 0;
        for (int t = from; t < rises.length; t++) if (rises[t]) n++;
        lengths = new int[n];
        n = 0;
        for (int t = from; t < rises.length; t++) if (rises[t]) lengths[n++] = t;
        for (int t : lengths) {
            if (abort.getAsBoolean()) throw new PricingStopped();
            double most = wood.offcutRate * wood.longest(t);
            for (int v = 0; v < strips.length; v++)
                most = Math.max(most, (double) (strips[v].best(1, t) - charges.rip()) / wood.strips[v]);
            across[t] = most;
        }
    }

    /** The lengths a section may have with profit, in rising order: at any other it is worth no more than when shorter. */
    int[] lengths() {
        return lengths;
    }

    boolean isReckoned(int t) {
        return reckoned[t];
    }

    /** At least the worth of the best section of {@code t} ticks on board {@code i}; {@link StripPricing#NONE} for none. */
    long atMost(int i, int t) {
        if (reckoned[t]) return worth[i][t];
        int room = shapes[i].room(t);
        if (room < 0) return StripPricing.NONE;
        double taken = wood.sums.sum(room);
        double beside = wood.offcutRate > 0 ? Math.max(0, besideWidth(i, t) - taken) : 0;
        double most = across[t] * taken + beside * wood.offcutRate * wood.longest(t);
        return ScaledMoney.ceil(most) + 1 - straightening(i) - charges.crosscut();
    }

    private double besideWidth(int i, int t) {
        return shapes[i].widthBeside(t) + shapes[i].slant(t);
    }

    private long straightening(int i) {
        return shapes[i].straightens ? charges.rip() : 0;
    }

    /** The worth of the best section of {@code t} ticks on board {@code i}, its own cuts and one crosscut paid. */
    long worth(int i, int t) {
        if (!reckoned[t]) reckon(t);
        return worth[i][t];
    }

    private void reckon(int t) {
        if (abort.getAsBoolean()) throw new PricingStopped();
        fill(t);
        if (only >= 0) worth[only][t] = ofBoard(only, t);
        else for (int i = 0; i < shapes.length; i++) worth[i][t] = ofBoard(i, t);
        reckoned[t] = true;
    }

    private void fill(int t) {
        passes.of(t);
        passes.fill(choice);
        long most = 0;
        for (int i = 0; i < choice.length; i++) {
            most = Math.max(most, choice[i]);
            within[i] = most;
        }
    }

    private long ofBoard(int i, int t) {
        if (t > shapes[i].length) return StripPricing.NONE;
        int room = shapes[i].room(t);
        if (room < 0) return StripPricing.NONE;
        long most = within[room];
        for (int u = keepingRoom(i, t); u >= 0; u--)
            if (choice[u] != StripPricing.NONE) most = Math.max(most, choice[u] + beside(i, t, u));
        return most - straightening(i) - charges.crosscut();
    }

    /** The greatest sum of strips beside which there is something to keep; -1 when there never is. */
    private int keepingRoom(int i, int t) {
        if (wood.offcutRate == 0 || wood.longest(t) < wood.numbers.keepLength) return -1;
        return Math.min(shapes[i].room(t), wood.sums.within(shapes[i].widthBeside(t) - wood.numbers.keepWidth));
    }

    private long beside(int i, int t, int u) {
        return ScaledMoney.ceil(wood.offcutRate * wood.longest(t) * (besideWidth(i, t) - wood.sums.sum(u)));
    }

    /** How many strips of each width the best section has, as {@link #worth} reckoned it. */
    int[] strips(int i, int t) {
        fill(t);
        int best = shapes[i].room(t);
        while (best > 0 && choice[best] != within[shapes[i].room(t)]) best--;
        long most = choice[best];
        for (int u = keepingRoom(i, t); u >= 0; u--) {
            if (choice[u] == StripPricing.NONE || choice[u] + beside(i, t, u) <= most) continue;
            most = choice[u] + beside(i, t, u);
            best = u;
        }
        return passes.trace(best);
    }
}
