package ripwright.internal.proof;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.RoundingMode;
import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.apache.commons.numbers.fraction.BigFraction;
import ripwright.job.Job;
import ripwright.measure.Money;
import ripwright.saw.Labor;

/**
 * The most that a board earns beside each choice of blanks that it gives: what its offcuts fetch less what its rips and
 * crosscuts cost. By the contract alone, in nanometers. Between two lengths at which something turns (a strip is filled, an
 * offcut is just long enough) a section earns evenly more the longer it is; so in some best layout all sections but one, and
 * what is left at full width, have such lengths, and the one takes the rest. Exact for clear boards that are as wide
 * everywhere, and for others where offcuts are worth nothing.
 */
public final class BoardEarns {
    static final long NONE = Long.MIN_VALUE / 4;
    private static final BigInteger INCH = BigInteger.valueOf(25_400_000);

    private final BillChoices choices;
    private final BoardRoom room;
    private final BigFraction raw; // money for a square nanometer of offcut as thick as the board
    private final BigFraction milled; // and of one from a section
    private final long keepLength;
    private final long keepWidth;
    private final long rip; // money
    private final long crosscut;
    private final Map<Long, long[]> sections = new HashMap<>(); // by length

    BoardEarns(Job job, BigFraction coinsPerCurrency, BillChoices choices, BoardRoom room) {
        this.choices = choices;
        this.room = room;
        BigFraction price = coinsPerCurrency.multiply(fraction(job.price(room.board)));
        BigFraction each =
                price.multiply(fraction(job.salvage())).divide(INCH.pow(3).multiply(BigInteger.valueOf(144)));
        raw = each.multiply(INCH.max(BigInteger.valueOf(room.board.thickness().nanometers())));
        milled = each.multiply(INCH.max(BigInteger.valueOf(room.board.millsTo().nanometers())));
        keepLength = job.keep().length().nanometers();
        keepWidth = job.keep().width().nanometers();
        rip = labor(job, coinsPerCurrency, job.laborOrUnpaid().ripMinutes());
        crosscut = labor(job, coinsPerCurrency, job.laborOrUnpaid().crosscutMinutes());
    }

    /** What so many minutes cost at least, in scaled money. */
    static long labor(Job job, BigFraction coinsPerCurrency, BigDecimal minutes) {
        Labor labor = job.laborOrUnpaid();
        BigFraction cost = fraction(labor.perHour()).multiply(fraction(minutes)).divide(60);
        return cost.multiply(coinsPerCurrency)
                .bigDecimalValue(0, RoundingMode.FLOOR)
                .longValueExact();
    }

    private static BigFraction fraction(BigDecimal number) {
        return Money.of(number).value();
    }

    private static long worth(BigFraction rate, long length, long width) {
        return rate.multiply(BigInteger.valueOf(length).multiply(BigInteger.valueOf(width)))
                .bigDecimalValue(0, RoundingMode.CEILING)
                .longValueExact();
    }

    /** What it earns beside each choice, in scaled money rounded up; {@link #NONE} where it does not give the choice. */
    long[] earned() {
        long[] earned = nothing();
        earned[0] = 0;
        if (room.room <= 0) return earned;
        if (room.board.ripped()) {
            for (int c = 1; c < earned.length; c++)
                if (choices.only(c, room.barred()) == 0)
                    earned[c] = minus(strip(c, room.room, room.board.width().nanometers()), trims() * crosscut);
            return earned;
        }
        Map<Long, long[]> some = new HashMap<>(Map.of(-room.crosscutKerf, earned.clone())); // by what they take
        for (int n = 1; n <= 3; n++) {
            int number = n;
            some.forEach((taken, worths) -> last(number, taken, worths, earned));
            some = oneMore(some);
            some.forEach((taken, worths) -> {
                long cuts = taken == room.room ? number - 1 + trims() : number + Math.max(0, trims() - 1);
                take(earned, worths, leftover(room.room - taken - room.crosscutKerf) - cuts * crosscut);
            });
        }
        return earned;
    }

    private long[] nothing() {
        long[] none = new long[choices.size()];
        Arrays.fill(none, NONE);
        return none;
    }

    private static long minus(long worth, long cost) {
        return worth == NONE ? NONE : worth - cost;
    }

    private static void take(long[] best, long[] other, long more) {
        for (int c = 0; c < best.length; c++) if (other[c] > NONE) best[c] = Math.max(best[c], other[c] + more);
    }

    private int trims() {
        return (room.board.endTrim().near().isZero() ? 0 : 1)
                + (room.board.endTrim().far().isZero() ? 0 : 1);
    }

    /** What is left at full width fetches. */
    private long leftover(long length) {
        long widest = Math.max(
                room.board.width().nanometers(), room.board.widthAtFarEnd().nanometers());
        return length < keepLength || widest < keepWidth ? 0 : worth(raw, length, widest);
    }

