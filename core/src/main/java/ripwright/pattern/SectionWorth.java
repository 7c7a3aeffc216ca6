package ripwright.pattern;

import java.util.Arrays;

/**
 * What the best section of each length is worth on each of a wood's boards: a knapsack of strips over the width, reckoned
 * only for lengths somebody asks for, and then for all boards at once. No more strips of a width are worth their whole
 * price than all blanks of that width together; beside the strips lies what the rack may want.
 */
final class SectionWorth {
    private final Wood wood;
    private final Charges charges;
    private final StripWorth strips;
    private final BoardShape[] shapes;
    private final long[][] worth; // worth[i][t]: of the best section t ticks long on board i, once reckoned
    private final boolean[] reckoned; // the lengths that are
    private final boolean[] rises; // whether some strip of t ticks is worth more than one of a tick less
    private final double[] perTick; // perTick[t]: no section of t ticks is worth more for each tick of width
    private final long[] choice; // choice[u]: worth of the best strips in at most u ticks of width
    private final StripPasses passes;

    SectionWorth(Wood wood, Charges charges, StripWorth strips, BoardShape[] shapes) {
        this.wood = wood;
        this.charges = charges;
        this.strips = strips;
        this.shapes = shapes;
        worth = new long[shapes.length][wood.length + 1];
        reckoned = new boolean[wood.length + 1];
        rises = new boolean[wood.length + 1];
        perTick = new double[wood.length + 1];
        choice = new long[wood.width + 1];
        passes = new StripPasses(wood, charges, strips);
    }

    /** Forgets what was reckoned at other prices. */
    void price() {
        Arrays.fill(reckoned, false);
        Arrays.fill(rises, false);
        for (int t = 0; t <= wood.length; t++) {
            double most = wood.offcutRate * wood.longest(t) * wood.widthTick;
            for (int v = 0; v < wood.widths.length; v++)
                most = Math.max(most, (double) (strips.best(v, t) - charges.rip()) / wood.stripTicks[v]);
            perTick[t] = most;
        }
        for (int v = 0; v < wood.widths.length; v++)
            for (int t = 1; t <= wood.length; t++) rises[t] |= strips.best(v, t) > strips.best(v, t - 1);
    }

    boolean isReckoned(int t) {
        return reckoned[t];
    }

    /** Whether some strip of {@code t} ticks is worth more than one of a tick less. */
    boolean rises(int t) {
        return rises[t];
    }

    /** At least the worth of any section of {@code t} ticks for each tick of width. */
    double perTick(int t) {
        return perTick[t];
    }

    /** At least the worth of the best section of {@code t} ticks on board {@code i}; {@link StripWorth#NONE} for none. */
    long atMost(int i, int t) {
        if (reckoned[t]) return worth[i][t];
        int room = shapes[i].usableTicks(t);
        if (room < 0) return StripWorth.NONE;
        double beside = wood.offcutRate > 0 ? Math.max(0, besideWidth(i, t)) - (double) room * wood.widthTick : 0;
        double most = perTick[t] * room + Math.max(0, beside) * wood.offcutRate * wood.longest(t);
        return Coins.ceil(most) + room - straightening(i) - charges.crosscut();
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
        passes.of(t);
        passes.fill(choice, wood.width);
        for (int i = 0; i < shapes.length; i++) worth[i][t] = ofBoard(i, t);
        reckoned[t] = true;
    }

    private long ofBoard(int i, int t) {
        if (t > shapes[i].length) return StripWorth.NONE;
        int room = shapes[i].usableTicks(t);
        if (room < 0) return StripWorth.NONE;
        long most = choice[room];
        int widest = widestBeside(i, t, room);
        if (widest >= 0) {
            long each = tickBeside(t);
            long best = StripWorth.NONE;
            for (int u = 0; u <= widest; u++) best = Math.max(best, choice[u] - each * u);
            most = Math.max(most, best + allBeside(i, t));
        }
        return most - straightening(i) - charges.crosscut();
    }

    /** The most ticks strips may take where what is beside them is to be kept; -1 when it cannot be. */
    private int widestBeside(int i, int t, int room) {
        if (wood.offcutRate == 0 || wood.longest(t) < wood.numbers.keepLength) return -1;
        long left = shapes[i].widthBeside(t) - wood.numbers.keepWidth;
        return left < 0 ? -1 : (int) Math.min(room, left / wood.widthTick);
    }

    private long tickBeside(int t) {
        double each = wood.offcutRate * wood.longest(t) * wood.widthTick;
        return (long) (each - each * 1e-12);
    }

    private long allBeside(int i, int t) {
        return Coins.ceil(wood.offcutRate * wood.longest(t) * besideWidth(i, t));
    }

    /** How many strips of each width the best section has, as {@link #worth} reckoned it. */
    int[] strips(int i, int t) {
        passes.of(t);
        int room = shapes[i].usableTicks(t);
        passes.fill(choice, room);
        long most = choice[room];
        int taken = room;
        int widest = widestBeside(i, t, room);
        for (int u = 0; u <= widest; u++) {
            long with = choice[u] - tickBeside(t) * u + allBeside(i, t);
            if (with <= most) continue;
            most = with;
            taken = u;
        }
        return passes.trace(taken, choice);
    }
}
