package ripwright.internal.pricing;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import ripwright.internal.knapsack.Multisets;
import ripwright.internal.model.ScaledLabor;

/**
 * The strips of one width of which so few blanks are wanted that all choices of them can be listed: what one, two, ...
 * strips of a section are worth together, no blank in two of them. Exact.
 *
 * <p>Where nothing but blanks counts, a choice is worth the same at every length it fits; the shortest length at which it
 * fits so many strips is found once, and prices then only have to be summed. Where strips fetch something at their ends,
 * or a cut is saved there, each length is tried for itself.
 */
public final class EnumeratedStrips implements StripPricing {
    private static final int MOST_CHOICES = 3_000;
    private static final int MOST_PAIRS = 2_000_000;
    private static final int MOST_PAIRS_FOR_EVERY_LENGTH = 800;

    private final int[] types; // types[i]: part type i
    private final Multisets choices;
    private final int strips; // of one section at most
    private final boolean endsCount;
    private final long crosscut;
    private final long endRate; // as in ManyBlanks
    private final long endExtra;
    private final int keepTicks;
    private final int unseenInStrip;
    private final int[] ticks; // ticks[m]: of choice m end to end
    private final int[][] fits; // fits[k][m]: the shortest section in which k + 1 strips hold choice m
    private final Integer[][] byFit; // choices by fits[k]
    private final long[] worth; // worth[m]: of choice m at the prices, or NONE
    private final long[] weights; // of types[i]
    private final int[][] steps; // steps[k]: the lengths at which k + 1 strips rise in worth, where ends do not count
    private final int[][] heights; // heights[k][i]: the choice they hold from steps[k][i] on
    private final int[] rises; // rises[k]: how many there are
    private final long[][] holding; // holding[k][m]: of k + 1 strips that hold just choice m, at the length asked last
    private int length = -1; // that length
    private int levels; // for how many strips holding is filled at that length

    private EnumeratedStrips(BoardClass wood, int v, int[] copies, int strips, ScaledLabor charges) {
        types = wood.partTypes[v];
        choices = new Multisets(copies);
        this.strips = strips;
        crosscut = charges.crosscut();
        endRate = wood.endRate(v);
        endExtra = wood.endExtra(v);
        keepTicks = wood.keepTicks;
        unseenInStrip = wood.unseenInStrip;
        endsCount = crosscut > 0 || endRate > 0;
        long[] sums = new long[choices.size()];
        choices.sums(Arrays.stream(wood.blankTicks[v]).asLongStream().toArray(), sums);
        ticks = Arrays.stream(sums).mapToInt(Math::toIntExact).toArray();
        worth = new long[ticks.length];
        weights = new long[types.length];
        fits = endsCount ? new int[0][] : new int[strips][];
        byFit = new Integer[fits.length][];
        steps = new int[fits.length][ticks.length + 1];
        heights = new int[fits.length][ticks.length + 1];
        rises = new int[fits.length];
        holding = new long[endsCount ? strips : 0][ticks.length];
        for (int k = 0; k < fits.length; k++) fits(k);
    }

    /** Whether a width has few enough blanks, and a section room for two strips of it. */
    static boolean suit(BoardClass wood, int v, int[] wanted, ScaledLabor charges) {
        int[] copies = copies(wood, v, wanted);
        boolean endsCount = charges.crosscut() > 0 || wood.endRate(v) > 0;
        int mostPairs = endsCount ? MOST_PAIRS_FOR_EVERY_LENGTH : MOST_PAIRS;
        return fit(wood, v) > 1
                && Multisets.count(copies, MOST_CHOICES) <= MOST_CHOICES
                && Multisets.pairs(copies, mostPairs) <= mostPairs
                && Arrays.stream(wood.blankTicks[v]).allMatch(t -> t > 0);
    }

    static EnumeratedStrips of(BoardClass wood, int v, int[] wanted, ScaledLabor charges) {
        int[] copies = copies(wood, v, wanted);
        int strips = (int) Math.min(fit(wood, v), Arrays.stream(copies).sum());
        return new EnumeratedStrips(wood, v, copies, strips, charges);
    }

    private static int[] copies(BoardClass wood, int v, int[] wanted) {
        return Arrays.stream(wood.partTypes[v]).map(k -> wanted[k]).toArray();
    }

    /** How many strips of the width the widest board has room for. */
    private static long fit(BoardClass wood, int v) {
        return wood.sums.sum(wood.sums.count() - 1) / wood.strips[v];
    }

