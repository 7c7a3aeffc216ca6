package ripwright.internal.onedimensional;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Fills strips of ripped stock by best fit, longest blank first: each goes where it leaves the least; where it fits nowhere
 * a new board is begun, the one that is cheapest for its length.
 *
 * @see "D. S. Johnson et al., Worst-case performance bounds for simple one-dimensional packing algorithms, SIAM Journal on
 *     Computing 3 (1974) 299-325"
 */
public final class BestFit {
    private final RippedStock stock;
    private final Integer[] longestFirst; // types of parts

    BestFit(RippedStock stock) {
        this.stock = stock;
        longestFirst = new Integer[stock.parts()];
        Arrays.setAll(longestFirst, k -> k);
        Arrays.sort(longestFirst, (a, b) -> Integer.compare(stock.ticks(b), stock.ticks(a)));
    }

    /** A strip being filled. */
    private static final class Open {
        final int boardType;
        final List<Integer> types = new ArrayList<>();
        int room;

        Open(int boardType, int room) {
            this.boardType = boardType;
            this.room = room;
        }
    }

    /** What was begun, completed as far as there are boards. */
    PartialCutting completed(PartialCutting begun) {
        List<Open> open = new ArrayList<>();
        List<Open> full = new ArrayList<>();
        int shortest = shortestLeft(begun);
        int[] free = begun.free();
        for (int k : longestFirst) {
            for (int n = begun.left(k); n > 0; n--) {
                Open strip = tightest(open, k);
                if (strip == null) {
                    int board = cheapest(free, k);
                    if (board < 0) break;
                    free[board]--;
                    strip = new Open(board, stock.room(board));
                    open.add(strip);
                }
                strip.types.add(k);
                strip.room -= stock.ticks(k);
                if (strip.room < shortest && open.remove(strip)) full.add(strip);
            }
        }
        PartialCutting completed = begun.copy();
        full.addAll(open);
        for (Open strip : full)
            completed.cut(new RippedStock.Strip(
                    strip.boardType,
                    strip.types.stream().mapToInt(k -> k).sorted().toArray()));
        return completed.onCheapest();
    }

    private int shortestLeft(PartialCutting begun) {
        int shortest = Integer.MAX_VALUE;
        for (int k : longestFirst) if (begun.left(k) > 0) shortest = Math.min(shortest, stock.ticks(k));
        return shortest;
    }

    private @Nullable Open tightest(List<Open> open, int k) {
        Open tightest = null;
        for (Open strip : open)
            if (stock.ticks(k) <= strip.room
                    && stock.takes(strip.boardType, k)
                    && (tightest == null || strip.room < tightest.room)) tightest = strip;
        return tightest;
    }

    private int cheapest(int[] free, int k) {
        int cheapest = -1;
        for (int s = 0; s < free.length; s++)
            if (free[s] > 0 && stock.takes(s, k) && (cheapest < 0 || forItsLength(s) < forItsLength(cheapest)))
                cheapest = s;
        return cheapest;
    }

    private double forItsLength(int boardType) {
        return (double) stock.cost(boardType) / stock.room(boardType);
    }
}
