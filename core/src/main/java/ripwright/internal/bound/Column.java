package ripwright.internal.bound;

import java.util.stream.IntStream;
import ripwright.internal.pricing.Pattern;

/**
 * A layout in a linear program.
 *
 * @param pattern the layout
 * @param made how many blanks of each part type it makes
 * @param types the types it makes any of
 * @param inSection the most it makes of each type in one section
 * @param cost what the board costs less what it fetches, and its labor, in scaled money
 */
@SuppressWarnings("ArrayRecordComponent") // never changed once made, never compared
public record Column(Pattern pattern, int[] made, int[] types, int[] inSection, long cost) {
    /** The layout that is worth so much at those prices. */
    public static Column of(Demand demand, Pattern pattern, long[] prices) {
        int[] made = pattern.made(demand.wanted.length);
        long blanks = 0;
        for (int k = 0; k < made.length; k++) blanks += made[k] * prices[k];
        int[] types = IntStream.range(0, made.length).filter(k -> made[k] > 0).toArray();
        return new Column(
                pattern,
                made,
                types,
                inSection(pattern, made.length),
                demand.cost[pattern.boardType()] - (pattern.worth() - blanks));
    }

    private static int[] inSection(Pattern pattern, int parts) {
        int[] most = new int[parts];
        for (Pattern.Section section : pattern.sections()) {
            int[] here = new int[parts];
            for (Pattern.Strip strip : section.strips()) for (int type : strip.partTypes()) here[type]++;
            for (int k = 0; k < parts; k++) most[k] = Math.max(most[k], here[k]);
        }
        return most;
    }

    /** What a layout costs beyond its board, at a unit of so many money. */
    public double beyondBoard(Demand demand, double unit) {
        return (cost - demand.cost[pattern.boardType()]) / unit;
    }
}
