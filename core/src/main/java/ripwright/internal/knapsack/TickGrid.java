package ripwright.internal.knapsack;

/**
 * The ticks that lengths are counted in by programs with one place per tick: the greatest length that measures every
 * size with its kerf, or, where that would need too many ticks, a coarser one that rounds sizes up and room down.
 */
public final class TickGrid {
    public final long tick; // nanometers
    public final boolean even; // whether every size is a whole number of ticks

    /**
     * A grid for those sizes.
     *
     * @param sizes nanometers, a kerf included in each
     * @param room the largest room, in nanometers, a kerf included
     * @param most how many ticks the largest room may have
     */
    public TickGrid(long[] sizes, long room, int most) {
        long gcd = 0;
        for (long size : sizes) gcd = gcd(gcd, size);
        tick = Math.max(Math.max(gcd, 1), (Math.max(room, 1) + most - 1) / most);
        even = gcd % tick == 0;
    }

    private static long gcd(long a, long b) {
        return b == 0 ? a : gcd(b, a % b);
    }

    /** Ticks that a size takes. */
    public int of(long size) {
        return (int) ((size + tick - 1) / tick);
    }

    /** Ticks that a room has; none when there is no room. */
    public int in(long room) {
        return room <= 0 ? 0 : (int) (room / tick);
    }

    /**
     * Ticks that {@code count} sizes may come to which together just fit into a room: where sizes are rounded up and the room
     * down, up to one for each beyond {@link #in}. What comes to so many may still be too long.
     */
    public int mostIn(long room, int count) {
        return room <= 0 ? 0 : in(room) + (even ? 0 : count);
    }
}
