package ripwright.pattern;

/** The blanks still to be made, and what each is worth to whoever cuts now. */
final class Pool {
    final int[] left; // left[p]: blanks of part p still to be made
    final double[] worth; // worth[p]: of one of them
    final boolean[] barred; // barred[g]: no blank of together group g may come from the board at hand

    Pool(int[] left, double[] worth, int groups) {
        this.left = left;
        this.worth = worth;
        barred = new boolean[groups];
    }

    boolean offers(PartNumbers part, int board) {
        return left[part.index] > 0 && part.fits[board] && (part.group < 0 || !barred[part.group]);
    }

    boolean empty() {
        for (int count : left) if (count > 0) return false;
        return true;
    }
}
