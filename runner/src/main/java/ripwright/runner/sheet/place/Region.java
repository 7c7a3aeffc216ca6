package ripwright.runner.sheet.place;

import java.math.BigInteger;

/**
 * A patch of a board's face, in nanometers of the board's frame: x along the grain from the marked end, y across from the
 * left edge. Its left side runs along the grain; its right side may slope, as the edge of a tapered board does.
 *
 * @param from x where it starts
 * @param to x where it ends
 * @param left y of its left side
 * @param right y of its right side at {@code from}
 * @param rightAtEnd y of its right side at {@code to}
 */
public record Region(long from, long to, long left, long right, long rightAtEnd) {
    /** Refuses what is turned inside out. */
    public Region {
        if (to < from || right < left || rightAtEnd < left)
            throw new IllegalArgumentException(
                    "No region: x " + from + ".." + to + ", y " + left + ".." + right + " and " + rightAtEnd + " nm.");
    }

    /** A rectangle. */
    public static Region of(long from, long to, long left, long right) {
        return new Region(from, to, left, right, right);
    }

    /** How long it is. */
    public long length() {
        return to - from;
    }

    /** How wide it is at its narrow end. */
    public long width() {
        return Math.min(right, rightAtEnd) - left;
    }

    /** The part of it between two crosscuts, its right side as straight as before, rounded to the nanometer. */
    public Region between(long start, long end) {
        return new Region(start, end, left, rightAt(start), rightAt(end));
    }

    private long rightAt(long x) {
        if (right == rightAtEnd) return right;
        BigInteger rise = BigInteger.valueOf(rightAtEnd - right).multiply(BigInteger.valueOf(x - from));
        return right + rise.divide(BigInteger.valueOf(length())).longValueExact();
    }
}
