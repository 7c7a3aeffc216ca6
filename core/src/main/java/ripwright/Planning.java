package ripwright;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.concurrent.Future;
import java.util.function.BooleanSupplier;
import org.jspecify.annotations.Nullable;
import ripwright.internal.bound.LowerBound;
import ripwright.internal.geometry.Layout;
import ripwright.internal.model.JobNumbers;
import ripwright.internal.model.PricedLayout;
import ripwright.internal.model.Restriction;
import ripwright.internal.search.Incumbent;
import ripwright.internal.search.Search;
import ripwright.internal.search.Workers;
import ripwright.internal.sequence.SectionReach;
import ripwright.internal.sequence.Sequencer;
import ripwright.internal.sequence.Tidying;
import ripwright.internal.testwood.NoTestWoodException;
import ripwright.job.Job;
import ripwright.measure.Length;
import ripwright.measure.Money;
import ripwright.plan.Plan;
import ripwright.plan.TestBlank;
import ripwright.replay.Replay;

/** One planning of one job, from the search to the replay. */
final class Planning implements AutoCloseable {
    private static final int PATIENCE = 4; // rounds that bring nothing
    private static final int QUICK = 1; // the same, where a better answer comes later
    private static final int MOVES_PER_BLANK = 200;
    private static final int MOST_THREADS = 2;
    private static final int ROUNDS_BESIDE_FLOOR = 2; // until a round waits for it
    private static final int MOST_PARTS_AFRESH = 50;
    private static final int OTHER_THREADS = 1; // for the search beside a proof
    private static final double SEARCH_BEFORE_PROOF = 0.3; // of the time given; beyond that both go on
    private static final double PROOF_OF_LESS = 0.65; // when a proof is to end that leaves out test blanks

    private final Job job;
    private final Options options;
    private final Workers workers;
    private final Clock clock;
    private final JobNumbers everything;
    private final LowerBoundKeeper bounds;
    private Restriction restriction = Restriction.NOTHING; // so that test rips have wood
    private int rounds; // of all searches so far
    private boolean timeOver; // when the search ended

    Planning(Job job, Options options) {
        this.job = job;
        this.options = options;
        workers = new Workers(threads(job.limits().threads()));
        clock = new Clock(job, options, workers);
        everything = new JobNumbers(job);
        bounds = new LowerBoundKeeper(everything, clock, options, workers);
    }

    @Override
    public void close() {
        clock.end();
        workers.close();
    }

    Plan plan() {
        Plan plan = replayed();
        Ending ending = ending(plan);
        tell(() -> options.listener().ended(ending));
        return plan;
    }

    /** What a listener throws breaks no plan, errors such as a failed assertion of its own included. */
    private static void tell(Runnable listener) {
        try {
            listener.run();
        } catch (Throwable e) {
            // Told to nobody: there is nobody else to tell.
        }
    }

    private Ending ending(Plan plan) {
        if (plan.cost().proven()) return Ending.PROVEN;
        if (clock.stopped()) return Ending.STOPPED;
        if (timeOver) return Ending.TIME_OVER;
        return options.mostRecuts() > 0 ? Ending.STOPPED : Ending.NOTHING_BETTER;
    }

    private Plan replayed() {
        Incumbent best = best();
        while (true) {
            timeOver = clock.elapsed() >= clock.seconds();
            try {
                List<Layout> layouts = best.cut();
                Money lowerBound = bounds.under(best);
                return workers.here(() -> judged(layouts, lowerBound));
            } catch (NoTestWoodException e) {
                best = without(best, e.setting());
            }
        }
    }

    private Plan judged(List<Layout> layouts, Money lowerBound) {
        Plan plan = tidied(layouts, lowerBound);
        Replay.require(job, plan);
        return plan;
    }

    /** The search's best, or what a proof finds if that is better; where settings are tested too, the search goes on from there. */
    private Incumbent best() {
        Rehearsal.once();
        boolean tested = everything.proving().wanted();
        boolean provable = bounds.provable();
        Incumbent found = search(patience(), provable ? SEARCH_BEFORE_PROOF : 1).best();
        if (!provable || clock.stopped()) return found;
        if (clock.limited() && found.blanks() < bounds.wanted())
            return search(patience(), 1).best(found.layouts());
        double share = tested ? PROOF_OF_LESS : 1;
        Incumbent proven = clock.limited() ? provenBeside(found, share) : workers.result(bounds.proven(found, share));
        if (!tested || proven.equals(found) || clock.stopped()) return proven;
        Incumbent more = search(patience(), 1).best(proven.layouts());
        return more.betterThan(found) ? more : found;
    }

