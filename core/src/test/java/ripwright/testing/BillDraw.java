package ripwright.testing;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import ripwright.bill.Part;
import ripwright.measure.Length;
import ripwright.stock.Species;

/** Draws the sizes of blanks and turns them into lines of a bill. */
final class BillDraw {
    private static final int MOST_WIDTHS = 9;

    private final Dice dice;
    private final Features features;
    private final List<Length> widths = new ArrayList<>(); // of blanks: a bill keeps to a few
    private final List<Length> lengths = new ArrayList<>(); // of blanks

    /**
     * A choice of sizes for a bill.
     *
     * @param lines how many lines it shall have, about
     * @param meanLength how long a blank is in the mean, in inches
     */
    BillDraw(Dice dice, Features features, int lines, double meanLength) {
        this.dice = dice;
        this.features = features;
        int count = Math.min(MOST_WIDTHS, 1 + (lines + 1) / 2);
        while (widths.size() < count) widths.add(dice.inches(1.25, 5.5));
        if (count > 2) { // two settings closer together than a kerf
            widths.set(1, widths.get(0).plus(dice.nearest(1 / 16.0)));
        }
        for (int i = 0; i < lines; i++) lengths.add(dice.inches(0.35 * meanLength, 1.65 * meanLength));
        if (features.has(Feature.SAW_LIMITS) && lines > 1) { // too small for the saw, now and then
            widths.set(0, dice.inches(0.75, 1.5));
            lengths.set(0, dice.inches(3, 8));
        }
    }

    List<Length> widths() {
        return List.copyOf(widths);
    }

    List<Length> lengths() {
        return List.copyOf(lengths);
    }

    Length width() {
        return dice.of(widths);
    }

    Length length() {
        return dice.of(lengths);
    }

    /** A line for {@code count} parts whose blanks are of that size, with some of the features that are on. */
    Part.Builder line(String name, int count, Length length, Length width, Length thickness, Set<Species> species) {
        boolean fitted = features.has(Feature.FITTED) && dice.chance(0.3);
        Length sneakUp = features.has(Feature.SNEAK_UP) && (fitted || dice.chance(0.3))
                ? dice.inches(1 / 32.0, 1 / 4.0)
                : Length.ZERO;
        Length allowance =
                features.has(Feature.EDGE_ALLOWANCE) && dice.chance(0.3) ? dice.inches(1 / 32.0, 1 / 8.0) : Length.ZERO;
        return Part.of(name, length.minus(sneakUp), width.minus(allowance), thickness)
                .count(count)
                .species(species)
                .face(features.has(Feature.SHOW) && dice.chance(0.5) ? Part.Face.SHOW : Part.Face.HIDDEN)
                .sneakUp(sneakUp)
                .edgeAllowance(allowance)
                .fitted(fitted);
    }

    /** A choice of species that {@code wood} is in: itself, itself and others, or any. */
    Set<Species> including(Species wood, List<Species> all) {
        if (!features.has(Feature.SPECIES)) return Set.of();
        return switch (dice.whole(0, 3)) {
            case 0 -> Set.of();
            case 1 -> {
                Set<Species> some = new HashSet<>(Set.of(wood));
                some.add(dice.of(all));
                yield some;
            }
            default -> Set.of(wood);
        };
    }
}
