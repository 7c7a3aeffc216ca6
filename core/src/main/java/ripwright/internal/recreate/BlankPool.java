package ripwright.internal.recreate;

import ripwright.internal.model.PartNumbers;

/** The blanks still to be made, and what each is worth to whoever cuts now. */
public final class BlankPool {
    final int[] left; // left[p]: blanks of part p still to be made
    final double[] worth; // worth[p]: of one of them
    final boolean[] barred; // barred[g]: no blank of together group g may come from the board at hand
    final boolean[] closed; // closed[g]: nor from any other, as one board makes some of it already

    BlankPool(int[] left, double[] worth, int groups) {
        this.left = left;
        this.worth = worth;
        barred = new boolean[groups];
        closed = new boolean[groups];
    }

    /** The same, to try things on. */
    BlankPool copy() {
        BlankPool copy = new BlankPool(left.clone(), worth, barred.length);
        System.arraycopy(barred, 0, copy.barred, 0, barred.length);
        return copy;
    }

    boolean offers(PartNumbers part, int board) {
        return left[part.index] > 0 && part.fits[board] && (part.group < 0 || !barred[part.group]);
    }

    boolean empty() {
        for (int count : left) if (count > 0) return false;
        return true;
    }
}
