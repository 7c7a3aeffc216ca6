package ripwright.testing;

import java.util.List;
import java.util.SplittableRandom;
import ripwright.bill.Part;
import ripwright.job.Job;

/** Jobs that {@link CpSatOptimum} solves in about a second: at most 8 parts and 3 boards, the rack counted, on 1/16 in. */
public final class SmallJobs {
    private static final int MOST_PARTS = 8;
    private static final int MOST_BOARDS = 3;
    private static final int GRID = 16;

    private SmallJobs() {}

    /** A random one. Off-grid lengths, millimeters and tries are left off, and crook where there is taper. */
    public static Job random(SplittableRandom random, Features features) {
        Features solvable = solvable(features);
        JobSize size = new JobSize(
                random.nextInt(3, MOST_PARTS + 1 - (features.has(Feature.SHORT_STOCK) ? 1 : 0)),
                random.nextInt(1, MOST_BOARDS + 1 - (features.has(Feature.RACK) ? 1 : 0)));
        Job job = RandomJobs.random(random, size, solvable, GRID);
        if (job.boards().size() <= MOST_BOARDS) return job;
        return JobBuilder.like(
                        job,
                        job.name(),
                        job.rack().subList(0, MOST_BOARDS - job.stack().size()),
                        job.parts())
                .build();
    }

    /** A constructed one; the same are left off, and the rack. */
    public static Constructed constructed(SplittableRandom random, Features features) {
        Features solvable = solvable(features).without(Feature.RACK);
        while (true) {
            JobSize size = new JobSize(random.nextInt(2, MOST_PARTS - 1), random.nextInt(1, MOST_BOARDS + 1));
            Constructed drawn = ConstructedJobs.constructed(random, size, solvable, GRID);
            if (drawn.job().boards().size() <= MOST_BOARDS && parts(drawn.job().parts()) <= MOST_PARTS) return drawn;
        }
    }

    private static Features solvable(Features features) {
        Features onGrid = features.without(Feature.OFF_GRID, Feature.MILLIMETERS, Feature.TRIES);
        return features.has(Feature.TAPER) ? onGrid.without(Feature.CROOK) : onGrid;
    }

    private static int parts(List<Part> parts) {
        return parts.stream().mapToInt(Part::count).sum();
    }
}
