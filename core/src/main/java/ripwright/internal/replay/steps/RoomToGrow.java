package ripwright.internal.replay.steps;

import java.util.List;
import java.util.function.Predicate;
import ripwright.bill.Part;
import ripwright.internal.replay.CrosscutLine;
import ripwright.internal.replay.PlacedBlank;
import ripwright.internal.replay.PlacedStrip;
import ripwright.internal.replay.ReplayIndex;
import ripwright.internal.replay.Tolerance;
import ripwright.stock.Defect;

/** How much longer a blank could be on its strip, with the other blanks where they lie or moved along; in nanometers. */
final class RoomToGrow {
    private final PlacedBlank blank;
    private final Part part;
    private final ReplayIndex pieces;
    private final long kerf;
    private final List<PlacedBlank> others;

    RoomToGrow(PlacedBlank blank, Part part, ReplayIndex pieces) {
        this.blank = blank;
        this.part = part;
        this.pieces = pieces;
        this.kerf = pieces.crosscutKerf();
        this.others = blank.strip().blanks().stream()
                .filter(other -> !other.id().equals(blank.id()))
                .toList();
    }

    /** The free wood on both sides, to the next blanks, to defects that bar it, or to the ends. */
    long beside() {
        CrosscutLine.Span free = free(other -> true);
        return Math.max(0, blank.from() - free.from()) + Math.max(0, free.to() - blank.to());
    }

    /** With all that are {@code toCome} made as planned, but moved along where no defect on the strip bars them. */
    long around(Predicate<PlacedBlank> toCome) {
        Predicate<PlacedBlank> moves = other -> toCome.test(other) && !aDefectBars(other);
        CrosscutLine.Span free = free(moves.negate());
        long taken = 0;
        for (PlacedBlank other : others) if (moves.test(other)) taken += takenOf(free, other);
        return free.length() - blank.span().length() - taken;
    }

    /** The span of wood around it, up to those others that {@code stay}. */
    private CrosscutLine.Span free(Predicate<PlacedBlank> stay) {
        CrosscutLine.Span room = notCutOff(blank.strip());
        long from = room.from();
        long to = room.to();
        for (PlacedBlank other : others) {
            if (!stay.test(other)) continue;
            if (other.from() <= blank.from()) from = Math.max(from, other.to() + kerf);
            else to = Math.min(to, other.from() - kerf);
        }
        for (Defect defect : blank.board().defects()) {
            if (!blank.barredAcross(defect, part)) continue;
            if (!Tolerance.more(defect.to().nanometers(), blank.from()))
                from = Math.max(from, defect.to().nanometers());
            if (!Tolerance.less(defect.from().nanometers(), blank.to()))
                to = Math.min(to, defect.from().nanometers());
        }
        return new CrosscutLine.Span(from, to);
    }

    /** As far from the strip's ends as blanks must keep; squaring has cut off what lies before the first of them. */
    private CrosscutLine.Span notCutOff(PlacedStrip strip) {
        CrosscutLine.Span room = strip.section().room(pieces.over());
        if (pieces.over() == 0) return room;
        long squared = strip.firstBlankFrom().orElse(room.from());
        return new CrosscutLine.Span(Math.max(room.from(), squared), room.to());
    }

    /** Whether a defect on the strip bars it: then it stays where it lies. */
    private boolean aDefectBars(PlacedBlank other) {
        return pieces.part(other.blank().part()).stream()
                .anyMatch(its -> other.board().defects().stream()
                        .anyMatch(defect -> other.barredAcross(defect, its) && isOnStrip(defect)));
    }

    private boolean isOnStrip(Defect defect) {
        return Tolerance.less(
                        defect.from().nanometers(), blank.strip().section().to())
                && Tolerance.more(
                        defect.to().nanometers(), blank.strip().section().from());
    }

    /** What another takes of that span, with a kerf on this blank's side. */
    private long takenOf(CrosscutLine.Span free, PlacedBlank other) {
        boolean before = other.from() <= blank.from();
        long from = before ? other.from() : other.from() - kerf;
        long to = before ? other.to() + kerf : other.to();
        return Math.max(0, Math.min(to, free.to()) - Math.max(from, free.from()));
    }
}
