package ripwright.internal.search;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.concurrent.Future;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import ripwright.internal.bound.LowerBound;
import ripwright.internal.firstfit.FirstFitDecreasing;
import ripwright.internal.geometry.Layout;
import ripwright.internal.model.JobNumbers;
import ripwright.internal.model.PricedLayout;
import ripwright.internal.onedimensional.RippedStockHeuristic;
import ripwright.job.Job;

/**
 * Looks for the layouts that make the most wanted wood and, of those, cost the least. Rounds of a fixed number of
 * moves, a {@link Turn} on every thread; after a round the threads agree on the best. So the
 * seed and the number of threads fix the path, and the clock only its end.
 */
public final class Search {
    /**
     * How hard to look.
     *
     * @param seed where chance comes from
     * @param threads how many rounds run side by side
     * @param mostRecuts after how many recuts on each thread to end
     * @param patience after how many rounds that bring nothing to end
     * @param movesPerBlank how many recuts a round tries for every blank wanted
     */
    public record Effort(long seed, int threads, long mostRecuts, int patience, int movesPerBlank) {}

    private static final int BEGUN_AGAIN = 8; // greedy answers to repair where the one that was found is not sound
    private static final int MOST_RECUTS_LATE = 1_200; // to repair by, once the time is over
    private static final int MOST_RECUTS_INTERRUPTED = 150; // when somebody waits for the answer
    private static final int MOST_HELD_BACK = 16; // boards, each in an answer of its own
    private static final int MOST_PARTS_BEGUN_AGAIN = 150; // which is quick for so many parts

    private final RecreateTables tables;
    private final RippedStockHeuristic ripped;
    private final Repair repair;
    private final Effort effort;
    private final Workers workers;
    private final Supplier<Optional<LowerBound>> lowerBound;
    private final BooleanSupplier stop;
    private final Consumer<Incumbent> listener;

    /**
     * @param numbers the job
     * @param effort how hard to look
     * @param workers the threads to look on
     * @param lowerBound the floor under plans that make the whole bill, once it is known
     * @param stop asked often, from several threads; true ends the search with what it has
     * @param listener told of the answer it begins with and of every better one, on the thread that plans
     */
    public Search(
            JobNumbers numbers,
            Effort effort,
            Workers workers,
            Supplier<Optional<LowerBound>> lowerBound,
            BooleanSupplier stop,
            Consumer<Incumbent> listener) {
        tables = new RecreateTables(numbers, workers);
        ripped = new RippedStockHeuristic(numbers, stop);
        repair = new Repair(numbers);
        this.effort = effort;
        this.workers = workers;
        this.lowerBound = lowerBound;
        this.stop = stop;
        this.listener = listener;
    }

    /** The best answer found. */
    public Incumbent best() {
        SplittableRandom random = new SplittableRandom(effort.seed());
        return better(workers.here(() -> start(random)), random);
    }

    /** Strips of ripped stock filled for themselves, as far as there is any; the rest, and all for comparison, greedily. */
    private Incumbent start(SplittableRandom random) {
        GreedyHeuristic greedy = new GreedyHeuristic(tables, stop);
        if (!ripped.any()) return greedy.best(random.split());
        Incumbent filled = Incumbent.of(tables.numbers(), ripped.layouts(random.split()));
        if (ripped.all() && filled.blanks() == wanted()) return filled;
        filled = greedy.completed(filled.layouts(), random.split());
        Incumbent other = greedy.best(random.split());
        return other.betterThan(filled) ? other : filled;
    }

    /** The best answer found from one that may leave boards whole and parts unmade. */
    public Incumbent best(@Nullable PricedLayout[] start) {
        SplittableRandom random = new SplittableRandom(effort.seed());
        return better(workers.here(() -> new GreedyHeuristic(tables, stop).completed(start, random.split())), random);
    }

    /** The best answer found; told to stop at once, it is still no worse than the first one repaired. */
    private Incumbent better(Incumbent start, SplittableRandom random) {
        Incumbent found = searched(start, random);
        Incumbent best = workers.here(() -> repaired(start, found));
        if (best.betterThan(found)) listener.accept(best);
        return best;
    }

