package ripwright;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.concurrent.CompletableFuture;
import java.util.function.BooleanSupplier;
import ripwright.bound.Floor;
import ripwright.job.Job;
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
    private static final int OTHER_THREADS = 1; // for the search beside a proof
    private static final double SEARCH_BEFORE_PROOF = 0.3; // of the time given; beyond that both go on

    private final Job job;
    private final Options options;
    private final Clock clock;
    private final JobNumbers everything;
    private final Underneath underneath;
    private Withheld withheld = Withheld.NOTHING; // so that test rips have wood

    Planning(Job job, Options options) {
        this.job = job;
        this.options = options;
        clock = new Clock(job, options);
        everything = new JobNumbers(job);
        underneath = new Underneath(everything, clock, options);
    }

    Plan plan() {
        Champion best = withTestWoodInSight();
        if (withheld.equals(Withheld.NOTHING)) best = proven(best);
        while (true) {
            try {
                Plan plan = new Sequencer(job, best.cut(), underneath.under(best)).plan();
                Replay.require(job, plan);
                return plan;
            } catch (NoTestWoodException e) {
                best = withWoodWithheld(best, e);
            }
        }
    }

    /** The cheaper of what a proof finds and, where time is given, of what the search finds beside it. */
    private Champion proven(Champion best) {
        if (!underneath.provable() || !clock.limited()) return underneath.proven(best);
        if (best.blanks() < underneath.wanted()) return searchedOn(best);
        CompletableFuture<Champion> proof = underneath.provenBeside(best);
        BooleanSupplier end =
                () -> proof.isDone() || clock.until(clock.seconds()).getAsBoolean();
        Champion searched =
                search(everything, Integer.MAX_VALUE, OTHER_THREADS, end).best(best.layouts());
        Champion found = proof.join();
        return found.betterThan(searched) ? found : searched;
    }

    private Champion searchedOn(Champion best) {
        return search(everything, Integer.MAX_VALUE, threads(job.limits().threads()), clock.until(clock.seconds()))
                .best(best.layouts());
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
        double end = clock.seconds() * (underneath.provable() ? SEARCH_BEFORE_PROOF : 1);
        JobNumbers numbers = withheld.equals(Withheld.NOTHING) ? everything : new JobNumbers(job, withheld);
        return search(numbers, patience, threads(job.limits().threads()), clock.until(end));
    }

    private Search search(JobNumbers numbers, int patience, int threads, BooleanSupplier end) {
        Search.Effort effort = new Search.Effort(
                job.limits().seed().orElse(0),
                threads,
                options.mostRecuts() > 0 ? options.mostRecuts() : Long.MAX_VALUE,
                patience,
                MOVES_PER_BLANK);
        underneath.reached(BigDecimal.ZERO);
        return new Search(numbers, effort, this::floor, () -> end.getAsBoolean() || underneath.met(), this::tell);
    }

    /** For the search to build on, unless its path is not to hang on when the floor is found. */
    private Optional<Floor> floor() {
        return options.mostRecuts() > 0 || !withheld.equals(Withheld.NOTHING) ? Optional.empty() : underneath.found();
    }

    private static int threads(OptionalInt given) {
        return given.orElse(Math.min(MOST_THREADS, Runtime.getRuntime().availableProcessors()));
    }

    private void tell(Champion champion) {
        if (champion.blanks() == underneath.wanted()) underneath.reached(champion.cost());
        Progress progress = new Progress(
                clock.duration(), champion.cost(), underneath.known(), champion.blanks(), underneath.wanted());
        try {
            options.listener().progress(progress);
        } catch (RuntimeException e) {
            // What a listener throws breaks no plan.
        }
    }
}
