package ripwright.internal.onedimensional;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Strips of ripped stock that are filled so far, the blanks that are still to be made, and the boards left for them. */
public final class PartialCutting {
    private final RippedStock stock;
    private final List<RippedStock.Strip> strips;
    private final int[] left; // left[k]: blanks of type k still to be made
    private final int[] free; // free[s]: boards of type s that are whole
    private long cost; // millionths

    /** None yet. */
    PartialCutting(RippedStock stock) {
        this.stock = stock;
        strips = new ArrayList<>();
        left = stock.wanted();
        free = stock.copies();
    }

    private PartialCutting(PartialCutting other) {
        stock = other.stock;
        strips = new ArrayList<>(other.strips);
        left = other.left.clone();
        free = other.free.clone();
        cost = other.cost;
    }

    /** The same, to go on from. */
    PartialCutting copy() {
        return new PartialCutting(this);
    }

    /** Cuts a strip, if there are a board and blanks for it; whether there were. */
    boolean cut(RippedStock.Strip strip) {
        if (free[strip.boardType()] == 0) return false;
        int[] types = strip.partTypes();
        for (int i = 0; i < types.length; i++) {
            if (left[types[i]]-- > 0) continue;
            for (; i >= 0; i--) left[types[i]]++;
            return false;
        }
        free[strip.boardType()]--;
        strips.add(strip);
        cost += stock.cost(strip.boardType());
        return true;
    }

    /** Every strip on the cheapest board it fits on, the longest first. */
    PartialCutting onCheapest() {
        List<RippedStock.Strip> longestFirst = new ArrayList<>(strips);
        longestFirst.sort((a, b) -> Integer.compare(ticks(b), ticks(a)));
        PartialCutting cheaper = new PartialCutting(stock);
        for (RippedStock.Strip strip : longestFirst) {
            int cheapest = -1;
            for (int s = 0; s < free.length; s++) {
                boolean cheap = cheapest < 0 || stock.cost(s) < stock.cost(cheapest);
                if (cheap && cheaper.free[s] > 0 && fits(strip, s)) cheapest = s;
            }
            if (cheapest < 0 || !cheaper.cut(new RippedStock.Strip(cheapest, strip.partTypes()))) return this;
        }
        return cheaper.cost < cost ? cheaper : this;
    }

    private int ticks(RippedStock.Strip strip) {
        return Arrays.stream(strip.partTypes()).map(stock::ticks).sum();
    }

    private boolean fits(RippedStock.Strip strip, int boardType) {
        return ticks(strip) <= stock.room(boardType)
                && Arrays.stream(strip.partTypes()).allMatch(k -> stock.takes(boardType, k));
    }

    boolean complete() {
        return Arrays.stream(left).allMatch(count -> count == 0);
    }

    /** Whether it makes everything for less than {@code other}, or that does not make everything. */
    boolean betterThan(PartialCutting other) {
        if (!complete()) return false;
        return !other.complete() || cost < other.cost;
    }

    long cost() {
        return cost;
    }

    List<RippedStock.Strip> strips() {
        return List.copyOf(strips);
    }

    int left(int partType) {
        return left[partType];
    }

    int[] left() {
        return left.clone();
    }

    int free(int boardType) {
        return free[boardType];
    }

    int[] free() {
        return free.clone();
    }
}
