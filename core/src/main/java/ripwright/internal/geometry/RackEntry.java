package ripwright.internal.geometry;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import ripwright.measure.Length;
import ripwright.stock.Board;
import ripwright.stock.Defect;
import ripwright.stock.History;

/**
 * Writes a piece up as a board in its own frame, the way the rack will have it: as it lay in its board, but turned end
 * for end when only its right edge is straight, so that the straight edge is the left one, or when only its far end is square,
 * so that the square end is the marked one.
 */
public final class RackEntry {
    private final Piece piece;
    private final Board original;

    /** Of that piece. */
    public RackEntry(Piece piece) {
        this.piece = piece;
        this.original = piece.board();
    }

    /** The entry; {@code price} is money per board foot. */
    public Board as(String id, Optional<BigDecimal> price, History history) {
        Board.Builder entry = board(id).toBuilder().onRack(history);
        price.ifPresent(entry::price);
        return entry.build();
    }

    /** The piece as a board of the stack under that id, without a price. */
    public Board board(String id) {
        Board clear = clear(id);
        List<Defect> defects = new ArrayList<>();
        for (Defect defect : original.defects()) clipped(defect, clear).ifPresent(defects::add);
        if (!turned()) return clear.toBuilder().defects(defects).build();
        defects.replaceAll(defect -> turned(defect, clear));
        return clear.toBuilder()
                .width(clear.widthAtFarEnd(), clear.width())
                .endTrim(clear.endTrim().turned())
                .squareEnds(piece.squareEnds())
                .defects(defects)
                .build();
    }

    private boolean turned() {
        boolean onlyRight = piece.rightStraight() && !piece.leftStraight();
        return onlyRight || (piece.squareEnds() == 1 && piece.farSquare());
    }

    private Board clear(String id) {
        Length width = new Length(piece.widthAt(piece.from()));
        Length widthAtFarEnd = new Length(piece.widthAt(piece.to()));
        int straightEdges = (piece.leftStraight() ? 1 : 0) + (piece.rightStraight() ? 1 : 0);
        boolean straight = straightEdges == 2;
        long crook = straight ? 0 : new BoardEdges(original).crookOver(piece.length());
        return Board.measured(id, original.species().name(), piece.thickness(), width, new Length(piece.length()))
                .width(width, widthAtFarEnd)
                .rough(piece.thickness(), original.millsTo())
                .edges(straightEdges, straight ? Length.ZERO : original.edgeLoss(), new Length(crook))
                .endTrim(piece.endTrim().near(), piece.endTrim().far())
                .squareEnds(turned() ? 0 : piece.squareEnds())
                .testOnly(original.testOnly())
                .build();
    }

    /** What of a defect lies on the piece, in the piece's frame. */
    private Optional<Defect> clipped(Defect defect, Board clear) {
        long from = Math.max(defect.from().nanometers(), piece.from()) - piece.from();
        long to = Math.min(defect.to().nanometers(), piece.to()) - piece.from();
        if (from >= to) return Optional.empty();
        Length widest = clear.widthAt(new Length(from)).max(clear.widthAt(new Length(to)));
        long left = Math.max(defect.left().nanometers() - piece.left(), 0);
        long right = Math.min(defect.right().nanometers() - piece.left(), widest.nanometers());
        if (left >= right) return Optional.empty();
        return Optional.of(new Defect(
                new Length(from), new Length(to), new Length(left), new Length(right), defect.kind(), defect.blocks()));
    }

    /** The wood beside a section's strips is as wide everywhere when it is turned; of a tapered piece the widest place counts. */
    private static Defect turned(Defect defect, Board clear) {
        Length width = clear.widthAt(defect.from()).max(clear.widthAt(defect.to()));
        Length narrow = clear.widthAt(defect.from()).min(clear.widthAt(defect.to()));
        return new Defect(
                clear.length().minus(defect.to()),
                clear.length().minus(defect.from()),
                narrow.exceeds(defect.right()) ? narrow.minus(defect.right()) : Length.ZERO,
                width.minus(defect.left()),
                defect.kind(),
                defect.blocks());
    }
}