    /** Repairs what was found, and where it is not sound then, what it began with and other beginnings. */
    private Incumbent repaired(Incumbent start, Incumbent found) {
        SplittableRandom random = new SplittableRandom(effort.seed());
        Incumbent best = repair.repaired(found, random);
        if (repair.sound(best)) return best;
        for (Supplier<Incumbent> begun : beginnings(start, random)) {
            if (stop.getAsBoolean() && (repair.recuts() > mostRecutsLate() || waitedFor(best))) break;
            Incumbent other = repair.repaired(begun.get(), random);
            if (other.betterThan(best)) best = other;
        }
        return best;
    }

    /** Whether somebody waits for an answer and that one can be cut. */
    private boolean waitedFor(Incumbent answer) {
        return workers.interrupted() && answer.unproved() == 0;
    }

    private int mostRecutsLate() {
        return workers.interrupted() ? MOST_RECUTS_INTERRUPTED : MOST_RECUTS_LATE;
    }

    /** The greedy answer there is, first-fit decreasing, then by turns other greedy ones and ones that hold back a board for test wood. */
    private List<Supplier<Incumbent>> beginnings(Incumbent start, SplittableRandom random) {
        List<Supplier<Incumbent>> beginnings = new ArrayList<>();
        beginnings.add(() -> start);
        beginnings.addAll(firstFit(FirstFitDecreasing::plan));
        if (wanted() > MOST_PARTS_BEGUN_AGAIN) return beginnings;
        GreedyHeuristic greedy = new GreedyHeuristic(tables, stop);
        int held = tables.numbers().proving().wanted() ? Math.min(MOST_HELD_BACK, start.layouts().length) : 0;
        for (int i = 0; i < Math.max(BEGUN_AGAIN, held); i++) {
            int board = i;
            if (i < BEGUN_AGAIN) beginnings.add(() -> greedy.one(random.split()));
            if (i < held) beginnings.add(() -> greedy.holdingBack(board, random.split()));
            if (i < held) beginnings.addAll(firstFit(job -> FirstFitDecreasing.holdingBack(job, board)));
        }
        return beginnings;
    }

    /** An answer made without regard to what the search may not use; none where there is such. */
    private List<Supplier<Incumbent>> firstFit(Function<Job, List<Layout>> plan) {
        JobNumbers numbers = tables.numbers();
        if (numbers.restricted()) return List.of();
        return List.of(() -> {
            @Nullable PricedLayout[] layouts = new @Nullable PricedLayout[numbers.boards()];
            for (Layout layout : plan.apply(numbers.job())) layouts[layout.board()] = numbers.priced(layout);
            return Incumbent.of(numbers, layouts);
        });
    }

    private Incumbent searched(Incumbent start, SplittableRandom random) {
        Incumbent best = start;
        listener.accept(best);
        try (SolverWatch watch = new SolverWatch(stop, workers)) {
            int barren = 0;
            long recuts = 0;
            for (int round = 0;
                    recuts < effort.mostRecuts() && barren < effort.patience() && !watch.stopped();
                    round++) {
                long moves = Math.min(moves(), effort.mostRecuts() - recuts);
                recuts += moves;
                Incumbent found = round(watch, best, round, moves, random);
                barren = found.betterThan(best) ? 0 : barren + 1;
                if (found.betterThan(best)) listener.accept(found);
                best = found.betterThan(best) ? found : best;
            }
        }
        return best;
    }

    private Incumbent round(SolverWatch watch, Incumbent from, int round, long moves, SplittableRandom random) {
        Turn turn = new Turn(tables, ripped, lowerBound.get(), moves, watch);
        List<Future<Incumbent>> running = new ArrayList<>();
        for (int t = 0; t < effort.threads(); t++) {
            long seed = random.nextLong();
            int number = round * effort.threads() + t;
            running.add(workers.begin(() -> turn.taken(number, from, seed)));
        }
        Incumbent best = from;
        for (Future<Incumbent> one : running) {
            Incumbent found = workers.result(one);
            if (found.betterThan(best)) best = found;
        }
        return best;
    }

    private int wanted() {
        return Arrays.stream(tables.numbers().wanted()).sum();
    }

    private long moves() {
        return (long) effort.movesPerBlank() * (50 + wanted());
    }
}
