package ripwright.job;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import ripwright.bill.Part;
import ripwright.measure.BoardFeet;
import ripwright.measure.Length;
import ripwright.measure.Money;
import ripwright.measure.Name;
import ripwright.measure.Unit;
import ripwright.saw.Labor;
import ripwright.saw.Saw;
import ripwright.saw.TestRip;
import ripwright.stock.Board;
import ripwright.stock.Species;

/**
 * All that is asked of one plan. Money is in whatever currency the prices are.
 *
 * @param name what the shop calls it
 * @param units what its lengths are written in; a {@link Length} itself has none
 * @param saw what the saws take and allow
 * @param testRip how rip settings are proved
 * @param keep the smallest offcut worth racking
 * @param breakdown how boards are cut into sections
 * @param prices money per board foot of a species
 * @param salvage the share of its price an offcut is worth, 0 to 1
 * @param labor what time costs; absent: nothing
 * @param stack the boards on hand for this job; each has a price, or its species does
 * @param rack the offcuts on the rack, each with a {@link ripwright.stock.History}
 * @param parts the cutting bill
 * @param limits how hard to look
 */
public record Job(
        String name,
        Unit units,
        Saw saw,
        TestRip testRip,
        Keep keep,
        Breakdown breakdown,
        Map<Species, BigDecimal> prices,
        BigDecimal salvage,
        Optional<Labor> labor,
        List<Board> stack,
        List<Board> rack,
        List<Part> parts,
        Limits limits) {
    /**
     * Refuses a job that makes no sense. That no board can hold a part is no mistake but a shortage.
     *
     * @throws WrongJobException with all that is wrong: the name is no {@link Name}; {@code testRip} is under the shortest
     *     rip; {@code salvage} is not 0 to 1; what sections are left long by is neither 0 nor from one crosscut kerf to 6 in; a price is negative or missing; there are no boards or over 10,000, no parts or
     *     over 100,000; two boards have one id, or two parts one name; a board of the stack has a history, or an offcut of the
     *     rack has none; a part comes from a board that is not there; a board or part is too small to be read off a plan,
     *     0.0005 in or less. Only where all that is right: the boards, or the labor for every part alone, come to over
     *     1,000,000,000
     */
    public Job {
        prices = Map.copyOf(prices);
        stack = List.copyOf(stack);
        rack = List.copyOf(rack);
        parts = List.copyOf(parts);
        List<Problem> problems =
                JobCheck.problems(name, units, saw, testRip, breakdown, prices, salvage, labor, stack, rack, parts);
        if (!problems.isEmpty()) throw new WrongJobException(problems);
    }

    /** A job whose sections are cut to the exact length of their parts. */
    public Job(
            String name,
            Unit units,
            Saw saw,
            TestRip testRip,
            Keep keep,
            Map<Species, BigDecimal> prices,
            BigDecimal salvage,
            Optional<Labor> labor,
            List<Board> stack,
            List<Board> rack,
            List<Part> parts,
            Limits limits) {
        this(name, units, saw, testRip, keep, Breakdown.EXACT, prices, salvage, labor, stack, rack, parts, limits);
    }

    /**
     * A job of that name on those saws, that keeps leftovers of that size; everything else is to be added. Until told
     * otherwise it is in inches, nothing is tested, offcuts fetch nothing and time costs nothing.
     */
    public static Builder builder(String name, Saw saw, Keep keep) {
        return new Builder(name, saw, keep);
    }

    /** The same job, to be altered. */
    public Builder toBuilder() {
        Builder builder = new Builder(name, saw, keep);
        builder.units = units;
        builder.testRip = testRip;
        builder.breakdown = breakdown;
        builder.prices.putAll(prices);
        builder.salvage = salvage;
        builder.labor = labor;
        builder.stack = stack;
        builder.rack = rack;
        builder.parts = parts;
        builder.limits = limits;
        return builder;
    }

    /**
     * The same job with that bill.
     *
     * @throws WrongJobException when it makes no sense then
     */
    public Job withParts(List<Part> parts) {
        return toBuilder().parts(parts).build();
    }

    /** The same job within those limits. */
    public Job withLimits(Limits limits) {
        return toBuilder().limits(limits).build();
    }

    /** Builds a job. For one thread; checks nothing before {@link #build}. What it builds is immutable. */
    public static final class Builder {
        private final Saw saw;
        private final Keep keep;
        private final Map<Species, BigDecimal> prices = new HashMap<>();
        private String name;
        private Unit units = Unit.INCH;
        private TestRip testRip = TestRip.NONE;
        private Breakdown breakdown = Breakdown.EXACT;
        private BigDecimal salvage = BigDecimal.ZERO;
        private Optional<Labor> labor = Optional.empty();
        private List<Board> stack = List.of();
        private List<Board> rack = List.of();
        private List<Part> parts = List.of();
        private Limits limits = Limits.NONE;

        private Builder(String name, Saw saw, Keep keep) {
            this.name = name;
            this.saw = saw;
            this.keep = keep;
        }

        /** Of that name. */
        public Builder name(String name) {
            this.name = name;
            return this;
        }

        /** Written in those units. */
        public Builder units(Unit units) {
            this.units = units;
            return this;
        }

        /** With rip settings proved like that. */
        public Builder testRip(TestRip testRip) {
            this.testRip = testRip;
            return this;
        }

        /** With sections cut like that. */
        public Builder breakdown(Breakdown breakdown) {
            this.breakdown = breakdown;
            return this;
        }

        /** At that much money a board foot of that wood. */
        public Builder price(Species species, BigDecimal perBoardFoot) {
            prices.put(species, perBoardFoot);
            return this;
        }

        /** At those prices besides, money a board foot. */
        public Builder prices(Map<Species, BigDecimal> perBoardFoot) {
            prices.putAll(perBoardFoot);
            return this;
        }

        /** With offcuts worth that share of their price, 0 to 1. */
        public Builder salvage(BigDecimal share) {
            salvage = share;
            return this;
        }

        /** With time that costs so much. */
        public Builder labor(Labor labor) {
            this.labor = Optional.of(labor);
            return this;
        }

        /** With those boards on hand, instead of those named before. */
        public Builder stack(List<Board> boards) {
            stack = List.copyOf(boards);
            return this;
        }

        /** With those offcuts on the rack, instead of those named before. */
        public Builder rack(List<Board> offcuts) {
            rack = List.copyOf(offcuts);
            return this;
        }

        /** With that bill, instead of the one named before. */
        public Builder parts(List<Part> bill) {
            parts = List.copyOf(bill);
            return this;
        }

        /** Within those limits. */
        public Builder limits(Limits limits) {
            this.limits = limits;
            return this;
        }

        /**
         * The job.
         *
         * @throws WrongJobException with all that is wrong with it
         */
        public Job build() {
            return new Job(
                    name, units, saw, testRip, keep, breakdown, prices, salvage, labor, stack, rack, parts, limits);
        }
    }

    /** All boards, the rack's offcuts last. */
    public List<Board> boards() {
        return boards(stack, rack);
    }

    private static List<Board> boards(List<Board> stack, List<Board> rack) {
        List<Board> boards = new ArrayList<>(stack);
        boards.addAll(rack);
        return List.copyOf(boards);
    }

    /**
     * The board in that place of {@link #boards}, from 0.
     *
     * @throws IndexOutOfBoundsException when there is none
     */
    public Board board(int place) {
        return place < stack.size() ? stack.get(place) : rack.get(place - stack.size());
    }

    /** Money per board foot of that board's wood; 0 for a rack offcut without any price. */
    public BigDecimal price(Board board) {
        return board.price().orElse(prices.getOrDefault(board.species(), BigDecimal.ZERO));
    }

    /** What cutting anything from that board costs: its price, or its salvage value when it comes from the rack. */
    public Money cost(Board board) {
        if (board.testOnly()) return Money.ZERO;
        Money price = BoardFeet.counted(board.area(), board.thickness()).at(price(board));
        return board.fromRack() ? price.times(salvage) : price;
    }

    /** What minutes are reckoned by: the job's labor, or {@link Labor#UNPAID}. */
    public Labor laborOrUnpaid() {
        return labor.orElse(Labor.UNPAID);
    }
}
