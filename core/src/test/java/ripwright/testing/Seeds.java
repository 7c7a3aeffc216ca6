package ripwright.testing;

import java.util.Optional;
import java.util.SplittableRandom;

/**
 * Runs a property over seeds 0, 1, 2, ... The size of a case is 1 + the square root of its seed, so small cases come
 * first and a seed means the same case whatever the count. A failure names its seed; system property {@code ripwright.seed} or
 * environment variable {@code RIPWRIGHT_SEED} then runs that one alone.
 *
 * <p>A property that speaks of some cases only says so of each, and is told how many there must be, lest it hold because
 * nothing was looked at.
 */
public final class Seeds {
    /** The system property that picks one seed. */
    static final String PROPERTY = "ripwright.seed";

    private static final String VARIABLE = "RIPWRIGHT_SEED";

    private Seeds() {}

    /** A property, checked on what it draws itself. */
    @FunctionalInterface
    public interface Trial {
        /** Draws a case of about that size and checks it; throws when the property does not hold. */
        void run(SplittableRandom random, int size) throws Exception;
    }

    /** A property of some cases only, checked on what it draws itself. */
    @FunctionalInterface
    public interface PartialTrial {
        /** As {@link Trial#run}; false when the property does not speak of the case. */
        boolean run(SplittableRandom random, int size) throws Exception;
    }

    /** Draws a case. */
    @FunctionalInterface
    public interface Draw<T> {
        /** A case of about that size. */
        T draw(SplittableRandom random, int size) throws Exception;
    }

    /** A property, checked on a case that was drawn. */
    @FunctionalInterface
    public interface Check<T> {
        /** Throws when the property does not hold for {@code drawn}. */
        void check(T drawn) throws Exception;
    }

    /** A property of some cases only, checked on a case that was drawn. */
    @FunctionalInterface
    public interface PartialCheck<T> {
        /** As {@link Check#check}; false when the property does not speak of {@code drawn}. */
        boolean check(T drawn) throws Exception;
    }

    /** Runs {@code trial} on the first {@code count} seeds, or on the one that is asked for. */
    public static void each(int count, Trial trial) {
        Optional<Long> only = only();
        if (only.isPresent()) run(only.get(), trial);
        else for (long seed = 0; seed < count; seed++) run(seed, trial);
    }

    /**
     * Runs {@code trial} on the first {@code count} seeds and fails unless it speaks of {@code atLeast} of them. On the one
     * that is asked for it need not.
     */
    public static void each(int count, int atLeast, PartialTrial trial) {
        int[] spoken = new int[1];
        each(count, (random, size) -> {
            if (trial.run(random, size)) spoken[0]++;
        });
        if (only().isEmpty() && spoken[0] < atLeast)
            throw new AssertionError("Of " + count + " cases the property spoke of " + spoken[0] + "; of " + atLeast
                    + " at least it should.");
    }

    /** As {@link #each(int, int, PartialTrial)}; a failure prints the case too. */
    public static <T> void each(int count, int atLeast, Draw<T> draw, PartialCheck<T> check) {
        each(count, atLeast, (random, size) -> {
            T drawn = draw.draw(random, size);
            try {
                return check.check(drawn);
            } catch (Exception | AssertionError failure) {
                throw withCase(drawn, failure);
            }
        });
    }

    /** As {@link #each(int, Trial)}; a failure prints the case too. */
    public static <T> void each(int count, Draw<T> draw, Check<T> check) {
        each(count, (random, size) -> {
            T drawn = draw.draw(random, size);
            try {
                check.check(drawn);
            } catch (Exception | AssertionError failure) {
                throw withCase(drawn, failure);
            }
        });
    }

    private static AssertionError withCase(Object drawn, Throwable failure) {
        return new AssertionError("Case: " + drawn + System.lineSeparator() + failure, failure);
    }

    /** How large a case of that seed is. */
    public static int size(long seed) {
        return 1 + (int) Math.min(Math.sqrt(Math.abs((double) seed)), 1_000_000);
    }

    private static void run(long seed, Trial trial) {
        int size = size(seed);
        try {
            trial.run(new SplittableRandom(seed), size);
        } catch (Exception | AssertionError failure) {
            throw new AssertionError(
                    "Seed " + seed + ", size " + size + " (again alone with -D" + PROPERTY + "=" + seed + "). "
                            + failure,
                    failure);
        }
    }

    private static Optional<Long> only() {
        String wanted = System.getProperty(PROPERTY, System.getenv().getOrDefault(VARIABLE, ""));
        return wanted.isBlank() ? Optional.empty() : Optional.of(Long.valueOf(wanted.strip()));
    }
}
