package ripwright.testing;

import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import ripwright.internal.firstfit.FirstFitBoard;
import ripwright.internal.firstfit.FirstFitDecreasing;
import ripwright.internal.geometry.Layout;
import ripwright.job.Job;
import ripwright.measure.Money;

/** Cuts the blanks that a search gives to a board by a simple rule: widest first, then longest, each where it first fits. */
final class PlainBench {
    private final Job job;
    private final long[] cost; // cost[b]: what a board costs
    private final long lack; // what a blank costs that is not made: a little more than the dearest board

    /** What came of a board, and its net cost with what it lacks, in millionths. */
    record Cut(Optional<Layout> layout, long cost) {}

    PlainBench(Job job) {
        this.job = job;
        cost = new long[job.boards().size()];
        for (int b = 0; b < cost.length; b++)
            cost[b] = millionths(new LayoutCost(job, List.of(new Layout(b, List.of()))).stock());
        lack = Arrays.stream(cost).max().orElse(0) + 1;
    }

    Job job() {
        return job;
    }

    int boards() {
        return cost.length;
    }

    long lack() {
        return lack;
    }

    /** Cuts those copies from that board. */
    Cut cut(int board, List<PlainCopy> copies) {
        FirstFitBoard hand = new FirstFitBoard(job, board);
        List<Integer> parts = new ArrayList<>();
        for (PlainCopy copy : copies) parts.add(copy.part());
        parts.sort(FirstFitDecreasing.order(job).thenComparing(Comparator.naturalOrder()));
        long lacking = 0;
        for (int part : parts) if (!hand.into(part)) lacking += lack;
        Optional<Layout> layout = hand.layout();
        return new Cut(layout, lacking + layout.map(this::net).orElse(0L));
    }

    private long net(Layout layout) {
        long stock = cost[layout.board()];
        if (job.salvage().signum() == 0 && job.labor().isEmpty()) return stock;
        LayoutCost exact = new LayoutCost(job, List.of(layout));
        return stock - millionths(exact.salvage()) + millionths(exact.labor());
    }

    private static long millionths(Money money) {
        return money.value()
                .bigDecimalValue(6, RoundingMode.HALF_UP)
                .movePointRight(6)
                .longValueExact();
    }
}
