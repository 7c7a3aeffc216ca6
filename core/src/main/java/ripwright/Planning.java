package ripwright;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.Duration;
import java.util.Arrays;
import java.util.OptionalInt;
import java.util.concurrent.CompletableFuture;
import java.util.function.BooleanSupplier;
import ripwright.bound.Floor;
import ripwright.job.Job;
import ripwright.job.Limits;
import ripwright.measure.Money;
import ripwright.pattern.JobNumbers;
import ripwright.pattern.Withheld;
import ripwright.plan.Plan;
import ripwright.replay.Replay;
import ripwright.sequence.NoTestWoodException;
import ripwright.sequence.Sequencer;
import ripwright.solve.Champion;
import ripwright.solve.Search;

/** One planning of one job, from the search to the replay. */
final class Planning {
    private static final int PATIENCE = 4; // rounds that bring nothing
    private static final int QUICK = 1; // the same, where a better answer comes later
    private static final int MOVES_PER_BLANK = 200;
    private static final int MOST_THREADS = 2;
    private static final double SHARE_FOR_WRITING = 0.03; // of the time given, for sequence and replay
    private static final double LEAST_SECONDS_FOR_WRITING = 0.1;
    private static final double SECONDS_FOR_FLOOR = 6; // where no time is given

    private final Job job;
    private final Options options;
    private final long begun = System.nanoTime();
    private final double seconds; // for the search; infinite when the job names no limit
    private CompletableFuture<Money> floor = new CompletableFuture<>(); // under plans that make the whole bill
    private volatile BigDecimal cost = BigDecimal.ZERO; // of the best answer that makes the whole bill, or 0

    Planning(Job job, Options options) {
        this.job = job;
        this.options = options;
        double given = job.limits().seconds().map(BigDecimal::doubleValue).orElse(Double.POSITIVE_INFINITY);
        seconds = given - Math.max(LEAST_SECONDS_FOR_WRITING, SHARE_FOR_WRITING * given);
    }

    Plan plan() {
        JobNumbers everything = new JobNumbers(job);
        floor = CompletableFuture.supplyAsync(
                () -> Floor.ofWholeBill(everything, until(secondsForFloor())).value(), Planning::inBackground);
        Withheld withheld = Withheld.NOTHING;
        boolean quick = job.testRip().tries() > 0; // look first whether test rips will have wood
        Champion best = search(everything, quick ? QUICK : patience()).best();
        while (true) {
            try {
                Plan plan = new Sequencer(job, best.cut(), floorUnder(everything, best)).plan();
                if (!quick) {
                    Replay.require(job, plan);
                    return plan;
                }
                quick = false;
                best = search(new JobNumbers(job, withheld), patience()).best(best.layouts());
            } catch (NoTestWoodException e) {
                Withholding withholding = new Withholding(job, best, e, withheld);
                withheld = withholding.extended();
                best = search(new JobNumbers(job, withheld), QUICK).best(withholding.standing());
            }
        }
    }

    private static void inBackground(Runnable work) {
        Thread thread = new Thread(work, "ripwright-floor");
        thread.setDaemon(true);
        thread.start();
    }

    private Money floorUnder(JobNumbers everything, Champion best) {
        Money under = best.blanks() == wanted(everything) ? floor.join() : shortFloor(everything, best);
        boolean stockAlone = job.labor().isEmpty() && job.salvage().signum() == 0;
        return stockAlone ? Money.of(under.rounded()) : under; // what is printed of stock is rounded half up too
    }

    private Money shortFloor(JobNumbers everything, Champion best) {
        return Floor.ofFeet(everything, best.feet(), until(elapsed() + secondsForFloor() / 2))
                .value();
    }

    /** As long as the search where a time is given; ample, so that no clock matters, where the recuts are counted. */
    private double secondsForFloor() {
        if (options.mostRecuts() > 0) return 10 * SECONDS_FOR_FLOOR;
        return seconds == Double.POSITIVE_INFINITY ? SECONDS_FOR_FLOOR : seconds;
    }

    private BooleanSupplier until(double second) {
        return () -> options.cancellation().getAsBoolean() || elapsed() > second;
    }

    private int patience() {
        return seconds == Double.POSITIVE_INFINITY ? PATIENCE : Integer.MAX_VALUE;
    }

    private static int wanted(JobNumbers numbers) {
        return Arrays.stream(numbers.wanted()).sum();
    }

    private Search search(JobNumbers numbers, int patience) {
        Limits limits = job.limits();
        Search.Effort effort = new Search.Effort(
                limits.seed().orElse(0),
                threads(limits.threads()),
                options.mostRecuts() > 0 ? options.mostRecuts() : Long.MAX_VALUE,
                patience,
                MOVES_PER_BLANK);
        int wanted = wanted(numbers);
        cost = BigDecimal.ZERO;
        return new Search(numbers, effort, this::stopped, champion -> tell(champion, wanted));
    }

    private static int threads(OptionalInt given) {
        return given.orElse(Math.min(MOST_THREADS, Runtime.getRuntime().availableProcessors()));
    }

    private boolean stopped() {
        return options.cancellation().getAsBoolean() || elapsed() >= seconds || cheapest();
    }

    /** Whether the best answer makes the whole bill at the floor. */
    private boolean cheapest() {
        return cost.signum() > 0 && cost.compareTo(floor.getNow(Money.ZERO).rounded()) <= 0;
    }

    private double elapsed() {
        return (System.nanoTime() - begun) / 1e9;
    }

    private void tell(Champion champion, int wanted) {
        BigDecimal net = BigDecimal.valueOf(champion.net(), 6).setScale(2, RoundingMode.HALF_UP);
        if (champion.blanks() == wanted) cost = net;
        Duration elapsed = Duration.ofNanos(System.nanoTime() - begun);
        try {
            options.listener()
                    .progress(new Progress(
                            elapsed, net, floor.getNow(Money.ZERO).roundedDown(), champion.blanks(), wanted));
        } catch (RuntimeException e) {
            // What a listener throws breaks no plan.
        }
    }
}