    /** Sections that have their lengths, and a last one that takes what is left of the board, or all but an offcut. */
    private void last(int n, long taken, long[] some, long[] earned) {
        long left = room.room - taken - room.crosscutKerf;
        if (left < room.shortestSection) return;
        if (left <= room.longestSection) take(earned, together(some, section(left)), -(n - 1 + trims()) * crosscut);
        long shorter = left - room.crosscutKerf - keepLength;
        if (raw.signum() == 0 || shorter < room.shortestSection || shorter > room.longestSection) return;
        long cuts = (n + Math.max(0, trims() - 1)) * crosscut;
        take(earned, together(some, section(shorter)), leftover(keepLength) - cuts);
    }

    private Map<Long, long[]> oneMore(Map<Long, long[]> some) {
        Map<Long, long[]> more = new HashMap<>();
        for (long length : turns()) {
            some.forEach((taken, worths) -> {
                long both = taken + room.crosscutKerf + length;
                if (both > room.room) return;
                take(more.computeIfAbsent(both, all -> nothing()), together(worths, section(length)), 0);
            });
        }
        return more;
    }

    private long[] together(long[] some, long[] one) {
        long[] both = nothing();
        for (int c = 0; c < both.length; c++)
            for (int part : choices.parts(c))
                if (some[c - part] > NONE && one[part] > NONE) both[c] = Math.max(both[c], some[c - part] + one[part]);
        return both;
    }

    /** The lengths of a section at which what it earns turns. */
    private Set<Long> turns() {
        Set<Long> lengths = new TreeSet<>();
        lengths.add(room.shortestSection);
        lengths.add(room.longestSection);
        if (milled.signum() > 0) lengths.add(keepLength);
        for (int[] types : room.widths) {
            for (int c : choices.parts(choices.only(choices.size() - 1, types))) {
                if (c == 0) continue;
                lengths.add(room.along(choices, c));
                if (milled.signum() > 0) lengths.add(room.along(choices, c) + room.crosscutKerf + keepLength);
            }
        }
        lengths.removeIf(length -> length < room.shortestSection || length > room.longestSection);
        return lengths;
    }

    /** What a section of that length earns beside each choice, nothing excluded. */
    private long[] section(long length) {
        return sections.computeIfAbsent(length, this::reckonSection);
    }

    private long[] reckonSection(long length) {
        long[] best = nothing();
        long across = room.usable(length);
        if (across <= 0) return best;
        long straightened = room.referenceLoss(length) > 0 ? rip : 0;
        long rough = room.sectionWidth(length) - room.referenceLoss(length) - across; // the far edge
        strips(0, length, across + room.ripKerf, rough, -straightened, 0, best);
        best[0] = NONE;
        return best;
    }

    /** All strips of widths from {@code v} on, beside some that hold {@code chosen} already. */
    private void strips(int v, long length, long left, long rough, long worth, int chosen, long[] best) {
        if (v == room.widths.length) {
            boolean kept = milled.signum() > 0 && length >= keepLength && left - room.ripKerf + rough >= keepWidth;
            best[chosen] =
                    Math.max(best[chosen], worth + (kept ? worth(milled, length, left - room.ripKerf + rough) : 0));
            return;
        }
        int all = choices.only(choices.size() - 1, room.widths[v]);
        long each = room.width[v] + room.ripKerf;
        long[] some = nothing(); // earned by so many strips of the width, beside each choice
        some[0] = 0;
        for (int n = 0; n * each <= left; n++) {
            for (int c : choices.parts(all))
                if (some[c] > NONE) strips(v + 1, length, left - n * each, rough, worth + some[c], chosen + c, best);
            some = oneMoreStrip(some, all, length, v);
        }
    }

    private long[] oneMoreStrip(long[] some, int all, long length, int v) {
        long[] more = nothing();
        for (int c : choices.parts(all))
            for (int part : choices.parts(c)) {
                long strip = part == 0 || some[c - part] == NONE ? NONE : strip(part, length, room.width[v]);
                if (strip > NONE) more[c] = Math.max(more[c], some[c - part] + strip - rip);
            }
        return more;
    }

    /** What a strip of that length earns that holds just those blanks; {@link #NONE} where it cannot. */
    private long strip(int choice, long length, long width) {
        long along = room.along(choices, choice);
        if (along > length) return NONE;
        int blanks = 0;
        for (int k = 0; k < choices.types(); k++) blanks += choices.many(choice, k);
        if (along == length) return -(blanks - 1) * crosscut;
        long end = length - along - room.crosscutKerf;
        return -blanks * crosscut
                + (milled.signum() == 0 || end < keepLength || width < keepWidth ? 0 : worth(milled, end, width));
    }
}
