package ripwright.pattern;

import java.util.Arrays;
import java.util.List;

/**
 * The best layout of every board when each blank has a price: what its blanks are worth and its offcuts fetch, less what
 * its rips and crosscuts cost. No layout of a board is worth more than {@link #worth} says: where a program leaves
 * something out (defects, how tapered boards narrow along a layout, how few blanks of a kind there are over the whole
 * board) it errs upwards. Boards alike are priced once, and all boards that take the same parts share their strips and
 * sections. Serves one thread.
 *
 * @see "P. C. Gilmore, R. E. Gomory, Multistage cutting stock problems of two and more dimensions, Operations Research 13
 *     (1965) 94-120"
 */
public final class Oracle {
    private final WoodWorth[] woods;
    private final int[] woodOf; // woodOf[k]: of board kind k, or -1
    private final int[] placeIn; // its place there

    /** Builds the tables for a job. */
    public Oracle(JobNumbers numbers, Kinds kinds, Coins coins) {
        List<Wood> all = Wood.all(numbers, kinds, coins);
        Charges charges = Charges.of(numbers, coins);
        woods = new WoodWorth[all.size()];
        woodOf = new int[kinds.boards()];
        placeIn = new int[kinds.boards()];
        Arrays.fill(woodOf, -1);
        for (int w = 0; w < woods.length; w++) {
            Wood wood = all.get(w);
            woods[w] = new WoodWorth(wood, kinds, coins, charges);
            for (int i = 0; i < wood.boardKinds.length; i++) {
                woodOf[wood.boardKinds[i]] = w;
                placeIn[wood.boardKinds[i]] = i;
            }
        }
    }

    /** Reckons every board at those prices, one for each kind of parts, in coins, none below zero. */
    public void price(long[] prices) {
        for (WoodWorth wood : woods) wood.price(prices);
    }

    /** Whether a board of that kind can be cut at all. */
    public boolean cuts(int boardKind) {
        return woodOf[boardKind] >= 0 && worth(boardKind) != StripWorth.NONE;
    }

    /** What no layout of a board of that kind exceeds, in coins; very far below zero where there is none. */
    public long worth(int boardKind) {
        return woodOf[boardKind] < 0 ? StripWorth.NONE : woods[woodOf[boardKind]].worth(placeIn[boardKind]);
    }

    /** The layout that worth was reckoned for; only where {@link #cuts}. */
    public Sketch sketch(int boardKind) {
        return woods[woodOf[boardKind]].sketch(placeIn[boardKind]);
    }
}
