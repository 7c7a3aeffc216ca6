package ripwright.internal.model;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.apache.commons.numbers.fraction.BigFraction;
import ripwright.bill.Part;
import ripwright.internal.geometry.Layout;
import ripwright.internal.geometry.SectionEnds;
import ripwright.job.Job;
import ripwright.measure.BoardFeet;
import ripwright.measure.Length;
import ripwright.saw.Labor;
import ripwright.stock.Board;

/**
 * A job in bare numbers, for the programs that compute with it: lengths in nanometers, money in millionths of the
 * currency. Parts and boards are named by their place in {@code job.parts()} and {@code job.boards()}.
 */
public final class JobNumbers {
    /** Millionths of the currency. */
    public static final long MONEY = 1_000_000L;

    private final Job job;
    public final PartNumbers[] parts;
    public final BoardNumbers[] boards;
    private final boolean restricted;
    public final long[] widths; // all blank widths, each once, widest first
    public final int[][] partsOfWidth; // parts of widths[i], longest first
    public final long ripKerf;
    public final long crosscutKerf;
    public final long over; // what each end of a section is left long by
    public final long reading; // what sections are cut to whole multiples of then; 0 where they are not left long
    public final long longestRip;
    public final long shortestRip;
    public final long narrowestRip;
    public final long shortestCrosscut;
    public final long keepLength;
    public final long keepWidth;
    public final double ripCost; // millionths for one rip
    public final double crosscutCost; // millionths for one crosscut
    private final double settingCost; // millionths for one rip setting, its test not included
    private final Set<Long> untested = new HashSet<>(); // widths no part of which must be proved
    private final double testCost; // and for its test
    public final int groups;
    final long testLength;
    final long mostTestBlanks; // that all settings together ever take
    private final TestWoodCost proving;

    /** Reads the numbers off {@code job}. */
    public JobNumbers(Job job) {
        this(job, Restriction.NOTHING);
    }

    /** Reads the numbers off {@code job} as if what is withheld were of no use. */
    public JobNumbers(Job job, Restriction restriction) {
        restricted = !restriction.equals(Restriction.NOTHING);
        this.job = job;
        ripKerf = job.saw().ripKerf().nanometers();
        crosscutKerf = job.saw().crosscutKerf().nanometers();
        over = job.breakdown().over().nanometers();
        reading = SectionEnds.reading(job);
        longestRip = or(job.saw().longestRip(), Long.MAX_VALUE);
        shortestRip = or(job.saw().shortestRip(), 1);
        narrowestRip = or(job.saw().narrowestRip(), 0);
        shortestCrosscut = or(job.saw().shortestCrosscut(), 0);
        keepLength = job.keep().length().nanometers();
        keepWidth = job.keep().width().nanometers();
        Labor labor = job.laborOrUnpaid();
        double perMinute = labor.perHour().doubleValue() / 60 * MONEY;
        ripCost = perMinute * labor.ripMinutes().doubleValue();
        crosscutCost = perMinute * labor.crosscutMinutes().doubleValue();
        settingCost = perMinute * labor.settingMinutes().doubleValue();
        testCost = job.testRip().tries() > 0 ? ripCost : 0;
        widths = job.parts().stream()
                .mapToLong(part -> -part.blankWidth().nanometers())
                .distinct()
                .sorted()
                .map(width -> -width)
                .toArray();
        List<Board> all = job.boards();
        boards = new BoardNumbers[all.size()];
        List<Length> thicknesses =
                all.stream().map(Board::millsTo).distinct().sorted().toList();
        for (int b = 0; b < boards.length; b++) {
            int thickness = thicknesses.indexOf(all.get(b).millsTo());
            boards[b] = new BoardNumbers(b, all.get(b), job, thickness, restriction.end(b));
        }
        Map<String, Integer> groupNumbers = new HashMap<>();
        long[] feet = feet(job.parts());
        parts = new PartNumbers[job.parts().size()];
        for (int p = 0; p < parts.length; p++) {
            Part part = job.parts().get(p);
            int group = part.together()
                    .map(name -> groupNumbers.computeIfAbsent(name, key -> groupNumbers.size()))
                    .orElse(-1);
            parts[p] = new PartNumbers(p, part, group, feet[p], this, restriction);
        }
        for (long width : widths)
            if (Arrays.stream(parts).noneMatch(part -> part.width == width && part.tested)) untested.add(width);
        groups = groupNumbers.size();
        int tries = job.testRip().tries();
        testLength = job.testRip().length().nanometers();
        mostTestBlanks = (long) tries * widths.length;
        proving = new TestWoodCost(this, tries);
        partsOfWidth = new int[widths.length][];
        for (int w = 0; w < widths.length; w++) partsOfWidth[w] = partsOfWidth(w);
    }

    private static long or(Optional<Length> limit, long none) {
        return limit.map(Length::nanometers).orElse(none);
    }

