package ripwright.resume;

import java.util.List;
import ripwright.internal.geometry.Piece;
import ripwright.measure.OnePlace;

/** The crosscut saw: takes lengths out of pieces in hand. */
final class PartialCrosscut {
    private final long kerf;
    private final List<HeldPiece> held;
    private final List<Losses> dust;
    private final SawsUsed saws;

    PartialCrosscut(long kerf, List<HeldPiece> held, List<Losses> dust, SawsUsed saws) {
        this.kerf = kerf;
        this.held = held;
        this.dust = dust;
        this.saws = saws;
    }

    /** What lies there, out of what is held of that board, section or strip; the rest stays in hand. */
    Piece takes(String of, long from, long to) {
        for (int i = 0; i < held.size(); i++) {
            HeldPiece piece = held.get(i);
            boolean there = piece.wood().from() - OnePlace.NANOMETERS <= from
                    && to <= piece.wood().to() + OnePlace.NANOMETERS;
            if (there && piece.of().equals(of) && piece.stock()) return takes(i, from, to);
        }
        throw new IllegalStateException("Nothing is left of " + of + " from " + from + " to " + to + " nm.");
    }

    private Piece takes(int place, long from, long to) {
        HeldPiece piece = held.remove(place);
        Piece wood = piece.wood();
        long start = from - wood.from() <= OnePlace.NANOMETERS ? wood.from() : from;
        long end = wood.to() - to <= OnePlace.NANOMETERS ? wood.to() : to;
        if (end < wood.to()) {
            cut(wood, end, Math.min(end + kerf, wood.to()));
            if (end + kerf < wood.to()) held.add(place, piece.with(wood.span(end + kerf, wood.to())));
        }
        if (start > wood.from()) {
            cut(wood, Math.max(start - kerf, wood.from()), start);
            if (start - kerf > wood.from()) held.add(place, piece.with(wood.span(wood.from(), start - kerf)));
        }
        return wood.span(start, end);
    }

    private void cut(Piece wood, long from, long to) {
        saws.crosscut();
        if (to > from) dust.add(new Losses(Losses.Cause.CROSSCUT, wood.span(from, to)));
    }
}