    /** The better of what a proof finds and of what one thread of the search finds beside it. */
    private Incumbent provenBeside(Incumbent best, double share) {
        Future<Incumbent> proof = bounds.proven(best, share);
        BooleanSupplier late = clock.until(clock.seconds() * share);
        Incumbent searched = besideProof(best, () -> proof.isDone() || late.getAsBoolean());
        if (best.betterThan(searched)) searched = best;
        Incumbent found = workers.result(proof);
        return found.betterThan(searched) ? found : searched;
    }

    /**
     * Goes on from that answer. Where settings are tested it starts afresh as long as the job is small: wood for test blanks
     * is hard to free in an answer that is packed tight, and another may have some.
     */
    private Incumbent besideProof(Incumbent best, BooleanSupplier end) {
        boolean afresh = everything.proving().wanted() && bounds.wanted() <= MOST_PARTS_AFRESH;
        long seed = job.limits().seed().orElse(0) + (afresh ? 1 : 0);
        Search search = search(everything, Integer.MAX_VALUE, OTHER_THREADS, seed, end);
        return afresh ? search.best() : search.best(best.layouts());
    }

    /** The plan of those layouts, set in order where that costs nothing and nobody wants it at once. */
    private Plan tidied(List<Layout> layouts, Money lowerBound) {
        Plan plan = new Sequencer(job, layouts, lowerBound).plan();
        if (clock.stopped()) return plan;
        List<Layout> tidied = new Tidying(job, layouts).layouts();
        plan = asGood(tidied, lowerBound, plan);
        if (!job.breakdown().leavesOver()) return plan;
        plan = asGood(new SectionReach(job, layouts).layouts(), lowerBound, plan);
        return asGood(new Tidying(job, new SectionReach(job, tidied).layouts()).layouts(), lowerBound, plan);
    }

    /** The plan of those layouts, or that one where it is better. */
    private Plan asGood(List<Layout> layouts, Money lowerBound, Plan than) {
        try {
            Plan plan = new Sequencer(job, layouts, lowerBound).plan();
            return asGood(plan, than) ? plan : than;
        } catch (NoTestWoodException e) {
            return than;
        }
    }

    private static boolean asGood(Plan tidied, Plan plan) {
        return tidied.cost().net().compareTo(plan.cost().net()) <= 0 && fresh(tidied) <= fresh(plan);
    }

    private static long fresh(Plan plan) {
        return plan.testBlanks().stream()
                .filter(blank -> blank.source() == TestBlank.Source.FRESH)
                .count();
    }

    /** The last resort where the sequence finds no test wood though the search did: no strip is ripped to that width. */
    private Incumbent without(Incumbent answer, Length width) {
        restriction = restriction.withWidth(width);
        @Nullable PricedLayout[] standing = answer.layouts().clone();
        for (int b = 0; b < standing.length; b++) {
            PricedLayout layout = standing[b];
            if (layout != null && Arrays.stream(layout.widths()).anyMatch(restriction::bars)) standing[b] = null;
        }
        return search(QUICK, 1).best(standing);
    }

    private int patience() {
        return clock.limited() ? Integer.MAX_VALUE : PATIENCE;
    }

    /** Until that share of the time given is over. */
    private Search search(int patience, double share) {
        JobNumbers numbers = restriction.equals(Restriction.NOTHING) ? everything : new JobNumbers(job, restriction);
        long seed = job.limits().seed().orElse(0);
        return search(numbers, patience, threads(job.limits().threads()), seed, clock.until(clock.seconds() * share));
    }

    private Search search(JobNumbers numbers, int patience, int threads, long seed, BooleanSupplier end) {
        Search.Effort effort = new Search.Effort(
                seed,
                threads,
                options.mostRecuts() > 0 ? options.mostRecuts() : Long.MAX_VALUE,
                patience,
                MOVES_PER_BLANK);
        bounds.reached(BigDecimal.ZERO);
        return new Search(
                numbers, effort, workers, this::lowerBound, () -> end.getAsBoolean() || bounds.met(), this::tell);
    }

    /**
     * For the search to build on, unless recuts are counted. Where no time is given a round waits for it, so that the path of
     * the search does not hang on when it is found.
     */
    private Optional<LowerBound> lowerBound() {
        if (options.mostRecuts() > 0 || !restriction.equals(Restriction.NOTHING)) return Optional.empty();
        if (clock.limited()) return bounds.found();
        return ++rounds > ROUNDS_BESIDE_FLOOR ? Optional.of(bounds.awaited()) : Optional.empty();
    }

    private static int threads(OptionalInt given) {
        return given.orElse(Math.min(MOST_THREADS, Runtime.getRuntime().availableProcessors()));
    }

    private void tell(Incumbent incumbent) {
        if (incumbent.blanks() == bounds.wanted()) bounds.reached(incumbent.cost());
        Progress progress =
                new Progress(clock.duration(), incumbent.cost(), bounds.known(), incumbent.blanks(), bounds.wanted());
        tell(() -> options.listener().progress(progress));
    }
}
