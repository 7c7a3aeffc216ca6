package ripwright.testing;

import java.math.BigDecimal;
import java.util.List;
import java.util.SplittableRandom;
import ripwright.measure.Length;
import ripwright.measure.Unit;

/** Draws what jobs are made of, every length on one grid. */
final class Dice {
    private static final long INCH = 25_400_000;

    private final SplittableRandom random;
    private final Unit unit;
    private final long tick; // nanometers

    private Dice(SplittableRandom random, Unit unit, long tick) {
        this.random = random;
        this.unit = unit;
        this.tick = tick;
    }

    /** Draws on the grid that {@code features} ask for, or of one {@code perInch}th of an inch. */
    static Dice of(SplittableRandom random, Features features, int perInch) {
        Unit unit = features.has(Feature.MILLIMETERS) ? Unit.MILLIMETER : Unit.INCH;
        long tick = unit == Unit.MILLIMETER ? 500_000 : INCH / perInch;
        return new Dice(random, unit, features.has(Feature.OFF_GRID) ? INCH / 1_000 : tick);
    }

    Unit unit() {
        return unit;
    }

    /** The least length there is. */
    Length tick() {
        return new Length(tick);
    }

    boolean chance(double share) {
        return random.nextDouble() < share;
    }

    /** A whole number from {@code least} to {@code most}. */
    int whole(int least, int most) {
        return random.nextInt(least, most + 1);
    }

    double real(double least, double most) {
        return least + random.nextDouble() * (most - least);
    }

    <T> T of(List<T> choices) {
        return choices.get(random.nextInt(choices.size()));
    }

    /** A length on the grid from {@code least} to {@code most} inches; the nearest one where there is none. */
    Length inches(double least, double most) {
        return at(Math.round(real(least, most) * INCH));
    }

    /** A length on the grid from {@code least} to {@code most}. */
    Length between(Length least, Length most) {
        long low = -Math.floorDiv(-least.nanometers(), tick);
        long high = most.nanometers() / tick;
        return new Length((low >= high ? low : random.nextLong(low, high + 1)) * tick);
    }

    /** The length on the grid nearest to that many inches, at least one tick unless it is 0. */
    Length nearest(double inches) {
        return inches == 0 ? Length.ZERO : at(Math.round(inches * INCH));
    }

    /** A price or a rate, with two decimals. */
    BigDecimal money(double least, double most) {
        return BigDecimal.valueOf(Math.round(real(least, most) * 100), 2);
    }

    private Length at(long nanometers) {
        return new Length(Math.max(1, Math.round((double) nanometers / tick)) * tick);
    }
}
