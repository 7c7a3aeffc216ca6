package ripwright.internal.replay;

import ripwright.measure.Length;
import ripwright.measure.OnePlace;
import ripwright.measure.Unit;

/** How closely a reader of a plan compares lengths, in nanometers: what differs by at most 0.0005 in is the same. */
public final class Tolerance {
    public static final long NANOMETERS = OnePlace.NANOMETERS;

    /** How far off a distance between two places can be that were written with six decimals each, and one reckoned. */
    public static final long OF_PRINT =
            51; // three roundings to a millionth of an inch come to 39.6, those to nanometers included

    private static final long DECIMALS = 1_000_000;

    private Tolerance() {}

    public static boolean same(long one, long other) {
        return Math.abs(one - other) <= NANOMETERS;
    }

    public static boolean same(Length one, Length other) {
        return same(one.nanometers(), other.nanometers());
    }

    public static boolean less(long one, long other) {
        return one < other - NANOMETERS;
    }

    public static boolean more(long one, long other) {
        return one > other + NANOMETERS;
    }

    /**
     * Whether both are the same in a plan's file, which has six decimals: the exact comparison, by which widths are
     * told apart, for a plan that was read back.
     */
    public static boolean sameAsPrinted(Length one, Length other, Unit unit) {
        return Math.abs(one.nanometers() - other.nanometers()) <= ofPrint(unit);
    }

    /** The same where a plan's lengths are in that unit: six decimals of a millimeter are exact. */
    public static long ofDistance(Unit unit) {
        return unit == Unit.MILLIMETER ? 0 : OF_PRINT;
    }

    /** How far apart two equal lengths can be once both were written in a file, one of them from a rounded one. */
    public static long ofPrint(Unit unit) {
        return unit.nanometers() / DECIMALS;
    }
}
