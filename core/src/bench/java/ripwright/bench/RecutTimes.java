package ripwright.bench;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.stream.Collectors;
import ripwright.internal.model.JobNumbers;
import ripwright.internal.search.Search;
import ripwright.internal.search.Workers;
import ripwright.job.Job;
import ripwright.testing.Features;
import ripwright.testing.JobSize;
import ripwright.testing.RandomJobs;

/** How long a recut takes on jobs of several sizes, on one thread, first answers left out. */
final class RecutTimes {
    private static final long RECUTS = 40_000;

    private RecutTimes() {}

    /** A line of Markdown. */
    static String text() {
        time(JobSize.small(new SplittableRandom(1))); // so that no job pays for the warming up
        SplittableRandom random = new SplittableRandom(2);
        List<JobSize> sizes = List.of(
                JobSize.small(random),
                JobSize.middling(random),
                JobSize.medium(random),
                JobSize.large(),
                JobSize.huge());
        return sizes.stream()
                .map(size -> String.format(Locale.ROOT, "%d parts %.0f us", size.parts(), time(size)))
                .collect(Collectors.joining(", ", "A recut: ", ".\n"));
    }

    /** Microseconds. */
    private static double time(JobSize size) {
        Job job = RandomJobs.random(new SplittableRandom(3), size, Features.NONE, 64);
        double few = seconds(job, 1);
        return (seconds(job, RECUTS) - few) / RECUTS * 1e6;
    }

    private static double seconds(Job job, long recuts) {
        Search.Effort effort = new Search.Effort(1, 1, recuts, Integer.MAX_VALUE, 200);
        Search search =
                new Search(new JobNumbers(job), effort, new Workers(1), Optional::empty, () -> false, better -> {});
        long begun = System.nanoTime();
        search.best();
        return (System.nanoTime() - begun) / 1e9;
    }
}
