package ripwright.internal.proof;

import java.util.PriorityQueue;
import java.util.function.BooleanSupplier;
import org.jspecify.annotations.Nullable;
import ripwright.internal.bound.Demand;

/** Sets of boards, one after another, always one that may be the cheapest: best first, decided type by type. */
public final class BoardSets {
    private static final int MOST_NODES = 400_000;

    private final Demand demand;
    private final DualCuts rows;
    private final PriorityQueue<Node> open = new PriorityQueue<>();
    private final BooleanSupplier stop;
    private boolean full;

    /** A set whose first types are decided. */
    @SuppressWarnings("ArrayRecordComponent") // never changed once made, never compared
    private record Node(int[] many, int decided, long least) implements Comparable<Node> {
        @Override
        public int compareTo(Node other) {
            int order = Long.compare(least, other.least);
            return order != 0 ? order : Integer.compare(other.decided, decided);
        }
    }

    BoardSets(Demand demand, DualCuts rows, BooleanSupplier stop) {
        this.demand = demand;
        this.rows = rows;
        this.stop = stop;
        offer(new int[demand.copies.length], 0);
    }

    private void offer(int[] many, int decided) {
        long least = rows.least(many, decided);
        if (least < Long.MAX_VALUE) open.add(new Node(many, decided, least));
    }

    /** What no set costs less than that was not handed out yet; {@link Long#MAX_VALUE} when all were. */
    long least() {
        Node first = open.peek();
        return first == null ? Long.MAX_VALUE : first.least;
    }

    /**
     * How many boards of each type the next set has; null when no set costs less than {@code most}, or there are too
     * many, or the time is up.
     */
    int @Nullable [] next(long most) {
        int n = 0;
        while (!full && ((n++ & 63) != 0 || !stop.getAsBoolean())) {
            Node node = open.peek();
            if (node == null || node.least >= most) return null;
            long least = rows.least(node.many, node.decided);
            open.poll();
            if (least == Long.MAX_VALUE) continue;
            if (least > node.least) {
                open.add(new Node(node.many, node.decided, least));
                continue;
            }
            if (node.decided == node.many.length) return node.many;
            for (int c = 0; c <= demand.copies[node.decided]; c++) {
                int[] many = node.many.clone();
                many[node.decided] = c;
                offer(many, node.decided + 1);
            }
            full = open.size() > MOST_NODES;
            if (full) open.add(node);
        }
        return null;
    }
}
