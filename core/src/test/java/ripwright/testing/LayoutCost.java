package ripwright.testing;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.apache.commons.numbers.fraction.BigFraction;
import ripwright.internal.geometry.Layout;
import ripwright.internal.geometry.Layout.Section;
import ripwright.internal.geometry.Layout.Strip;
import ripwright.job.Job;
import ripwright.measure.Length;
import ripwright.measure.Money;
import ripwright.saw.Labor;
import ripwright.stock.Board;

/**
 * What layouts cost, exactly, by section 4 of the contract, straight from the nanometers. Test blanks are left out: where
 * a job tests its settings, the figures are those of the layouts alone. Layouts must be such as {@link LayoutCheck} lets pass.
 */
public final class LayoutCost {
    private static final BigFraction BOARD_FOOT = BigFraction.of(
            BigInteger.valueOf(25_400_000).pow(3).multiply(BigInteger.valueOf(144))); // in cubic nanometers

    private static final long INCH = 25_400_000; // nanometers; what is thinner counts as that thick

    private final Job job;
    private final List<Board> boards;
    private final List<Layout> layouts;

    /** The cost of {@code layouts} of boards of {@code job}. */
    public LayoutCost(Job job, List<Layout> layouts) {
        this.job = job;
        this.boards = job.boards();
        this.layouts = List.copyOf(layouts);
    }

    /** What the boards cost that are cut. */
    public Money stock() {
        BigFraction sum = BigFraction.ZERO;
        for (Layout layout : layouts) {
            Board board = boards.get(layout.board());
            BigFraction area = BigFraction.of(
                    BigInteger.valueOf(board.length().nanometers())
                            .multiply(BigInteger.valueOf(board.width().nanometers()
                                    + board.widthAtFarEnd().nanometers())),
                    BigInteger.TWO);
            BigFraction price = price(area, board.thickness(), board);
            sum = sum.add(board.fromRack() ? price.multiply(fraction(job.salvage())) : price);
        }
        return new Money(sum);
    }

    /** What the offcuts are worth that they leave. */
    public Money salvage() {
        BigFraction sum = BigFraction.ZERO;
        for (Layout layout : layouts)
            for (Piece piece : new Leftovers(job, layout).pieces())
                if (piece.offcut(job.keep()))
                    sum = sum.add(price(piece.countedArea(), piece.thickness(), piece.board()));
        return new Money(sum.multiply(fraction(job.salvage())));
    }

    /** What the time at the saws costs; nothing where the job names no labor. */
    public Money labor() {
        if (job.labor().isEmpty()) return Money.ZERO;
        Labor labor = job.labor().get();
        Set<Long> settings = new HashSet<>();
        long rips = 0;
        long crosscuts = 0;
        for (Layout layout : layouts) {
            Board board = boards.get(layout.board());
            crosscuts += breakdowns(board, layout);
            for (Section section : layout.sections()) {
                if (!board.ripped() && section.edgeLoss() > 0) rips++;
                for (Strip strip : section.strips()) {
                    crosscuts += crosscuts(section, strip);
                    if (board.ripped()) continue;
                    rips++;
                    settings.add(strip.width());
                }
            }
        }
        BigFraction minutes = fraction(labor.settingMinutes())
                .multiply(settings.size())
                .add(fraction(labor.ripMinutes()).multiply(BigInteger.valueOf(rips)))
                .add(fraction(labor.crosscutMinutes()).multiply(BigInteger.valueOf(crosscuts)));
        return new Money(minutes.multiply(fraction(labor.perHour())).divide(60));
    }

    /** Stock less salvage and with labor. */
    public Money net() {
        return stock().minus(salvage()).plus(labor());
    }

    private long breakdowns(Board board, Layout layout) {
        long kerf = job.saw().crosscutKerf().nanometers();
        long cuts = 0;
        long done = 0;
        for (Section section : layout.sections()) {
            if (done == 0) cuts += section.from() == 0 ? 0 : 1;
            else cuts += section.from() - done == kerf ? 1 : 2;
            done = section.to();
        }
        return cuts + (done == board.length().nanometers() ? 0 : 1);
    }

    private long crosscuts(Section section, Strip strip) {
        long kerf = job.saw().crosscutKerf().nanometers();
        long cuts = 0;
        long done = section.from();
        for (int i = 0; i < strip.blanks().size(); i++) {
            Layout.Blank blank = strip.blanks().get(i);
            if (i == 0) cuts += blank.from() == done ? 0 : 1;
            else cuts += blank.from() - done == kerf ? 1 : 2;
            done = blank.from() + job.parts().get(blank.part()).blankLength().nanometers();
        }
        return cuts + (strip.blanks().isEmpty() || done == section.to() ? 0 : 1);
    }

    /** Counted board feet times the price of the board. */
    private BigFraction price(BigFraction area, Length thickness, Board board) {
        BigDecimal perFoot = board.price().orElse(job.prices().getOrDefault(board.species(), BigDecimal.ZERO));
        return area.multiply(BigInteger.valueOf(Math.max(thickness.nanometers(), INCH)))
                .divide(BOARD_FOOT)
                .multiply(fraction(perFoot));
    }

    private static BigFraction fraction(BigDecimal number) {
        BigDecimal plain = number.scale() < 0 ? number.setScale(0) : number;
        return BigFraction.of(plain.unscaledValue(), BigInteger.TEN.pow(plain.scale()));
    }
}
