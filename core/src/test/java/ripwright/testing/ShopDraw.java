package ripwright.testing;

import java.math.BigDecimal;
import java.util.Optional;
import ripwright.job.Keep;
import ripwright.measure.Length;
import ripwright.saw.Labor;
import ripwright.saw.Saw;
import ripwright.saw.TestRip;

/** Draws saws, wages and what is worth keeping. */
final class ShopDraw {
    private final Dice dice;
    private final Features features;
    private final BigDecimal salvage;

    ShopDraw(Dice dice, Features features) {
        this.dice = dice;
        this.features = features;
        this.salvage = features.has(Feature.SALVAGE) ? dice.money(0.1, 0.9) : BigDecimal.ZERO;
    }

    /** The share of its price an offcut is worth. */
    BigDecimal salvage() {
        return salvage;
    }

    /** A job without boards and parts yet, on {@code saw}. */
    JobBuilder shop(String name, Saw saw) {
        JobBuilder job = new JobBuilder(name).units(dice.unit()).saw(saw);
        job.offcuts(new Keep(dice.inches(8, 18), dice.inches(1.5, 3)), salvage);
        if (features.has(Feature.LABOR))
            job.labor(new Labor(dice.money(20, 90), dice.money(2, 10), dice.money(0.5, 3), dice.money(0.25, 2)));
        if (features.has(Feature.TRIES)) {
            Length length = dice.inches(10, 14).max(saw.shortestRip().orElse(Length.ZERO));
            job.testRip(new TestRip(length, dice.whole(1, 3)));
        }
        job.price("maple", new BigDecimal("8.25"))
                .price("ash", new BigDecimal("5.6"))
                .price("walnut", new BigDecimal("13.9"));
        return job;
    }

    /** Saws that take kerfs of 1/8 in, without limits. */
    Saw kerfs() {
        return Saw.of(dice.nearest(1 / 8.0), dice.nearest(1 / 8.0));
    }

    /** Saws as shops have them; limits that bind now and then. */
    Saw saw() {
        return limited(kerfs(), Length.inches("11.5"), Length.inches("40"));
    }

    /** Those saws with limits that sections from {@code shortest} to {@code longest} keep. */
    Saw limited(Saw kerfs, Length shortest, Length longest) {
        Length least = shortest.min(Length.inches("11.5"));
        return new Saw(
                kerfs.ripKerf(),
                kerfs.crosscutKerf(),
                some(longest, longest.plus(Length.inches("56"))),
                some(least.min(Length.inches("6")), least),
                some(Length.inches("0.75"), Length.inches("2")),
                some(Length.inches("4"), Length.inches("9")));
    }

    private Optional<Length> some(Length least, Length most) {
        boolean limited = features.has(Feature.SAW_LIMITS) && dice.chance(0.7);
        return limited ? Optional.of(dice.between(least, most)) : Optional.empty();
    }
}
