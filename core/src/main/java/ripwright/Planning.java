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
import ripwright.stock.Board;

/** One planning of one job, from the search to the replay. */
final class Planning {
    private static final int PATIENCE = 4;
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
        while (true) {
            Champion best = search(new JobNumbers(job, withheld));
            try {
                Money under = best.blanks() == wanted(everything) ? floor : shortFloor(everything, best);
                Plan plan = new Sequencer(job, best.cut(), under).plan();
                Replay.require(job, plan);
                return plan;
            } catch (NoTestWoodException e) {
                withheld = withhold(withheld, best, e);
            }
        }
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

    /** Keeps a board whole that could prove the setting; where there is none, gives up strips of that width. */
    private Withheld withhold(Withheld withheld, Champion best, NoTestWoodException missing) {
        int cheapest = -1;
        Money least = Money.ZERO;
        for (int b = 0; b < job.boards().size(); b++) {
            Board board = job.boards().get(b);
            if (withheld.boards().contains(b) || best.layouts()[b] == null || !proves(board, missing)) continue;
            Money cost = job.cost(board);
            if (cheapest >= 0 && cost.compareTo(least) >= 0) continue;
            cheapest = b;
            least = cost;
        }
        return cheapest < 0 ? withheld.withWidth(missing.setting()) : withheld.withBoard(cheapest);
    }

    private static boolean proves(Board board, NoTestWoodException missing) {
        return board.millsTo().equals(missing.thickness())
                && !missing.length().exceeds(board.length())
                && !missing.narrowest().exceeds(board.width().min(board.widthAtFarEnd()));
    }

    private Champion search(JobNumbers numbers) {
        Limits limits = job.limits();
        Search.Effort effort = new Search.Effort(
                limits.seed().orElse(0),
                threads(limits.threads()),
                options.mostRecuts() > 0 ? options.mostRecuts() : Long.MAX_VALUE,
                seconds == Double.POSITIVE_INFINITY ? PATIENCE : Integer.MAX_VALUE,
                MOVES_PER_BLANK);
        int wanted = wanted(numbers);
        cheapest = false;
        return new Search(numbers, effort, this::stopped, champion -> tell(champion, wanted)).best();
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
