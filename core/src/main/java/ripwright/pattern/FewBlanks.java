package ripwright.pattern;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * The strips of one width of which so few blanks are wanted that all choices of them can be listed: what one, two, ...
 * strips of a section are worth together, no blank in two of them. Exact.
 *
 * <p>Where nothing but blanks counts, a choice is worth the same at every length it fits; the shortest length at which it
 * fits so many strips is found once, and prices then only have to be summed. Where strips fetch something at their ends,
 * or a cut is saved there, each length is tried for itself.
 */
final class FewBlanks {
    private static final int MOST_CHOICES = 3_000;
    private static final int MOST_PAIRS = 2_000_000;
    private static final int MOST_PAIRS_FOR_EVERY_LENGTH = 800;

    private final int[] kinds; // kinds[i]: part kind i
    private final Multisets choices;
    private final int strips; // of one section at most
    private final boolean endsCount;
    private final long crosscut;
    private final long endRate; // as in StripWorth
    private final long endExtra;
    private final int keepTicks;
    private final int[] ticks; // ticks[m]: of choice m end to end
    private final int[][] fits; // fits[k][m]: the shortest section in which k + 1 strips hold choice m
    private final Integer[][] byFit; // choices by fits[k]
    private final long[] worth; // worth[m]: of choice m at the prices, or NONE
    private final long[] weights; // of kinds[i]
    private final long[][] best; // best[k][t]: of k + 1 strips of t ticks, where ends do not count
    private final long[][] holding; // holding[k][m]: of k + 1 strips that hold just choice m, at the length asked last
    private int length = -1; // that length

    private FewBlanks(Wood wood, int v, int[] copies, int strips, long crosscut, long endRate) {
        kinds = wood.partKinds[v];
        choices = new Multisets(copies);
        this.strips = strips;
        this.crosscut = crosscut;
        this.endRate = endRate;
        endExtra = endRate * (wood.spill - wood.crosscutTicks);
        keepTicks = wood.keepTicks;
        endsCount = crosscut > 0 || endRate > 0;
        long[] sums = new long[choices.size()];
        choices.sums(Arrays.stream(wood.blankTicks[v]).asLongStream().toArray(), sums);
        ticks = Arrays.stream(sums).mapToInt(Math::toIntExact).toArray();
        worth = new long[ticks.length];
        weights = new long[kinds.length];
        fits = endsCount ? new int[0][] : new int[strips][];
        byFit = new Integer[fits.length][];
        best = new long[fits.length][wood.length + 1];
        holding = new long[endsCount ? strips : 0][ticks.length];
        for (int k = 0; k < fits.length; k++) fits(k);
    }

    /** For a width, when it has few enough blanks and a section may have two strips of it; else null. */
    static @org.jspecify.annotations.Nullable FewBlanks of(
            Wood wood, int v, int[] wanted, long crosscut, long endRate) {
        int[] copies = Arrays.stream(wood.partKinds[v]).map(k -> wanted[k]).toArray();
        long widest = wood.sums.sum(wood.sums.count() - 1);
        long fit = widest / wood.strips[v];
        int strips = (int) Math.min(fit, Arrays.stream(copies).sum());
        boolean endsCount = crosscut > 0 || endRate > 0;
        int mostPairs = endsCount ? MOST_PAIRS_FOR_EVERY_LENGTH : MOST_PAIRS;
        boolean few = Multisets.count(copies, MOST_CHOICES) <= MOST_CHOICES
                && Multisets.pairs(copies, mostPairs) <= mostPairs
                && Arrays.stream(wood.blankTicks[v]).allMatch(t -> t > 0);
        return few && fit > 1 ? new FewBlanks(wood, v, copies, strips, crosscut, endRate) : null;
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

    void price(long[] prices, int[] most) {
        length = -1;
        for (int i = 0; i < kinds.length; i++) weights[i] = prices[kinds[i]] - crosscut;
        choices.sums(weights, worth);
        bar(most);
        for (int k = 0; k < fits.length; k++) {
            long highest = 0;
            int t = 0;
            for (int m : byFit[k]) {
                if (worth[m] <= highest) continue;
                int end = Math.min(fits[k][m], best[k].length);
                Arrays.fill(best[k], t, Math.max(t, end), highest);
                t = Math.max(t, end);
                highest = worth[m];
            }
            Arrays.fill(best[k], t, best[k].length, highest);
        }
    }

    /** Takes out the choices that have more of a kind than {@code most}. */
    private void bar(int[] most) {
        for (int i = 0; i < kinds.length; i++) {
            if (most[kinds[i]] >= choices.copies(i)) continue;
            for (int m = 0; m < worth.length; m++) if (choices.many(m, i) > most[kinds[i]]) worth[m] = StripWorth.NONE;
        }
    }

    /** How many strips of this width are told apart. */
    int strips() {
        return strips;
    }

    /** What that many strips of {@code t} ticks are worth together, their rips not yet paid. */
    long best(int strips, int t) {
        if (!endsCount) return best[strips - 1][t];
        hold(t);
        long most = StripWorth.NONE;
        for (long worth : holding[strips - 1]) most = Math.max(most, worth);
        return most;
    }

    private void hold(int t) {
        if (length == t) return;
        length = t;
        for (int m = 0; m < ticks.length; m++) holding[0][m] = ofOne(m, t);
        for (int k = 1; k < strips; k++) {
            for (int m = 0; m < ticks.length; m++) {
                long most = StripWorth.NONE;
                for (int part = 0; part >= 0; part = choices.nextPart(m, part)) {
                    if (holding[0][part] == StripWorth.NONE || holding[k - 1][m - part] == StripWorth.NONE) continue;
                    most = Math.max(most, holding[0][part] + holding[k - 1][m - part]);
                }
                holding[k][m] = most;
            }
        }
    }

    private long ofOne(int m, int t) {
        if (ticks[m] > t || worth[m] == StripWorth.NONE) return StripWorth.NONE;
        long end = ticks[m] == t ? crosscut : 0;
        if (endRate > 0 && t - ticks[m] >= keepTicks) end = Math.max(end, endRate * (t - ticks[m]) + endExtra);
        return worth[m] + end;
    }

    /** The part kinds of each of those strips. */
    List<int[]> blanks(int strips, int t) {
        long most = best(strips, t);
        int m = 0;
        while (endsCount ? holding[strips - 1][m] != most : worth[m] != most || fits[strips - 1][m] > t) m++;
        List<int[]> all = new ArrayList<>();
        for (int k = strips - 1; k > 0; k--) {
            int first = firstStrip(m, k, t);
            all.add(kinds(first));
            m -= first;
        }
        all.add(kinds(m));
        return all;
    }

    /** A part of {@code m} for one strip whose rest {@code k} strips can hold. */
    private int firstStrip(int m, int k, int t) {
        for (int part = 0; part >= 0; part = choices.nextPart(m, part)) {
            if (endsCount) {
                boolean none = holding[0][part] == StripWorth.NONE || holding[k - 1][m - part] == StripWorth.NONE;
                if (!none && holding[0][part] + holding[k - 1][m - part] == holding[k][m]) return part;
            } else if (ticks[part] <= t && fits[k - 1][m - part] <= t) {
                return part;
            }
        }
        throw new IllegalStateException("Choice " + m + " fits no strips of " + t + " ticks.");
    }

    private int[] kinds(int m) {
        return Arrays.stream(choices.kinds(m)).map(i -> kinds[i]).toArray();
    }
}
