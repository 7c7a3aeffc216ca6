package ripwright.pattern;

import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What the best strip of each width and each length is worth at given prices: its blanks at their prices, less the
 * crosscuts that part them, and what is left at its end where the rack wants it. No strip holds more of a part than the
 * bill wants, and where few are wanted, no strips of one section together. A knapsack of exact fillings for each width: parts x ticks steps, a few more where few copies are wanted.
 *
 * <p>Every blank pays for the cut behind it; where the last one ends with its strip there is none, and it is paid back.
 */
final class StripWorth {
    static final long NONE = Long.MIN_VALUE / 4;

    private final Wood wood;
    private final Charges charges;
    private final long[] endRate; // endRate[v]: coins a tick of leftover of width v fetches; 0 when too narrow to keep
    private final long[][] exact; // exact[v][t]: worth of the best blanks that take exactly t ticks, or NONE
    private final long[][] best; // best[v][t]: worth of the best strip t ticks long
    private final long[] specks; // specks[v]: worth of all blanks of width v too short to measure
    private final Passes[] passes; // of each width
    private final @Nullable FewBlanks[] fewBlanks; // of each width; null where too many are wanted

    StripWorth(Wood wood, Charges charges, Kinds kinds) {
        this.wood = wood;
        this.charges = charges;
        int[] wanted = new int[kinds.parts()];
        for (int k = 0; k < wanted.length; k++) wanted[k] = kinds.wanted(k);
        int widths = wood.widths.length;
        endRate = new long[widths];
        for (int v = 0; v < widths; v++) {
            long width = wood.numbers.widths[wood.widths[v]];
            if (width >= wood.numbers.keepWidth) endRate[v] = Coins.ceil(wood.offcutRate * width * wood.lengthTick);
        }
        exact = new long[widths][wood.length + 1];
        best = new long[widths][wood.length + 1];
        specks = new long[widths];
        passes = new Passes[widths];
        fewBlanks = new @Nullable FewBlanks[widths];
        for (int v = 0; v < widths; v++) {
            passes[v] = new Passes(wood.length);
            fewBlanks[v] = FewBlanks.of(wood, v, wanted, charges.crosscut(), endRate[v]);
        }
    }

    /**
     * Fills the tables.
     *
     * @param prices of a blank of each part kind, in coins
     * @param most how many of each there may be in a strip, and in a section where few are wanted
     */
    void price(long[] prices, int[] most) {
        for (int v = 0; v < best.length; v++) price(v, prices, most);
        for (FewBlanks few : fewBlanks) if (few != null) few.price(prices, most);
    }

    private void price(int v, long[] prices, int[] most) {
        long[] worth = exact[v];
        Arrays.fill(worth, NONE);
        worth[0] = 0;
        Passes those = passes[v];
        those.clear();
        specks[v] = 0;
        int reached = 0;
        for (int i = 0; i < wood.partKinds[v].length; i++) {
            int kind = wood.partKinds[v][i];
            int ticks = wood.blankTicks[v][i];
            if (prices[kind] <= 0 || most[kind] == 0 || ticks > wood.length) continue;
            if (ticks == 0)
                specks[v] += charges.crosscut() + most[kind] * Math.max(0, prices[kind] - charges.crosscut());
            else reached = those.add(worth, reached, i, ticks, prices[kind] - charges.crosscut(), most[kind]);
        }
        finish(v);
    }

    private void finish(int v) {
        long[] from = exact[v];
        long[] into = best[v];
        long any = 0; // of the best blanks in at most t ticks, none at all included
        long leaving = NONE; // the same, what they take from the leftover taken off
        long rate = endRate[v];
        long extra = rate * (wood.spill - wood.crosscutTicks);
        for (int t = 0; t <= wood.length; t++) {
            any = Math.max(any, from[t]);
            long strip = Math.max(any, from[t] + charges.crosscut());
            int x = t - wood.keepTicks;
            if (rate > 0 && x >= 0) {
                leaving = Math.max(leaving, from[x] - rate * x);
                strip = Math.max(strip, leaving + rate * t + extra);
            }
            into[t] = strip + specks[v];
        }
    }

    /** What the best strip of width {@code v} in a section of {@code t} ticks is worth, its rip not yet paid. */
    long best(int v, int t) {
        return best[v][t];
    }

    /** How many strips of width {@code v} in one section are told apart; 0 where each is worth as much as the first. */
    int told(int v) {
        FewBlanks few = fewBlanks[v];
        return few == null ? 0 : few.strips();
    }

    /** What that many strips of width {@code v} in a section of {@code t} ticks are worth, their rips not yet paid. */
    long best(int v, int strips, int t) {
        FewBlanks few = fewBlanks[v];
        return few == null ? strips * best[v][t] : few.best(strips, t);
    }

    /** The part kinds of each of those strips. */
    List<int[]> blanks(int v, int strips, int t) {
        FewBlanks few = fewBlanks[v];
        return few == null ? Collections.nCopies(strips, blanks(v, t)) : few.blanks(strips, t);
    }

    /** The part kinds of the best strip of width {@code v} and {@code t} ticks, as {@link #best} reckoned it. */
    private int[] blanks(int v, int t) {
        long worth = best[v][t] - specks[v];
        int x = t;
        if (exact[v][t] + charges.crosscut() != worth) {
            long rate = endRate[v];
            long extra = rate * (wood.spill - wood.crosscutTicks);
            while (x > 0 && exact[v][x] != worth) {
                boolean leaves = rate > 0 && t - x >= wood.keepTicks;
                if (leaves && exact[v][x] + rate * (t - x) + extra == worth) break;
                x--;
            }
        }
        return passes[v].trace(x, wood.partKinds[v], wood.blankTicks[v]);
    }
}
