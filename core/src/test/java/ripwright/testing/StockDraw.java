package ripwright.testing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import ripwright.measure.Length;
import ripwright.stock.Board;
import ripwright.stock.Defect;
import ripwright.stock.EndTrim;
import ripwright.stock.History;
import ripwright.stock.Species;

/** Draws boards. */
final class StockDraw {
    private static final List<String> BAD = List.of("knot", "check", "wane", "split", "worm hole");
    private static final List<String> SOUND = List.of("pin knot", "sapwood", "mineral streak");

    private final Dice dice;
    private final Features features;
    private final List<Species> woods;
    private final List<Length> thicknesses;

    StockDraw(Dice dice, Features features) {
        this.dice = dice;
        this.features = features;
        this.woods = features.has(Feature.SPECIES)
                ? List.of(new Species("maple"), new Species("ash"), new Species("walnut"))
                : List.of(new Species("maple"));
        this.thicknesses = features.has(Feature.THICKNESSES)
                ? List.of(dice.nearest(0.75), dice.nearest(1.25))
                : List.of(dice.nearest(0.75));
    }

    List<Species> woods() {
        return woods;
    }

    List<Length> thicknesses() {
        return thicknesses;
    }

    /** A board for the stack; a ripped one is as wide as one of {@code widths}. */
    Board.Builder board(String id, List<Length> widths) {
        if (features.has(Feature.RIPPED) && dice.chance(0.2)) {
            Board.Builder ripped = plain(id, dice.of(widths), dice.inches(30, 100));
            return trims(defects(ripped.ripped(true)));
        }
        return trims(defects(edges(taper(plain(id, dice.inches(4, 11), dice.inches(48, 108))))));
    }

    /** An offcut for the rack, of any wood and perhaps without a price of its own. */
    Board.Builder offcut(String id, List<Length> widths) {
        boolean stranger = dice.chance(0.25);
        Length width = dice.chance(0.5) ? dice.of(widths) : dice.inches(2, 6);
        Length length = dice.inches(12, 44);
        Board.Builder offcut =
                stranger ? Board.measured(id, "poplar", dice.of(thicknesses), width, length) : plain(id, width, length);
        Optional<String> mark = dice.chance(0.5) ? Optional.of("R" + id) : Optional.empty();
        return defects(edges(offcut)).onRack(new History(mark, Optional.empty(), Optional.empty(), Optional.empty()));
    }

    /** A clear straight board of some wood and thickness. */
    Board.Builder plain(String id, Length width, Length length) {
        Length thickness = dice.of(thicknesses);
        Board.Builder board = Board.measured(id, dice.of(woods).name(), thickness, width, length);
        boolean rough = features.has(Feature.ROUGH) && dice.chance(0.4);
        return rough ? board.rough(thickness.plus(dice.nearest(0.25)), thickness) : board;
    }

    private Board.Builder taper(Board.Builder board) {
        if (!features.has(Feature.TAPER) || !dice.chance(0.4)) return board;
        Length width = board.build().width();
        Length less = width.minus(dice.inches(0.25, 1.25));
        return dice.chance(0.5) ? board.width(width, less) : board.width(less, width);
    }

    private Board.Builder edges(Board.Builder board) {
        boolean crooked = features.has(Feature.CROOK);
        if ((!crooked && !features.has(Feature.EDGES)) || !dice.chance(0.7)) return board;
        Length crook = crooked && dice.chance(0.7) ? dice.inches(1 / 16.0, 0.75) : Length.ZERO;
        return board.edges(dice.whole(0, 1), dice.inches(1 / 8.0, 3 / 8.0), crook);
    }

    /** With some wood to trim at each end. */
    Board.Builder trims(Board.Builder board) {
        EndTrim trim = endTrim();
        return board.endTrim(trim.near(), trim.far());
    }

    EndTrim endTrim() {
        if (!features.has(Feature.TRIMS) || dice.chance(0.3)) return EndTrim.NONE;
        return new EndTrim(
                dice.chance(0.2) ? Length.ZERO : dice.inches(0.5, 2),
                dice.chance(0.2) ? Length.ZERO : dice.inches(0.5, 2));
    }

    private Board.Builder defects(Board.Builder builder) {
        if (!features.has(Feature.DEFECTS) || dice.chance(0.3)) return builder;
        Board board = builder.build();
        List<Defect> defects = new ArrayList<>();
        for (int i = dice.whole(1, 3); i > 0; i--) defects.add(defect(board));
        return builder.defects(defects);
    }

    private Defect defect(Board board) {
        boolean sound = dice.chance(0.4);
        Length length = dice.inches(0.5, 4).min(board.length());
        Length narrow = board.width().min(board.widthAtFarEnd());
        Length width = dice.inches(0.5, 2).min(narrow);
        Length from = dice.between(Length.ZERO, board.length().minus(length));
        Length left = dice.between(Length.ZERO, narrow.minus(width));
        return new Defect(
                from,
                from.plus(length),
                left,
                left.plus(width),
                dice.of(sound ? SOUND : BAD),
                sound ? Defect.Blocks.SHOW : Defect.Blocks.ALL);
    }
}
