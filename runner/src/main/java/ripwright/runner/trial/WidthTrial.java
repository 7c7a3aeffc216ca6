package ripwright.runner.trial;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.function.BiFunction;
import ripwright.Options;
import ripwright.bill.Part;
import ripwright.job.Job;
import ripwright.job.Limits;
import ripwright.measure.Length;
import ripwright.plan.Plan;

/**
 * Plans one job with some of its parts at one width after another. The threads of the job are shared: as many widths at once,
 * on one thread each, so that all are searched alike; every width has the job's whole time.
 */
public final class WidthTrial {
    private static final int MOST_THREADS = 2; // where the job says nothing, as when it is planned alone

    private final Job job;
    private final List<String> parts;
    private final BiFunction<Job, Options, Plan> planner;

    /** Of those parts of {@code job}, planned by {@code planner}. */
    public WidthTrial(Job job, List<String> parts, BiFunction<Job, Options, Plan> planner) {
        this.job = job;
        this.parts = List.copyOf(parts);
        this.planner = planner;
    }

    /** Is told about what goes on, from any thread. */
    public interface Watcher {
        /** So many widths are planned. */
        void planned(int widths);
    }

    /** What every width comes to, in the order given; those not begun when it is cancelled are left out. */
    public Comparison compare(List<Length> widths, Options options, Watcher watcher) throws InterruptedException {
        int threads = job.limits().threads().orElse(defaultThreads());
        int atOnce = Math.max(1, Math.min(threads, widths.size()));
        ExecutorService workers = Executors.newFixedThreadPool(atOnce);
        try {
            Count count = new Count(watcher);
            List<Callable<Optional<Outcome>>> tasks = new ArrayList<>();
            for (Length width : widths) tasks.add(() -> outcome(width, threads / atOnce, options, count));
            List<Outcome> outcomes = new ArrayList<>();
            for (Future<Optional<Outcome>> planned : workers.invokeAll(tasks))
                result(planned).ifPresent(outcomes::add);
            return new Comparison(job, named(), outcomes);
        } finally {
            workers.shutdownNow();
        }
    }

    private static int defaultThreads() {
        return Math.min(MOST_THREADS, Runtime.getRuntime().availableProcessors());
    }

    private Optional<Outcome> outcome(Length width, int threads, Options options, Count count) {
        if (options.cancellation().getAsBoolean()) return Optional.empty();
        Plan plan = planner.apply(atWidth(width, Math.max(1, threads)), options);
        count.one();
        return Optional.of(new Outcome(width, wanted(), plan));
    }

    private int wanted() {
        return job.parts().stream().mapToInt(Part::count).sum();
    }

    private Job atWidth(Length width, int threads) {
        List<Part> bill = job.parts().stream()
                .map(part -> parts.contains(part.name()) ? part.ofWidth(width) : part)
                .toList();
        Optional<BigDecimal> seconds = job.limits().seconds();
        return job.withParts(bill).withLimits(new Limits(seconds, job.limits().seed(), OptionalInt.of(threads)));
    }

    private List<Part> named() {
        return job.parts().stream().filter(part -> parts.contains(part.name())).toList();
    }

    private static Optional<Outcome> result(Future<Optional<Outcome>> planned) throws InterruptedException {
        try {
            return planned.get();
        } catch (ExecutionException e) {
            if (e.getCause() instanceof RuntimeException fault) throw fault;
            if (e.getCause() instanceof Error fault) throw fault;
            throw new IllegalStateException(e.getCause());
        }
    }

    private static final class Count {
        private final Watcher watcher;
        private int planned;

        private Count(Watcher watcher) {
            this.watcher = watcher;
        }

        private synchronized void one() {
            watcher.planned(++planned);
        }
    }
}
