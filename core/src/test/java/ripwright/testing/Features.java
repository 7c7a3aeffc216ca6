package ripwright.testing;

import java.util.Arrays;
import java.util.EnumSet;
import java.util.Set;
import java.util.SplittableRandom;

/**
 * Which features a drawn job may have. It need not have all of them: each falls on some boards and parts only.
 *
 * @param on those that are on
 */
public record Features(Set<Feature> on) {
    /** Clear straight boards, plain parts. */
    public static final Features NONE = new Features(Set.of());

    /** Every feature in inches on the plain grid, stock enough. */
    public static final Features ALL =
            new Features(Set.of(Feature.values())).without(Feature.SHORT_STOCK, Feature.MILLIMETERS, Feature.OFF_GRID);

    /** Keeps a copy. */
    public Features {
        on = Set.copyOf(on);
    }

    /** Those. */
    public static Features of(Feature... features) {
        return new Features(Set.copyOf(Arrays.asList(features)));
    }

    /** Each of {@code features} with a chance of one half. */
    public static Features some(SplittableRandom random, Feature... features) {
        EnumSet<Feature> on = EnumSet.noneOf(Feature.class);
        for (Feature feature : features) if (random.nextBoolean()) on.add(feature);
        return new Features(on);
    }

    /** Each feature there is with a chance of one third; stock falls short one time in ten. */
    public static Features some(SplittableRandom random) {
        EnumSet<Feature> on = EnumSet.noneOf(Feature.class);
        for (Feature feature : Feature.values())
            if (random.nextInt(feature == Feature.SHORT_STOCK ? 10 : 3) == 0) on.add(feature);
        return new Features(on);
    }

    /** Whether that one is on. */
    public boolean has(Feature feature) {
        return on.contains(feature);
    }

    /** These without those. */
    public Features without(Feature... features) {
        EnumSet<Feature> left = EnumSet.noneOf(Feature.class);
        left.addAll(on);
        left.removeAll(Arrays.asList(features));
        return new Features(left);
    }
}
