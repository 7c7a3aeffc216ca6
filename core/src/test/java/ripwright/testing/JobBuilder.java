package ripwright.testing;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.OptionalLong;
import ripwright.bill.Part;
import ripwright.job.Job;
import ripwright.job.Keep;
import ripwright.job.Limits;
import ripwright.measure.Length;
import ripwright.measure.Unit;
import ripwright.saw.Labor;
import ripwright.saw.Saw;
import ripwright.saw.TestRip;
import ripwright.stock.Board;
import ripwright.stock.Species;

/**
 * Writes a job in few words: inches, 3/4 in maple at 8 a board foot, kerfs of 1/8 in, nothing tested, offcuts worthless,
 * until told otherwise.
 */
public final class JobBuilder {
    /** What a board or a part is thick unless it says otherwise. */
    public static final Length THICKNESS = Length.inches("3/4");

    /** What a board is of unless it says otherwise. */
    public static final String MAPLE = "maple";

    private final String name;
    private final Map<Species, BigDecimal> prices = new LinkedHashMap<>();
    private final List<Board> stack = new ArrayList<>();
    private final List<Board> rack = new ArrayList<>();
    private final List<Part> parts = new ArrayList<>();
    private Unit units = Unit.INCH;
    private Saw saw = Saw.of(Length.inches("1/8"), Length.inches("1/8"));
    private TestRip testRip = TestRip.NONE;
    private Keep keep = new Keep(Length.inches("12"), Length.inches("2"));
    private BigDecimal salvage = BigDecimal.ZERO;
    private Optional<Labor> labor = Optional.empty();
    private Limits limits = Limits.NONE;

    /** A job of that name, without boards and parts yet. */
    public JobBuilder(String name) {
        this.name = name;
        prices.put(new Species(MAPLE), new BigDecimal("8"));
    }

    /** The same job as that one, to be altered; boards and parts are added to its own. */
    public static JobBuilder like(Job job) {
        return like(job, job.name(), job.rack(), job.parts());
    }

    /** The same job as that one, but for its name, rack and bill. */
    public static JobBuilder like(Job job, String name, List<Board> rack, List<Part> parts) {
        JobBuilder builder = new JobBuilder(name);
        builder.prices.clear();
        builder.prices.putAll(job.prices());
        builder.stack.addAll(job.stack());
        builder.rack.addAll(rack);
        builder.parts.addAll(parts);
        builder.units = job.units();
        builder.saw = job.saw();
        builder.testRip = job.testRip();
        builder.keep = job.keep();
        builder.salvage = job.salvage();
        builder.labor = job.labor();
        builder.limits = job.limits();
        return builder;
    }

    /** The same job as that one, but for its boards. */
    public static JobBuilder of(Job job, List<Board> stack, List<Board> rack) {
        JobBuilder builder = like(job, job.name(), rack, job.parts());
        builder.stack.clear();
        builder.stack.addAll(stack);
        return builder;
    }

    /** That many inches. */
    public static Length in(String inches) {
        return Length.inches(inches);
    }

    /** A clear maple board, 3/4 in thick, to be altered or added as it is. */
    public static Board.Builder maple(String id, String width, String length) {
        return Board.measured(id, MAPLE, THICKNESS, Length.inches(width), Length.inches(length));
    }

    /** A hidden part of any wood, 3/4 in thick, to be altered or added as it is. */
    public static Part.Builder part(String name, int count, String length, String width) {
        return Part.of(name, Length.inches(length), Length.inches(width), THICKNESS)
                .count(count);
    }

    /** With those boards in the stack. */
    public JobBuilder stack(Board.Builder... boards) {
        for (Board.Builder board : boards) stack.add(board.build());
        return this;
    }

    /** With those boards in the stack. */
    public JobBuilder stack(List<Board> boards) {
        stack.addAll(boards);
        return this;
    }

    /** With those offcuts on the rack. */
    public JobBuilder rack(Board... offcuts) {
        return rack(List.of(offcuts));
    }

    /** With those offcuts on the rack. */
    public JobBuilder rack(List<Board> offcuts) {
        rack.addAll(offcuts);
        return this;
    }

    /** With those lines in the bill. */
    public JobBuilder parts(Part.Builder... lines) {
        for (Part.Builder line : lines) parts.add(line.build());
        return this;
    }

    /** With those lines in the bill. */
    public JobBuilder parts(List<Part> lines) {
        parts.addAll(lines);
        return this;
    }

    /** Written in those units. */
    public JobBuilder units(Unit units) {
        this.units = units;
        return this;
    }

    /** On those saws. */
    public JobBuilder saw(Saw saw) {
        this.saw = saw;
        return this;
    }

    /** On saws without limits that take those kerfs, in inches. */
    public JobBuilder kerfs(String rip, String crosscut) {
        return saw(Saw.of(Length.inches(rip), Length.inches(crosscut)));
    }

    /** With so many test blanks, 12 in long, for each setting. */
    public JobBuilder tries(int tries) {
        return testRip(new TestRip(in("12"), tries));
    }

    /** With every setting proved like that. */
    public JobBuilder testRip(TestRip testRip) {
        this.testRip = testRip;
        return this;
    }

    /** Keeping leftovers of that size. */
    public JobBuilder keep(String length, String width) {
        keep = new Keep(in(length), in(width));
        return this;
    }

    /** Keeping leftovers of that size, and worth that share of their price. */
    public JobBuilder offcuts(Keep keep, BigDecimal salvage) {
        this.keep = keep;
        this.salvage = salvage;
        return this;
    }

    /** With leftovers worth that share of their price. */
    public JobBuilder salvage(BigDecimal share) {
        salvage = share;
        return this;
    }

    /** At that much money a board foot. */
    public JobBuilder price(String species, BigDecimal price) {
        prices.put(new Species(species), price);
        return this;
    }

    /** At those wages. */
    public JobBuilder labor(Labor labor) {
        this.labor = Optional.of(labor);
        return this;
    }

    /** Planned with that seed, within that time, on one thread. */
    public JobBuilder limits(BigDecimal seconds, long seed) {
        limits = new Limits(Optional.of(seconds), OptionalLong.of(seed), OptionalInt.of(1));
        return this;
    }

    /** The job; an {@link IllegalArgumentException} when it cannot be. */
    public Job build() {
        return new Job(name, units, saw, testRip, keep, prices, salvage, labor, stack, rack, parts, limits);
    }
}