    private int[] partsOfWidth(int w) {
        List<PartNumbers> those = new ArrayList<>();
        for (PartNumbers part : parts) if (part.widthIndex == w) those.add(part);
        those.sort((a, b) -> Long.compare(b.length, a.length));
        return those.stream().mapToInt(part -> part.index).toArray();
    }

    /** The finished wood in one of each part as whole numbers in proportion: exact where they fit into 40 bits. */
    private static long[] feet(List<Part> parts) {
        List<BigFraction> volumes =
                parts.stream().map(Part::boardFeet).map(BoardFeet::value).toList();
        BigInteger denominator = BigInteger.ONE;
        for (BigFraction volume : volumes) {
            BigInteger d = volume.getDenominator();
            denominator = denominator.divide(denominator.gcd(d)).multiply(d);
        }
        List<BigInteger> whole = new ArrayList<>();
        BigInteger gcd = BigInteger.ZERO;
        BigInteger most = BigInteger.ONE;
        for (BigFraction volume : volumes) {
            BigInteger n = volume.multiply(denominator).getNumerator();
            whole.add(n);
            gcd = gcd.gcd(n);
            most = most.max(n);
        }
        BigInteger unit = gcd;
        int excess = most.divide(unit).bitLength() - 40;
        if (excess > 0) unit = unit.shiftLeft(excess);
        long[] feet = new long[whole.size()];
        for (int p = 0; p < feet.length; p++)
            feet[p] = Math.max(1, whole.get(p).divide(unit).longValueExact());
        return feet;
    }

    static long millionths(BigDecimal money) {
        return money.multiply(BigDecimal.valueOf(MONEY))
                .setScale(0, RoundingMode.HALF_UP)
                .longValueExact();
    }

    /** The job these are the numbers of. */
    public Job job() {
        return job;
    }

    /** How many boards there are. */
    public int boards() {
        return boards.length;
    }

    /** How many parts the bill lists, not counting copies. */
    public int parts() {
        return parts.length;
    }

    /** How many of each part are wanted. */
    public int[] wanted() {
        int[] wanted = new int[parts.length];
        for (int p = 0; p < parts.length; p++) wanted[p] = parts[p].count;
        return wanted;
    }

    /** The finished wood in one of that part, in a unit of its own that is the same for all parts. */
    public long feet(int part) {
        return parts[part].feet;
    }

    /** What a board costs as soon as anything is cut from it, in millionths. */
    public long cost(int board) {
        return boards[board].cost;
    }

    /** Whether nothing but the boards that are cut costs or fetches money: no labor, no salvage. */
    public boolean boardsAlone() {
        boolean labor = ripCost > 0 || crosscutCost > 0 || settingCost > 0;
        return !labor && Arrays.stream(boards).noneMatch(board -> board.salvageRate > 0);
    }

    /** What one rip setting costs, a test included, in millionths. */
    public long settingCost() {
        return Math.round(settingCost + testCost);
    }

    /** What the rip setting for strips of that width costs, its test included where there is one, in millionths. */
    public long settingCost(long width) {
        return Math.round(settingCost + (tests(width) ? testCost : 0));
    }

    /** Whether strips of that width are tested: some part of it must be proved. */
    public boolean tests(long width) {
        return !untested.contains(width);
    }

    /** Whether strips of that width are tested whatever is made of them: every part of it must be proved. */
    public boolean alwaysTests(long width) {
        return Arrays.stream(parts).allMatch(part -> part.width != width || part.tested);
    }

    /** What the wood of one blank of that part costs on the boards it fits, on the average, in millionths. */
    public double woodPrice(int part) {
        double price = 0;
        double area = 0;
        for (BoardNumbers board : boards) {
            if (!parts[part].fits[board.index]) continue;
            price += board.cost;
            area += (double) board.length * (board.widthNear + board.widthFar) / 2;
        }
        double blank = (double) (parts[part].length + crosscutKerf) * (parts[part].width + ripKerf);
        return area == 0 ? 0 : blank * price / area;
    }

    /** The same as if every board but ripped ones were shorter by so many test blanks and a kerf for each. */
    public JobNumbers shortened(int blanks) {
        Restriction ends = Restriction.NOTHING;
        Length end = new Length(Math.multiplyExact(testLength + crosscutKerf, (long) blanks));
        for (BoardNumbers board : boards)
            if (!board.ripped) ends = ends.withEnd(board.index, end.min(board.stock.length()));
        return new JobNumbers(job, ends);
    }

    /** Which of the job's thicknesses that board mills to, in rising order; beyond the 63rd they are not told apart. */
    public int thickness(int board) {
        return boards[board].thickness;
    }

    /** What proving the rip settings of an answer costs. */
    public TestWoodCost proving() {
        return proving;
    }

    /** The layout with what follows from it alone. */
    public PricedLayout priced(Layout layout) {
        return LayoutPrice.of(this, layout);
    }

    /** Whether there is anything that may not be used. */
    public boolean restricted() {
        return restricted;
    }

    /** Whether some parts must come from one board. */
    public boolean grouped() {
        return groups > 0;
    }
}
