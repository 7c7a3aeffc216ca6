package ripwright.resume;

import java.util.List;
import java.util.OptionalInt;
import ripwright.internal.geometry.Piece;
import ripwright.measure.OnePlace;

/** The crosscut saw: takes lengths out of pieces in hand. */
final class PartialCrosscut {
    private final long kerf;
    private final boolean square; // whether ends that squaring and cuts of blanks make count as square
    private final List<HeldPiece> held;
    private final List<Losses> dust;
    private final SawsUsed saws;

    PartialCrosscut(long kerf, boolean square, List<HeldPiece> held, List<Losses> dust, SawsUsed saws) {
        this.kerf = kerf;
        this.square = square;
        this.held = held;
        this.dust = dust;
        this.saws = saws;
    }

    /** What lies there, out of what is held of that board, section or strip; the rest stays in hand. */
    Piece takes(String of, long from, long to) {
        return takes(place(of, from, to), from, to, false);
    }

    /** The same from a strip as blanks are cut, which makes square ends where any are wanted. */
    Piece takesAtTheStop(String of, long from, long to) {
        return takes(place(of, from, to), from, to, square);
    }

    /** Cuts a strip off square there; what falls is what is left of it. */
    void squares(String of, long place) {
        int i = place(of, place, place);
        HeldPiece strip = held.remove(i);
        Piece wood = strip.wood();
        boolean there = place - wood.from() <= OnePlace.NANOMETERS;
        Piece rest = squared(there ? wood : wood.span(place, wood.to()), true, false);
        held.add(i, strip.with(rest));
        if (there) return;
        cut(wood, Math.max(place - kerf, wood.from()), place);
        if (place - kerf > wood.from())
            held.add(i, new HeldPiece(HeldPiece.Kind.REST, of, of, wood.span(wood.from(), place - kerf)));
    }

    private int place(String of, long from, long to) {
        OptionalInt found = OptionalInt.empty();
        for (int i = 0; i < held.size() && found.isEmpty(); i++) {
            HeldPiece piece = held.get(i);
            boolean there = piece.wood().from() - OnePlace.NANOMETERS <= from
                    && to <= piece.wood().to() + OnePlace.NANOMETERS;
            if (there && piece.of().equals(of) && piece.stock()) found = OptionalInt.of(i);
        }
        return found.orElseThrow(
                () -> new IllegalStateException("Nothing is left of " + of + " from " + from + " to " + to + " nm."));
    }

    private Piece takes(int place, long from, long to, boolean square) {
        HeldPiece piece = held.remove(place);
        Piece wood = piece.wood();
        long start = from - wood.from() <= OnePlace.NANOMETERS ? wood.from() : from;
        long end = wood.to() - to <= OnePlace.NANOMETERS ? wood.to() : to;
        if (end < wood.to()) {
            cut(wood, end, Math.min(end + kerf, wood.to()));
            if (end + kerf < wood.to())
                held.add(place, piece.with(squared(wood.span(end + kerf, wood.to()), square, false)));
        }
        if (start > wood.from()) {
            cut(wood, Math.max(start - kerf, wood.from()), start);
            if (start - kerf > wood.from())
                held.add(place, piece.with(squared(wood.span(wood.from(), start - kerf), false, square)));
        }
        return squared(wood.span(start, end), square && start > wood.from(), square && end < wood.to());
    }

    private static Piece squared(Piece wood, boolean near, boolean far) {
        return new Piece(
                wood.board(),
                wood.from(),
                wood.to(),
                wood.left(),
                wood.right(),
                wood.leftStraight(),
                wood.rightStraight(),
                wood.milled(),
                wood.nearSquare() || near,
                wood.farSquare() || far);
    }

    private void cut(Piece wood, long from, long to) {
        saws.crosscut();
        if (to > from) dust.add(new Losses(Losses.Cause.CROSSCUT, wood.span(from, to)));
    }
}
