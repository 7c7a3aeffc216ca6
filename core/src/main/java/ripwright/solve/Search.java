package ripwright.solve;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import ripwright.bound.Floor;
import ripwright.pattern.JobNumbers;
import ripwright.pattern.PricedLayout;

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

    private final Workbench workbench;
    private final RippedWork ripped;
    private final Effort effort;
    private final Supplier<Optional<Floor>> floor;
    private final BooleanSupplier stop;
    private final Consumer<Champion> listener;

    /**
     * @param numbers the job
     * @param effort how hard to look
     * @param floor the floor under plans that make the whole bill, once it is known
     * @param stop asked often, from several threads; true ends the search with what it has
     * @param listener told of every better answer, from several threads, one at a time
     */
    public Search(
            JobNumbers numbers,
            Effort effort,
            Supplier<Optional<Floor>> floor,
            BooleanSupplier stop,
            Consumer<Champion> listener) {
        workbench = new Workbench(numbers);
        ripped = new RippedWork(numbers, stop);
        this.effort = effort;
        this.floor = floor;
        this.stop = stop;
        this.listener = listener;
    }

    /** The best answer found. */
    public Champion best() {
        SplittableRandom random = new SplittableRandom(effort.seed());
        return better(start(random), random);
    }

    /** Strips of ripped stock filled for themselves, as far as there is any; the rest, and all for comparison, greedily. */
    private Champion start(SplittableRandom random) {
        Greedy greedy = new Greedy(workbench, stop);
        if (!ripped.any()) return greedy.best(random.split());
        Champion filled = Champion.of(workbench.numbers(), ripped.layouts(random.split()));
        if (ripped.all() && filled.blanks() == wanted()) return filled;
        filled = greedy.completed(filled.layouts(), random.split());
        Champion other = greedy.best(random.split());
        return other.betterThan(filled) ? other : filled;
    }

    /** The best answer found from one that may leave boards whole and parts unmade. */
    public Champion best(@Nullable PricedLayout[] start) {
        SplittableRandom random = new SplittableRandom(effort.seed());
        return better(new Greedy(workbench, stop).completed(start, random.split()), random);
    }

    private Champion better(Champion start, SplittableRandom random) {
        Champion best = start;
        listener.accept(best);
        ExecutorService threads = Executors.newFixedThreadPool(effort.threads());
        try (Watch watch = new Watch(stop)) {
            int barren = 0;
            long recuts = 0;
            for (int round = 0;
                    recuts < effort.mostRecuts() && barren < effort.patience() && !watch.stopped();
                    round++) {
                long moves = Math.min(moves(), effort.mostRecuts() - recuts);
                recuts += moves;
                Champion found = round(threads, watch, best, round, moves, random);
                barren = found.betterThan(best) ? 0 : barren + 1;
                if (found.betterThan(best)) listener.accept(found);
                best = found.betterThan(best) ? found : best;
            }
        } finally {
            threads.shutdownNow();
        }
        return best;
    }

    private Champion round(
            ExecutorService threads, Watch watch, Champion from, int round, long moves, SplittableRandom random) {
        Turn turn = new Turn(workbench, ripped, floor.get(), moves, watch);
        List<Future<Champion>> running = new ArrayList<>();
        for (int t = 0; t < effort.threads(); t++) {
            long seed = random.nextLong();
            int number = round * effort.threads() + t;
            running.add(threads.submit(() -> turn.taken(number, from, seed)));
        }
        Champion best = from;
        for (Future<Champion> one : running) {
            Champion found = result(one);
            if (found != null && found.betterThan(best)) best = found;
        }
        return best;
    }

    private int wanted() {
        return Arrays.stream(workbench.numbers().wanted()).sum();
    }

    private static @Nullable Champion result(Future<Champion> one) {
        try {
            return one.get();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            return null;
        } catch (ExecutionException e) {
            throw new IllegalStateException("A round of the search failed.", e.getCause());
        }
    }

    private long moves() {
        return (long) effort.movesPerBlank() * (50 + wanted());
    }
}
