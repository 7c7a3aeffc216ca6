package ripwright.internal.knapsack;

import java.util.Arrays;

/**
 * The passes of a knapsack with exact fillings, kept so that a filling can be traced back: one pass for a piece of which
 * there are enough, else one for one copy, two, four, ... of it.
 */
public final class KnapsackPasses {
    /** The worth of what cannot be: so low that no sum with it is taken for a worth. */
    public static final long NONE = Long.MIN_VALUE / 4;

    private final int words;
    private int count;
    private int[] piece = new int[16];
    private int[] copies = new int[16]; // copies[k] that pass k takes at once; 0: as many as fit, one by one
    private long[][] taken = new long[16][]; // taken[k], bit t: the best filling of exactly t ticks so far takes pass k

    public KnapsackPasses(int ticks) {
        words = (ticks >> 6) + 1;
    }

    public void clear() {
        count = 0;
    }

    /**
     * Offers a piece to all fillings.
     *
     * @param worth worth[t]: of the best filling of exactly t ticks so far, or {@link #NONE}
     * @param reached no filling so far takes more ticks
     * @return no filling takes more ticks now
     */
    public int add(long[] worth, int reached, int index, int ticks, long price, int most) {
        int room = worth.length - 1;
        int fit = room / ticks;
        if (most >= fit) {
            free(worth, pass(index, 0), ticks, price);
            return room;
        }
        int end = reached;
        int left = most;
        for (int take = 1; left > 0; take = Math.min(2 * take, left)) {
            take = Math.min(take, left);
            int step = take * ticks;
            end = Math.min(room, end + step);
            once(worth, pass(index, take), step, take * price, end);
            left -= take;
            if (left == 0) break;
        }
        return end;
    }

    private long[] pass(int index, int take) {
        if (count == piece.length) {
            piece = Arrays.copyOf(piece, 2 * count);
            copies = Arrays.copyOf(copies, 2 * count);
            taken = Arrays.copyOf(taken, 2 * count);
        }
        piece[count] = index;
        copies[count] = take;
        long[] bits = taken[count];
        if (bits == null) {
            bits = new long[words];
            taken[count] = bits;
        } else {
            Arrays.fill(bits, 0);
        }
        count++;
        return bits;
    }

    private static void free(long[] worth, long[] bits, int step, long price) {
        for (int t = step; t < worth.length; t++) {
            long with = worth[t - step] + price;
            if (with > worth[t] && worth[t - step] != NONE) {
                worth[t] = with;
                bits[t >> 6] |= 1L << t;
            }
        }
    }

    private static void once(long[] worth, long[] bits, int step, long price, int end) {
        for (int t = end; t >= step; t--) {
            long with = worth[t - step] + price;
            if (with > worth[t] && worth[t - step] != NONE) {
                worth[t] = with;
                bits[t >> 6] |= 1L << t;
            }
        }
    }

    /** The types of the pieces in the best filling of exactly {@code ticks}. */
    public int[] trace(int ticks, int[] types, int[] sizes) {
        int[] chosen = new int[16];
        int n = 0;
        int t = ticks;
        for (int k = count - 1; k >= 0; k--) {
            while ((taken[k][t >> 6] >>> t & 1) != 0) {
                int take = Math.max(1, copies[k]);
                if (n + take > chosen.length) chosen = Arrays.copyOf(chosen, 2 * (n + take));
                Arrays.fill(chosen, n, n + take, types[piece[k]]);
                n += take;
                t -= take * sizes[piece[k]];
                if (copies[k] > 0) break;
            }
        }
        return Arrays.copyOf(chosen, n);
    }
}
