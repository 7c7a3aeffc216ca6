package ripwright.testing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import ripwright.measure.Length;
import ripwright.saw.Saw;
import ripwright.stock.Board;
import ripwright.stock.EndTrim;

/** Builds boards up from blanks: sections from strips, strips from blanks, a kerf between any two. */
final class BuiltDraw {
    private static final int MOST_SECTIONS = 3;
    private static final int TRIES = 40; // to fill a width exactly with widths of the bill

    private final Dice dice;
    private final Features features;
    private final StockDraw stock;
    private final BillDraw bill;
    private final Saw saw;

    BuiltDraw(Dice dice, Features features, StockDraw stock, BillDraw bill, Saw saw) {
        this.dice = dice;
        this.features = features;
        this.stock = stock;
        this.bill = bill;
        this.saw = saw;
    }

    /** A board of one blank at least; of a few at the most where it need not be a large one. */
    BuiltBoard board(String id, boolean large) {
        boolean ripped = features.has(Feature.RIPPED) && dice.chance(0.15);
        List<Length> widths = ripped ? List.of(bill.width()) : widths(large ? dice.inches(4, 9) : dice.inches(2, 4));
        int sections = ripped || !large ? 1 : dice.whole(1, MOST_SECTIONS);
        Length target = large ? dice.inches(44.0 / sections, 96.0 / sections) : dice.inches(10, 30);
        List<BuiltBoard.Section> built = new ArrayList<>();
        for (int i = 0; i < sections; i++)
            built.add(section(
                    i == 0 ? widths : exactly(total(widths, saw.ripKerf())).orElse(widths), target));
        List<Length> lengths = built.stream().map(BuiltBoard.Section::length).toList();
        EndTrim trim = stock.endTrim();
        Length length = total(lengths, saw.crosscutKerf()).plus(trim.near()).plus(trim.far());
        Board.Builder board = stock.plain(id, total(widths, saw.ripKerf()), length)
                .endTrim(trim.near(), trim.far())
                .ripped(ripped);
        if (!ripped) edges(board, lengths);
        return new BuiltBoard(board.build(), List.copyOf(built));
    }

    private BuiltBoard.Section section(List<Length> widths, Length target) {
        List<Length> first = new ArrayList<>(List.of(bill.length()));
        for (Length next = bill.length();
                target.exceeds(total(first, saw.crosscutKerf()).plus(next));
                next = bill.length()) first.add(next);
        Length length = total(first, saw.crosscutKerf());
        List<BuiltBoard.Strip> strips = new ArrayList<>();
        for (Length width : widths) {
            List<Length> blanks = strips.isEmpty() || dice.chance(0.4) ? first : filling(length);
            strips.add(new BuiltBoard.Strip(width, sorted(blanks)));
        }
        strips.sort(Comparator.comparing(BuiltBoard.Strip::width).reversed());
        return new BuiltBoard.Section(length, List.copyOf(strips));
    }

    private List<Length> widths(Length target) {
        List<Length> widths = new ArrayList<>(List.of(bill.width()));
        for (Length next = bill.width(); target.exceeds(total(widths, saw.ripKerf())); next = bill.width())
            widths.add(next);
        return widths;
    }

    /** Widths of the bill that come to {@code total} exactly, kerfs included, when a few tries find them. */
    private Optional<List<Length>> exactly(Length total) {
        for (int i = 0; i < TRIES; i++) {
            List<Length> widths = new ArrayList<>();
            while (widths.isEmpty() || total.exceeds(total(widths, saw.ripKerf()))) widths.add(bill.width());
            if (total(widths, saw.ripKerf()).equals(total)) return Optional.of(widths);
        }
        return Optional.empty();
    }

    /** Lengths of the bill and a rest that come to {@code total} exactly, kerfs included. */
    private List<Length> filling(Length total) {
        List<Length> lengths = new ArrayList<>();
        Length rest = total;
        Length least = dice.nearest(5).plus(saw.crosscutKerf());
        for (Length next = bill.length(); rest.exceeds(next.plus(least)); next = bill.length()) {
            lengths.add(next);
            rest = rest.minus(next).minus(saw.crosscutKerf());
        }
        lengths.add(rest);
        return lengths;
    }

    private void edges(Board.Builder builder, List<Length> sections) {
        boolean crooked = features.has(Feature.CROOK);
        if ((!crooked && !features.has(Feature.EDGES)) || dice.chance(0.4)) return;
        int straight = dice.whole(0, 1);
        Length loss = dice.inches(1 / 8.0, 3 / 8.0);
        Board plain = builder.build();
        Length width = plain.width().plus(loss.times(2 - straight));
        builder.width(width, width)
                .edges(straight, loss, crooked ? crook(plain, straight, loss, sections) : Length.ZERO);
    }

    /** A crook that takes no more from a section than the edge loss, where it takes anything. */
    private Length crook(Board board, int straight, Length loss, List<Length> sections) {
        if (straight == 1) return dice.inches(1 / 16.0, 3 / 4.0);
        double longest = sections.stream().mapToLong(Length::nanometers).max().orElseThrow();
        double share = longest / board.length().nanometers();
        double most = Math.min(1.5, 0.95 * loss.nanometers() / 25_400_000.0 / (share * share));
        return dice.between(Length.ZERO, Length.inches(Double.toString(most)));
    }

    /** That many lengths and the kerfs between them. */
    private static Length total(List<Length> lengths, Length kerf) {
        Length total = Length.ZERO;
        for (Length length : lengths)
            total = total.isZero() ? length : total.plus(kerf).plus(length);
        return total;
    }

    private static List<Length> sorted(List<Length> lengths) {
        return lengths.stream().sorted(Comparator.reverseOrder()).toList();
    }
}
