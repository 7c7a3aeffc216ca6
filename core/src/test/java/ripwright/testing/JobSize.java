package ripwright.testing;

import java.util.SplittableRandom;

/**
 * How large a drawn job is.
 *
 * @param parts how many parts, all copies counted
 * @param boards how many boards in the stack
 */
public record JobSize(int parts, int boards) {
    /** Refuses what is empty. */
    public JobSize {
        if (parts < 1 || boards < 1) throw new IllegalArgumentException(parts + " parts of " + boards + " boards.");
    }

    /** 3 to 8 parts, 1 to 3 boards: small enough for {@link CpSatOptimum}. */
    public static JobSize tiny(SplittableRandom random) {
        return new JobSize(random.nextInt(3, 9), random.nextInt(1, 4));
    }

    /** 30 parts, 7 to 15 boards. */
    public static JobSize small(SplittableRandom random) {
        return new JobSize(30, random.nextInt(7, 16));
    }

    /** 75 parts, 10 to 17 boards. */
    public static JobSize middling(SplittableRandom random) {
        return new JobSize(75, random.nextInt(10, 18));
    }

    /** 120 to 190 parts, 25 boards. */
    public static JobSize medium(SplittableRandom random) {
        return new JobSize(random.nextInt(120, 191), 25);
    }

    /** 600 parts, 90 boards. */
    public static JobSize large() {
        return new JobSize(600, 90);
    }

    /** 2,500 parts, 310 boards. */
    public static JobSize huge() {
        return new JobSize(2_500, 310);
    }
}
