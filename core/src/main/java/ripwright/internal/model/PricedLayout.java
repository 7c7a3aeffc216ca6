package ripwright.internal.model;

import java.util.Arrays;
import ripwright.internal.geometry.Layout;

/**
 * A board's whole layout with what follows from it alone. Two are equal when their layouts are.
 *
 * @param layout how the board is cut
 * @param made the part of every blank, in rising order
 * @param widths the distinct widths of its strips, in nanometers; none of ripped stock
 * @param cost what the board costs, in millionths
 * @param salvage what its offcuts are worth, in millionths
 * @param labor what its rips and crosscuts cost without rip settings, in millionths
 * @param feet the finished wood of its blanks, in the unit of {@link JobNumbers#feet}
 * @param testEnds what it leaves for test blanks
 */
@SuppressWarnings("ArrayRecordComponent") // compared by layout alone; never changed once made
public record PricedLayout(
        Layout layout,
        int[] made,
        long[] widths,
        long cost,
        long salvage,
        long labor,
        long feet,
        TestWoodPieces testEnds) {
    /** What the board costs for itself: stock less salvage, and labor, in millionths. */
    public long net() {
        return cost - salvage + labor;
    }

    /** The same on another board that differs in name alone. */
    public PricedLayout on(int board) {
        return new PricedLayout(
                new Layout(board, layout.sections()), made, widths, cost, salvage, labor, feet, testEnds);
    }

    @Override
    public boolean equals(@org.jspecify.annotations.Nullable Object other) {
        return other instanceof PricedLayout priced && layout.equals(priced.layout);
    }

    @Override
    public int hashCode() {
        return layout.hashCode();
    }

    @Override
    public String toString() {
        return layout + " making " + Arrays.toString(made);
    }
}
