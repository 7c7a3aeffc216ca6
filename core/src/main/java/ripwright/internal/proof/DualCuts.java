package ripwright.internal.proof;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import ripwright.internal.bound.Demand;

/**
 * One inequality on sets of whole boards for each vector of dual prices that was ever asked. Let p be prices of the item
 * types and w_b(p) the pricing problem's value on a board b, which no layout of b exceeds. A set S that makes the bill
 * brings in at least what all blanks cost at p, so it costs at least sum_{b in S} c_b + sum_k p_k d_k - sum_{b in S} w_b(p),
 * with c_b what b costs and d_k the demand. Where only boards cost money p may be scaled at will, and a set for which the
 * last two sums leave something over makes the bill at no cost at all: the row is then a feasibility cut, as of Benders.
 * Whole numbers throughout. One pass over the rows for each set that is asked about.
 *
 * @see "J. F. Benders, Partitioning procedures for solving mixed-variables programming problems, Numerische Mathematik 4
 *     (1962) 238-252"
 */
public final class DualCuts {
    private final Demand demand;
    private final List<long[]> prices = new ArrayList<>(); // of a blank of each type
    private final List<long[]> worths = new ArrayList<>(); // of a board of each type, none below zero
    private final List<Long> needs = new ArrayList<>(); // prices of the whole bill
    private final List<Integer[]> orders = new ArrayList<>(); // types, those first that bring in most for their cost

    DualCuts(Demand demand) {
        this.demand = demand;
        if (demand.boardsAlone) add(new long[demand.wanted.length], new long[demand.copies.length]);
    }

    /** Keeps what those prices say. */
    void add(long[] prices, long[] worths) {
        long need = 0;
        for (int k = 0; k < prices.length; k++) need += prices[k] * demand.wanted[k];
        long[] positive = worths.clone();
        for (int b = 0; b < positive.length; b++) positive[b] = Math.max(0, positive[b]);
        this.prices.add(prices);
        this.worths.add(positive);
        needs.add(need);
        orders.add(order(positive));
    }

    private Integer[] order(long[] worths) {
        Integer[] order = new Integer[worths.length];
        Arrays.setAll(order, b -> b);
        Arrays.sort(
                order,
                (a, b) -> Double.compare(
                        (double) worths[b] / Math.max(1, demand.cost[b]),
                        (double) worths[a] / Math.max(1, demand.cost[a])));
        return order;
    }

    /** All that is kept. */
    List<ProofRecord.Row> recorded() {
        return IntStream.range(0, needs.size())
                .mapToObj(r -> new ProofRecord.Row(prices.get(r), needs.get(r), worths.get(r)))
                .toList();
    }

    /**
     * What no plan costs less than that cuts so many boards of the first {@code decided} types, in scaled money;
     * {@link Long#MAX_VALUE} when there is no such plan.
     */
    long least(int[] many, int decided) {
        long least = 0;
        for (int r = 0; r < needs.size() && least < Long.MAX_VALUE; r++)
            least = Math.max(least, demand.boardsAlone ? bought(r, many, decided) : settled(r, many, decided));
        return least;
    }

    /** The price of the boards decided, and of the cheapest shares of others that bring in what is still needed. */
    private long bought(int r, int[] many, int decided) {
        long[] worth = worths.get(r);
        long cost = 0;
        long need = needs.get(r);
        for (int b = 0; b < decided; b++) {
            cost += many[b] * demand.cost[b];
            need -= many[b] * worth[b];
        }
        for (int b : orders.get(r)) {
            if (need <= 0) return cost;
            if (b < decided || worth[b] == 0) continue;
            long copies = demand.copies[b];
            long all = worth[b] * copies;
            if (all > need) return cost + (long) Math.floor((double) demand.cost[b] * need / worth[b] * (1 - 1e-12));
            cost += demand.cost[b] * copies;
            need -= all;
        }
        return need <= 0 ? cost : Long.MAX_VALUE;
    }

    private long settled(int r, int[] many, int decided) {
        long[] worth = worths.get(r);
        long sum = needs.get(r) + demand.due;
        for (int b = 0; b < worth.length; b++) {
            long cost = demand.cost[b] - worth[b];
            sum += b < decided ? many[b] * cost : Math.min(0, cost) * demand.copies[b];
        }
        return sum;
    }
}
