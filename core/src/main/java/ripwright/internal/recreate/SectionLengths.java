package ripwright.internal.recreate;

import java.util.Arrays;
import java.util.random.RandomGenerator;
import ripwright.internal.knapsack.TickGrid;
import ripwright.internal.model.BoardNumbers;
import ripwright.internal.model.JobNumbers;
import ripwright.internal.model.PartNumbers;

/**
 * Draws lengths for a board's sections: sums of one to three of its blanks. Mostly a few are drawn and the most promising
 * one is taken: that at which strips of the pool's widths come out fullest, in the section and in what it leaves of the
 * board. A promise, as a blank may be counted in both and widths need not add up. About blanks x ticks / 64 steps for each
 * board, and a few for each draw. Keeps its tables for the next board, so it serves one thread.
 */
public final class SectionLengths {
    private static final int DRAWS = 4;
    private static final int ONE_DRAW_OF = 4; // for variety
    private static final int MOST_BLANKS = 3; // in one length
    private static final int MOST_COPIES = 8; // of one part that are looked at

    private final JobNumbers numbers;
    private final TickGrid grid;
    private final long[][] reach; // reach[w], bit x: some blanks of width w come to exactly x ticks, a kerf for each
    private final long[] ticks; // ticks[w]: of all blanks of width w
    private final int[] present; // the widths there are blanks of
    private int presentCount;
    private final double[] fullness; // of the widths that fill something at the length at hand, fullest first
    private final int[] fullest;

    SectionLengths(JobNumbers numbers, TickGrid grid) {
        this.numbers = numbers;
        this.grid = grid;
        int widths = numbers.widths.length;
        reach = new long[widths][];
        ticks = new long[widths];
        present = new int[widths];
        fullness = new double[widths];
        fullest = new int[widths];
    }

    /**
     * A length for the next section.
     *
     * @param board the board
     * @param room what is left of its length, in nanometers
     * @param most how long the section may be
     * @param pool the blanks there are
     * @return nanometers; 0 where no blank of the pool may come from the board
     */
    long draw(BoardNumbers board, long room, long most, BlankPool pool, RandomGenerator random) {
        int[] candidates = candidates(board, pool);
        if (candidates.length == 0) return 0;
        if (random.nextInt(ONE_DRAW_OF) == 0) return sum(candidates, most, random);
        tabulate(candidates, pool, room);
        long usable = board.usableWidth(true, board.begin, board.begin + most);
        long best = most;
        double promise = -1;
        for (int i = 0; i < DRAWS; i++) {
            long length = sum(candidates, most, random);
            double other =
                    filled(length, usable) + filled(room - length - numbers.crosscutKerf - 2 * numbers.over, usable);
            if (other <= promise) continue;
            promise = other;
            best = length;
        }
        return best;
    }

    private int[] candidates(BoardNumbers board, BlankPool pool) {
        int[] candidates = new int[numbers.parts.length];
        int n = 0;
        for (PartNumbers part : numbers.parts) if (pool.offers(part, board.index)) candidates[n++] = part.index;
        return Arrays.copyOf(candidates, n);
    }

    private long sum(int[] candidates, long most, RandomGenerator random) {
        long length = 0;
        int blanks = 1 + random.nextInt(MOST_BLANKS);
        for (int i = 0; i < blanks || length < numbers.shortestRip; i++) {
            long next = numbers.parts[candidates[random.nextInt(candidates.length)]].length;
            long longer = length + next + (length > 0 ? numbers.crosscutKerf : 0);
            if (longer > most) break;
            length = longer;
        }
        return length >= numbers.shortestRip && length > 0 ? length : most;
    }

    private void tabulate(int[] candidates, BlankPool pool, long room) {
        int words = (grid.in(room + numbers.crosscutKerf) >> 6) + 1;
        presentCount = 0;
        Arrays.fill(ticks, 0);
        for (int p : candidates) {
            PartNumbers part = numbers.parts[p];
            int w = part.widthIndex;
            if (ticks[w] == 0) {
                reach[w] = new long[words];
                reach[w][0] = 1;
                present[presentCount++] = w;
            }
            int blank = grid.of(part.length + numbers.crosscutKerf);
            for (int c = Math.min(pool.left[p], MOST_COPIES); c > 0; c--) {
                ticks[w] += blank;
                add(reach[w], blank);
            }
        }
    }

    private static void add(long[] reach, int blank) {
        int whole = blank >> 6;
        int bits = blank & 63;
        for (int i = reach.length - 1; i > whole; i--)
            reach[i] |= bits == 0 ? reach[i - whole] : reach[i - whole] << bits | reach[i - whole - 1] >>> (64 - bits);
        if (whole < reach.length) reach[whole] |= reach[0] << bits;
    }

    /** How much of a section so long and wide is filled when its fullest widths come first, about. */
    private double filled(long length, long usable) {
        int capacity = grid.in(length + numbers.crosscutKerf);
        if (length <= 0 || capacity <= 0) return 0;
        int n = rank(capacity);
        long left = usable + numbers.ripKerf;
        double filled = 0;
        for (int i = 0; i < n && left > 0; i++) {
            int w = fullest[i];
            long strips = Math.max(1, Math.round(ticks[w] / (fullness[i] * capacity)));
            long taken = Math.min(left, strips * (numbers.widths[w] + numbers.ripKerf));
            filled += fullness[i] * taken;
            left -= taken;
        }
        return filled * length;
    }

    private int rank(int capacity) {
        int n = 0;
        for (int i = 0; i < presentCount; i++) {
            int w = present[i];
            double full = (double) highest(reach[w], capacity) / capacity;
            if (full == 0) continue;
            int j = n++;
            for (; j > 0 && fullness[j - 1] < full; j--) {
                fullness[j] = fullness[j - 1];
                fullest[j] = fullest[j - 1];
            }
            fullness[j] = full;
            fullest[j] = w;
        }
        return n;
    }

    private static int highest(long[] reach, int most) {
        int i = Math.min(most >> 6, reach.length - 1);
        long word = i < most >> 6 ? reach[i] : reach[i] & -1L >>> (63 - (most & 63));
        while (word == 0) word = reach[--i];
        return 64 * i + 63 - Long.numberOfLeadingZeros(word);
    }
}
