package ripwright;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.OptionalInt;
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
    private static final double SEARCH_BEFORE_PROOF = 0.3; // of the time given

    private final Job job;
    private final Options options;
    private final Clock clock;
    private final JobNumbers everything;
    private final Underneath underneath;
    private Withheld withheld = Withheld.NOTHING; // so that test rips have wood
    private boolean timeOver; // when the search ended
    private volatile BigDecimal cost = BigDecimal.ZERO; // of the best answer that makes the whole bill, or 0

    Planning(Job job, Options options) {
        this.job = job;
        this.options = options;
        clock = new Clock(job, options);
        everything = new JobNumbers(job);
        underneath = new Underneath(everything, clock, options);
    }

    Plan plan() {
        Plan plan = replayed();
        try {
            options.listener().ended(ending(plan));
        } catch (RuntimeException e) {
            // What a listener throws breaks no plan.
        }
        return plan;
    }

    private Ending ending(Plan plan) {
        if (plan.cost().proven()) return Ending.PROVEN;
        if (options.cancellation().getAsBoolean()) return Ending.STOPPED;
        if (timeOver) return Ending.TIME_OVER;
        return options.mostRecuts() > 0 ? Ending.STOPPED : Ending.NOTHING_BETTER;
    }

    private Plan replayed() {
        Champion best = withTestWoodInSight();
        if (withheld.equals(Withheld.NOTHING)) best = underneath.proven(best);
        while (true) {
            timeOver = clock.elapsed() >= clock.seconds();
            try {
                Plan plan = new Sequencer(job, best.cut(), underneath.under(best)).plan();
                Replay.require(job, plan);
                return plan;
            } catch (NoTestWoodException e) {
                best = withWoodWithheld(best, e);
            }
        }
    }

    /** The search's best; where settings are tested, after a look whether a quick answer would have wood for that. */
    private Champion withTestWoodInSight() {
        if (job.testRip().tries() == 0) return search(patience()).best();
        Champion quick = search(QUICK).best();
        while (true) {
            try {
                Plan unused = new Sequencer(job, quick.cut(), Money.ZERO).plan();
                return search(patience()).best(quick.layouts());
            } catch (NoTestWoodException e) {
                quick = withWoodWithheld(quick, e);
            }
        }
    }

    private Champion withWoodWithheld(Champion answer, NoTestWoodException missing) {
        Withholding withholding = new Withholding(job, answer, missing, withheld);
        withheld = withholding.extended();
        return search(QUICK).best(withholding.standing());
    }

    private int patience() {
        return clock.limited() ? Integer.MAX_VALUE : PATIENCE;
    }

    private Search search(int patience) {
        Limits limits = job.limits();
        Search.Effort effort = new Search.Effort(
                limits.seed().orElse(0),
                threads(limits.threads()),
                options.mostRecuts() > 0 ? options.mostRecuts() : Long.MAX_VALUE,
                patience,
                MOVES_PER_BLANK);
        cost = BigDecimal.ZERO;
        double end = clock.seconds() * (underneath.provable() ? SEARCH_BEFORE_PROOF : 1);
        JobNumbers numbers = withheld.equals(Withheld.NOTHING) ? everything : new JobNumbers(job, withheld);
        return new Search(
                numbers, effort, this::floor, () -> clock.until(end).getAsBoolean() || cheapest(), this::tell);
    }

    /** For the search to build on, unless its path is not to hang on when the floor is found. */
    private Optional<Floor> floor() {
        return options.mostRecuts() > 0 || !withheld.equals(Withheld.NOTHING) ? Optional.empty() : underneath.found();
    }

    private static int threads(OptionalInt given) {
        return given.orElse(Math.min(MOST_THREADS, Runtime.getRuntime().availableProcessors()));
    }

    /** Whether the best answer makes the whole bill at the floor. */
    private boolean cheapest() {
        return cost.signum() > 0 && cost.compareTo(underneath.known()) <= 0;
    }

    private void tell(Champion champion) {
        if (champion.blanks() == underneath.wanted()) cost = champion.cost();
        Progress progress = new Progress(
                clock.duration(), champion.cost(), underneath.known(), champion.blanks(), underneath.wanted());
        try {
            options.listener().progress(progress);
        } catch (RuntimeException e) {
            // What a listener throws breaks no plan.
        }
    }
}
