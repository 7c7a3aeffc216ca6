package ripwright.bench;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import ripwright.testing.Constructed;
import ripwright.testing.ConstructedJobs;
import ripwright.testing.Feature;
import ripwright.testing.Features;
import ripwright.testing.JobSize;
import ripwright.testing.RandomJobs;

/**
 * Reads a row of drawn jobs: parts, {@code random} or {@code constructed}, features, and perhaps seeds and seconds, as in
 * {@code 75 random defects salvage 3x10s}. Without, ten seeds and the time that is asked of that size.
 */
final class DrawnRow {
    private static final Pattern EFFORT = Pattern.compile("(\\d{1,4})x([\\d.]{1,6})s");
    private static final int SEEDS = 10;

    private final String name;
    private final int parts;
    private final boolean constructed;
    private final Features features;
    private int seeds = SEEDS;
    private BigDecimal seconds;

    DrawnRow(String text) {
        List<String> words = new ArrayList<>(List.of(text.strip().split(" +", -1)));
        Matcher effort = EFFORT.matcher(words.get(words.size() - 1));
        if (effort.matches()) words.remove(words.size() - 1);
        if (words.size() < 2) throw new IllegalArgumentException("\"" + text + "\" is no row; try \"75 random\".");
        name = String.join(" ", words);
        parts = Integer.parseInt(words.get(0));
        constructed = constructed(words.get(1));
        features = Features.of(words.stream()
                .skip(2)
                .map(word -> Feature.valueOf(word.toUpperCase(Locale.ROOT)))
                .toArray(Feature[]::new));
        seconds = new BigDecimal(asked());
        if (effort.matches()) {
            seeds = Integer.parseInt(effort.group(1));
            seconds = new BigDecimal(effort.group(2));
        }
    }

    private static boolean constructed(String kind) {
        return switch (kind) {
            case "random" -> false;
            case "constructed" -> true;
            default -> throw new IllegalArgumentException("\"" + kind + "\" is neither random nor constructed.");
        };
    }

    /** The row. */
    Row row() {
        return new Row(name, seconds, seeds, seed -> drawn(seed + 1L));
    }

    private Case drawn(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        JobSize size = size(random);
        if (!constructed) return new Case(RandomJobs.random(random, size, features), Optional.empty(), seed);
        Constructed drawn = ConstructedJobs.constructed(random, size, features);
        // Of salvage and labor the built plan is one example, not the best.
        boolean stockAlone = !features.has(Feature.SALVAGE) && !features.has(Feature.LABOR);
        return new Case(drawn.job(), stockAlone ? Optional.of(drawn.best().rounded()) : Optional.empty(), seed);
    }

    private JobSize size(SplittableRandom random) {
        return switch (parts) {
            case 30 -> JobSize.small(random);
            case 75 -> JobSize.middling(random);
            case 150 -> JobSize.medium(random);
            case 600 -> JobSize.large();
            case 2500 -> JobSize.huge();
            default -> throw wrongSize();
        };
    }

    private int asked() {
        return switch (parts) {
            case 30 -> 5;
            case 75, 150 -> 30;
            case 600 -> 60;
            case 2500 -> 120;
            default -> throw wrongSize();
        };
    }

    private IllegalArgumentException wrongSize() {
        return new IllegalArgumentException(parts + " parts; drawn are 30, 75, 150, 600 and 2500.");
    }
}
