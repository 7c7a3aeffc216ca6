package ripwright.internal.pricing;

import ripwright.internal.model.BoardNumbers;
import ripwright.internal.model.ScaledLabor;
import ripwright.internal.model.ScaledMoney;
import ripwright.measure.OnePlace;

/**
 * A board without its defects, as the pricing problem sees it: for a section of t ticks the greatest usable width it can
 * have, wherever it lies, and what cutting it costs. A relaxation: defects are left out, and a tapered or crooked board is
 * taken where it is best for each length by itself. Of a board that is alike along its length it is exact. Widths are
 * reckoned when first asked for; one step each.
 */
public final class BoardProfile {
    private final BoardClass wood;
    private final BoardNumbers board;
    private final long fullRate; // money a tick of full-width leftover fetches; 0 when too narrow to keep
    private final boolean alike; // whether sections of all lengths have the same usable width
    private final long always; // nanometers of it
    private final long[] usable; // usable[t]: what a section of t ticks has, once known
    private final int[] room; // and the place of its widest sum
    private final boolean[] known;
    private final int alwaysRoom;
    final int length; // ticks of its room
    final boolean straightens; // whether a section of it has to be straightened
    final long flush; // what is paid back when the sections reach from trim to trim
    final long open; // and when they do not
    final long trimming; // what cutting off both end trims costs

    BoardProfile(BoardClass wood, BoardNumbers board, ScaledLabor charges, ScaledMoney money) {
        this.wood = wood;
        this.board = board;
        length = Math.toIntExact(wood.room(board) / wood.lengthTick);
        straightens = board.mustStraighten(true) && (board.edgeLoss > 0 || board.crook > 0);
        alike = board.crook == 0 && !board.tapered();
        usable = new long[alike ? 0 : wood.length + 1];
        room = new int[usable.length];
        known = new boolean[usable.length];
        always = alike ? reckonUsable(1) : 0;
        alwaysRoom = alike ? reckonRoom(always) : 0;
        boolean nearTrim = !OnePlace.are(board.from, 0);
        boolean farTrim = !OnePlace.are(board.to, board.length);
        int trims = (nearTrim ? 1 : 0) + (farTrim ? 1 : 0);
        trimming = trims * charges.crosscut();
        flush = (1 - trims) * charges.crosscut();
        open = nearTrim && farTrim ? -charges.crosscut() : 0;
        long widest = Math.max(board.widthNear, board.widthFar);
        boolean keeps = widest >= wood.numbers.keepWidth;
        fullRate = keeps ? ScaledMoney.ceil(board.salvageRate * money.perMillionth() * widest * wood.lengthTick) : 0;
    }

    /** Whether sections of all lengths, wherever they lie, have the same usable width. */
    boolean alike() {
        return alike;
    }

    /** Nanometers a section of {@code t} ticks has for its strips; perhaps none, or less. */
    long usable(int t) {
        if (alike) return always;
        if (!known[t]) know(t);
        return usable[t];
    }

    private long reckonUsable(int t) {
        long s = Math.min(wood.shortest(t), board.length);
        return sectionWidth(s) - board.referenceLoss(true, s) - board.otherLoss(true);
    }

    private long sectionWidth(long s) {
        if (!board.tapered()) return board.widthNear;
        boolean nearWider = board.widthNear > board.widthFar;
        long from = nearWider ? board.from : Math.max(board.from, board.to - s);
        long to = nearWider ? Math.min(board.to, board.from + s) : board.to;
        return board.sectionWidth(from, to);
    }

    /** The place of the widest sum of strips a section has room for; -1 when it has no room. */
    int room(int t) {
        if (alike) return alwaysRoom;
        if (!known[t]) know(t);
        return room[t];
    }

    private int reckonRoom(long usable) {
        return usable <= 0 ? -1 : wood.sums.within(usable + wood.numbers.ripKerf);
    }

    private void know(int t) {
        usable[t] = reckonUsable(t);
        room[t] = reckonRoom(usable[t]);
        known[t] = true;
    }

    /** Nanometers a section of {@code t} ticks has for its strips, what is beside them, and a kerf for each strip. */
    long widthBeside(int t) {
        return usable(t) + board.otherLoss(true);
    }

    /** How much wider, on the mean, the piece beside the strips is than at its narrow end. */
    long slant(int t) {
        if (!board.tapered()) return 0;
        double whole = Math.abs(board.widthNear - board.widthFar);
        return (long) (whole * wood.longest(t) / board.length / 2) + 2;
    }

    /** Whether a room of so many ticks may leave a full-width offcut. */
    boolean leaves(int ticks) {
        return fullRate > 0 && ticks >= wood.keepTicks;
    }

    /** What a full-width leftover fetches that is left of so many ticks, once one kerf is taken off. */
    long leftover(int ticks) {
        return fullRate * (ticks + wood.spill - wood.crosscutTicks);
    }

    /** Scaled money a tick of full-width leftover fetches. */
    long fullRate() {
        return fullRate;
    }

    /**
     * What all sections and leftovers of a layout may lose together, against so much for each tick, that is worth more than
     * {@code best}.
     */
    double slack(double perTick, long best, int spill) {
        double paidBack = Math.max(0, Math.max(flush, open));
        return (perTick * length + paidBack + (double) fullRate * spill - best) * (1 + 1e-9) + 64;
    }
}
