package ripwright.resume;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import ripwright.internal.geometry.Piece;
import ripwright.plan.Offcut;

/** Finds among the pieces in hand the one that a plan lists as an offcut. */
final class OffcutFound {
    private final Offcut offcut;
    private final List<HeldPiece> held;

    OffcutFound(Offcut offcut, List<HeldPiece> held) {
        this.offcut = offcut;
        this.held = held;
    }

    /** Gives that piece the offcut's id: the leftover most like it. */
    void claim() {
        Optional<HeldPiece> found = held.stream()
                .filter(piece -> piece.of().equals(offcut.from()))
                .filter(piece -> piece.kind() == HeldPiece.Kind.REST || piece.kind() == HeldPiece.Kind.STRIP)
                .filter(piece -> difference(piece.wood()) >= -50_000)
                .min(Comparator.comparingLong(piece -> Math.abs(difference(piece.wood()))));
        found.ifPresent(piece -> held.set(
                held.indexOf(piece), new HeldPiece(HeldPiece.Kind.OFFCUT, offcut.id(), offcut.from(), piece.wood())));
    }

    /** How much longer it is than listed, in nanometers: test blanks may still come off it. */
    private long difference(Piece wood) {
        return wood.length() - offcut.piece().length().nanometers();
    }
}