    private void fits(int k) {
        fits[k] = ticks.clone();
        if (k > 0) {
            for (int m = 0; m < ticks.length; m++) {
                int least = fits[k - 1][m];
                for (int part = 0; part >= 0; part = choices.nextPart(m, part))
                    least = Math.min(least, Math.max(ticks[part], fits[k - 1][m - part]));
                fits[k][m] = least;
            }
        }
        int[] fit = fits[k];
        byFit[k] = new Integer[fit.length];
        Arrays.setAll(byFit[k], m -> m);
        Arrays.sort(byFit[k], (a, b) -> Integer.compare(fit[a], fit[b]));
    }

    @Override
    public void price(long[] prices, int[] most) {
        length = -1;
        for (int i = 0; i < types.length; i++) weights[i] = Math.max(0, prices[types[i]]) - crosscut;
        choices.sums(weights, worth);
        bar(most);
        for (int k = 0; k < fits.length; k++) climb(k);
    }

    private void climb(int k) {
        int n = 0;
        long highest = 0;
        for (int m : byFit[k]) {
            if (worth[m] <= highest) continue;
            highest = worth[m];
            if (n > 0 && steps[k][n - 1] == fits[k][m]) n--;
            steps[k][n] = fits[k][m];
            heights[k][n++] = m;
        }
        rises[k] = n;
    }

    /** Takes out the choices that have more of a type than {@code most}. */
    private void bar(int[] most) {
        for (int i = 0; i < types.length; i++) {
            if (most[types[i]] >= choices.copies(i)) continue;
            for (int m = 0; m < worth.length; m++) if (choices.many(m, i) > most[types[i]]) worth[m] = NONE;
        }
    }

    @Override
    public int told() {
        return strips;
    }

    @Override
    public long best(int strips, int t) {
        if (!endsCount) {
            int m = holds(strips, t);
            return m < 0 ? 0 : worth[m];
        }
        hold(strips, t);
        long most = NONE;
        for (long worth : holding[strips - 1]) most = Math.max(most, worth);
        return most;
    }

    /** The choice that so many strips of {@code t} ticks hold at best; -1 when they hold none. */
    private int holds(int strips, int t) {
        int i = Arrays.binarySearch(steps[strips - 1], 0, rises[strips - 1], t);
        if (i < 0) i = -i - 2;
        return i < 0 ? -1 : heights[strips - 1][i];
    }

    @Override
    public void markRises(boolean[] marks) {
        if (endsCount) Arrays.fill(marks, true);
        for (int k = 0; k < fits.length; k++)
            for (int i = 0; i < rises[k] && steps[k][i] < marks.length; i++) marks[steps[k][i]] = true;
    }

    private void hold(int strips, int t) {
        if (length != t) {
            length = t;
            levels = 1;
            for (int m = 0; m < ticks.length; m++) holding[0][m] = ofOne(m, t);
        }
        for (int k = levels; k < strips; k++) {
            for (int m = 0; m < ticks.length; m++) {
                long most = NONE;
                for (int part = worth[m] == NONE ? -1 : 0; part >= 0; part = choices.nextPart(m, part)) {
                    if (holding[0][part] == NONE || holding[k - 1][m - part] == NONE) continue;
                    most = Math.max(most, holding[0][part] + holding[k - 1][m - part]);
                }
                holding[k][m] = most;
            }
        }
        levels = Math.max(levels, strips);
    }

    private long ofOne(int m, int t) {
        if (ticks[m] > t || worth[m] == NONE) return NONE;
        long end = t - ticks[m] <= unseenInStrip ? crosscut : 0;
        if (endRate > 0 && t - ticks[m] >= keepTicks) end = Math.max(end, endRate * (t - ticks[m]) + endExtra);
        return worth[m] + end;
    }

    @Override
    public List<int[]> blanks(int strips, int t) {
        int m = endsCount ? held(strips, t) : Math.max(0, holds(strips, t));
        List<int[]> all = new ArrayList<>();
        for (int k = strips - 1; k > 0; k--) {
            int first = firstStrip(m, k, t);
            all.add(types(first));
            m -= first;
        }
        all.add(types(m));
        return all;
    }

    private int held(int strips, int t) {
        long most = best(strips, t);
        int m = 0;
        while (holding[strips - 1][m] != most) m++;
        return m;
    }

    /** A part of {@code m} for one strip whose rest {@code k} strips can hold. */
    private int firstStrip(int m, int k, int t) {
        for (int part = 0; part >= 0; part = choices.nextPart(m, part)) {
            if (endsCount) {
                boolean none = holding[0][part] == NONE || holding[k - 1][m - part] == NONE;
                if (!none && holding[0][part] + holding[k - 1][m - part] == holding[k][m]) return part;
            } else if (ticks[part] <= t && fits[k - 1][m - part] <= t) {
                return part;
            }
        }
        throw new IllegalStateException("Choice " + m + " fits no strips of " + t + " ticks.");
    }

    private int[] types(int m) {
        return Arrays.stream(choices.types(m)).map(i -> types[i]).toArray();
    }
}
