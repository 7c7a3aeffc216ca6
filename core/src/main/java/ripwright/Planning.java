package ripwright;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.Duration;
import java.util.Arrays;
import java.util.OptionalInt;
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
    private static final double SHARE_FOR_FLOOR = 0.2; // of the time given
    private static final double SECONDS_FOR_FLOOR = 3; // where none is given

    private final Job job;
    private final Options options;
    private final long begun = System.nanoTime();
    private final double seconds; // for the search; infinite when the job names no limit
    private Money floor = Money.ZERO; // under every plan that makes the whole bill
    private volatile boolean cheapest; // whether the best answer makes the whole bill at the floor

    Planning(Job job, Options options) {
        this.job = job;
        this.options = options;
        double given = job.limits().seconds().map(BigDecimal::doubleValue).orElse(Double.POSITIVE_INFINITY);
        seconds = given - Math.max(LEAST_SECONDS_FOR_WRITING, SHARE_FOR_WRITING * given);
    }

    Plan plan() {
        JobNumbers everything = new JobNumbers(job);
        floor = Floor.ofWholeBill(everything, within(SHARE_FOR_FLOOR)).value();
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

    private Money floorUnder(JobNumbers everything, Champion best) {
        Money under = best.blanks() == wanted(everything) ? floor : shortFloor(everything, best);
        boolean stockAlone = job.labor().isEmpty() && job.salvage().signum() == 0;
        return stockAlone ? Money.of(under.rounded()) : under; // what is printed of stock is rounded half up too
    }

    private int patience() {
        return seconds == Double.POSITIVE_INFINITY ? PATIENCE : Integer.MAX_VALUE;
    }

    private Money shortFloor(JobNumbers everything, Champion best) {
        double until =
                elapsed() + (seconds == Double.POSITIVE_INFINITY ? SECONDS_FOR_FLOOR : seconds * SHARE_FOR_FLOOR);
        return Floor.ofFeet(
                        everything, best.feet(), () -> options.cancellation().getAsBoolean() || elapsed() > until)
                .value();
    }

    private BooleanSupplier within(double share) {
        double until = seconds == Double.POSITIVE_INFINITY ? SECONDS_FOR_FLOOR : seconds * share;
        return () -> options.cancellation().getAsBoolean() || elapsed() > until;
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
        cheapest = false;
        return new Search(numbers, effort, this::stopped, champion -> tell(champion, wanted));
    }

    private static int threads(OptionalInt given) {
        return given.orElse(Math.min(MOST_THREADS, Runtime.getRuntime().availableProcessors()));
    }

    private boolean stopped() {
        return cheapest || options.cancellation().getAsBoolean() || elapsed() >= seconds;
    }

    private double elapsed() {
        return (System.nanoTime() - begun) / 1e9;
    }

    private void tell(Champion champion, int wanted) {
        BigDecimal cost = BigDecimal.valueOf(champion.net(), 6).setScale(2, RoundingMode.HALF_UP);
        if (champion.blanks() == wanted && cost.compareTo(floor.rounded()) <= 0) cheapest = true;
        Duration elapsed = Duration.ofNanos(System.nanoTime() - begun);
        try {
            options.listener().progress(new Progress(elapsed, cost, floor.roundedDown(), champion.blanks(), wanted));
        } catch (RuntimeException e) {
            // What a listener throws breaks no plan.
        }
    }
}
