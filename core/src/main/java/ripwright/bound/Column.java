package ripwright.bound;

import ripwright.pattern.Sketch;

/**
 * A layout in a linear program.
 *
 * @param sketch the layout
 * @param made how many blanks of each part kind it makes
 * @param cost what the board costs less what it fetches, and its labor, in coins
 */
@SuppressWarnings("ArrayRecordComponent") // never changed once made, never compared
record Column(Sketch sketch, int[] made, long cost) {
    /** The layout that is worth so much at those prices. */
    static Column of(Demand demand, Sketch sketch, long[] prices) {
        int[] made = sketch.made(demand.wanted.length);
        long blanks = 0;
        for (int k = 0; k < made.length; k++) blanks += made[k] * prices[k];
        return new Column(sketch, made, demand.cost[sketch.boardKind()] - (sketch.worth() - blanks));
    }
}
