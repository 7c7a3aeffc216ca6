package ripwright.bench;

import java.lang.management.ManagementFactory;
import java.lang.management.MemoryPoolMXBean;
import java.lang.management.MemoryType;
import java.math.BigDecimal;
import java.time.Duration;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicLong;
import ripwright.Options;
import ripwright.Planner;
import ripwright.bill.Part;
import ripwright.internal.firstfit.FirstFitDecreasing;
import ripwright.internal.geometry.Layout;
import ripwright.job.Job;
import ripwright.plan.Plan;
import ripwright.testing.LayoutCheck;
import ripwright.testing.LayoutCost;
import ripwright.testing.PlainOptaPlanner;

/** Plans one job by the hand rule, by plain OptaPlanner and by the planner, each within the same time. */
final class Contest {
    private final Case drawn;
    private final BigDecimal seconds;

    Contest(Case drawn, BigDecimal seconds) {
        this.drawn = drawn;
        this.seconds = seconds;
    }

    /** What came of it. */
    Outcome outcome() {
        Job job = drawn.within(seconds);
        Duration time = Duration.ofMillis(seconds.movePointRight(3).longValue());
        Optional<BigDecimal> hand = net(job, FirstFitDecreasing.plan(job));
        Optional<BigDecimal> plain = net(job, PlainOptaPlanner.plan(job, time, drawn.seed()));

        AtomicLong best = new AtomicLong();
        forgetPeaks();
        long begun = System.nanoTime();
        Plan plan = Planner.plan(
                job,
                Options.defaults()
                        .withListener(progress -> best.set(progress.elapsed().toMillis())));
        double elapsed = (System.nanoTime() - begun) / 1e9;
        boolean complete = plan.status() == Plan.Status.COMPLETE;
        return new Outcome(
                hand,
                plain,
                complete ? Optional.of(plan.cost().net()) : Optional.empty(),
                plan.cost(),
                drawn.known(),
                best.get() / 1e3,
                elapsed,
                peaks());
    }

    private static Optional<BigDecimal> net(Job job, List<Layout> layouts) {
        LayoutCheck check = new LayoutCheck(job, layouts);
        if (!check.faults().isEmpty()) throw new IllegalStateException("No shop can cut it: " + check.faults());
        int wanted = job.parts().stream().mapToInt(Part::count).sum();
        if (Arrays.stream(check.made()).sum() < wanted) return Optional.empty();
        return Optional.of(new LayoutCost(job, layouts).net().rounded());
    }

    private static List<MemoryPoolMXBean> heap() {
        return ManagementFactory.getMemoryPoolMXBeans().stream()
                .filter(pool -> pool.getType() == MemoryType.HEAP)
                .toList();
    }

    private static void forgetPeaks() {
        System.gc();
        heap().forEach(MemoryPoolMXBean::resetPeakUsage);
    }

    /** Each pool at its own worst, so rather too much than too little. */
    private static double peaks() {
        return heap().stream().mapToLong(pool -> pool.getPeakUsage().getUsed()).sum() / 1e6;
    }
}
