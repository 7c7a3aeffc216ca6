package ripwright.internal.pricing;

import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import ripwright.internal.knapsack.KnapsackPasses;
import ripwright.internal.model.ScaledLabor;

/**
 * Strips of a width of which many blanks are wanted: no strip holds more of a part than is wanted, but two strips may hold
 * the same blank. A knapsack of exact fillings: parts x ticks steps, a few more for parts of which few copies are wanted.
 */
public final class KnapsackStrips implements StripPricing {
    private static final int MOST_UNSEEN = 64; // ticks looked through one by one; of more any may end with its strip

    private final BoardClass wood;
    private final int v; // the width's place in the wood
    private final long crosscut;
    private final long endRate; // money a tick of leftover fetches; 0 when too narrow to keep
    private final long endExtra; // and what a leftover fetches beyond its ticks
    private final long[] exact; // exact[t]: worth of the best blanks that take exactly t ticks, or NONE
    private final long[] best; // best[t]: worth of the best strip t ticks long
    private final KnapsackPasses passes;
    private long specks; // worth of all blanks too short to measure

    KnapsackStrips(BoardClass wood, int v, ScaledLabor charges) {
        this.wood = wood;
        this.v = v;
        crosscut = charges.crosscut();
        endRate = wood.endRate(v);
        endExtra = wood.endExtra(v);
        exact = new long[wood.length + 1];
        best = new long[wood.length + 1];
        passes = new KnapsackPasses(wood.length);
    }

    @Override
    public void price(long[] prices, int[] most) {
        Arrays.fill(exact, NONE);
        exact[0] = 0;
        passes.clear();
        specks = 0;
        int reached = 0;
        for (int i = 0; i < wood.partTypes[v].length; i++) {
            int type = wood.partTypes[v][i];
            int ticks = wood.blankTicks[v][i];
            if (prices[type] <= 0 || most[type] == 0 || ticks > wood.length) continue;
            if (ticks == 0) specks += crosscut + most[type] * Math.max(0, prices[type] - crosscut);
            else reached = passes.add(exact, reached, i, ticks, prices[type] - crosscut, most[type]);
        }
        finish();
    }

    private void finish() {
        long any = 0; // of the best blanks in at most t ticks, none at all included
        long leaving = NONE; // the same, what they take from the leftover taken off
        for (int t = 0; t <= wood.length; t++) {
            any = Math.max(any, exact[t]);
            long strip = Math.max(any, endingWith(t, any) + crosscut);
            int x = t - wood.keepTicks;
            if (endRate > 0 && x >= 0) {
                leaving = Math.max(leaving, exact[x] - endRate * x);
                strip = Math.max(strip, leaving + endRate * t + endExtra);
            }
            best[t] = strip + specks;
        }
    }

    /** The worth of the best blanks that end with a strip of {@code t} ticks; at most {@code any}. */
    private long endingWith(int t, long any) {
        if (wood.unseenInStrip > MOST_UNSEEN) return any;
        long most = exact[t];
        for (int x = Math.max(0, t - wood.unseenInStrip); x < t; x++) most = Math.max(most, exact[x]);
        return most;
    }

    @Override
    public int told() {
        return 0;
    }

    @Override
    public long best(int strips, int t) {
        return strips * best[t];
    }

    @Override
    public List<int[]> blanks(int strips, int t) {
        return Collections.nCopies(strips, blanks(t));
    }

    private int[] blanks(int t) {
        long worth = best[t] - specks;
        int x = t;
        while (x > 0 && t - x < wood.unseenInStrip && exact[x] + crosscut != worth) x--;
        if (exact[x] + crosscut != worth) {
            x = t;
            while (x > 0 && exact[x] != worth) {
                boolean leaves = endRate > 0 && t - x >= wood.keepTicks;
                if (leaves && exact[x] + endRate * (t - x) + endExtra == worth) break;
                x--;
            }
        }
        return passes.trace(x, wood.partTypes[v], wood.blankTicks[v]);
    }

    @Override
    public void markRises(boolean[] rises) {
        for (int t = 1; t < rises.length; t++) rises[t] |= best[t] > best[t - 1];
    }
}
