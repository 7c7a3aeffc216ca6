package ripwright.resume;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import ripwright.bill.Part;
import ripwright.internal.geometry.Piece;
import ripwright.job.Job;
import ripwright.measure.Length;
import ripwright.measure.OnePlace;
import ripwright.plan.Blank;
import ripwright.plan.Section;
import ripwright.plan.Strip;
import ripwright.replay.Fault;
import ripwright.resume.HeldPiece.Kind;
import ripwright.stock.Board;
import ripwright.stock.Defect;
import ripwright.stock.Edge;

/** Holds the stack and rack of a resumed job against the wood that is in hand, in the boards it was cut from. */
final class MeasureCheck {
    private static final String RULE = "resume.hand";
    private static final long TOLERANCE = OnePlace.NANOMETERS;

    private final Job job;
    private final Resume resume;
    private final Job rest;
    private final List<Fault> faults;
    private final Map<String, SizeNow> pieces = new LinkedHashMap<>();

    MeasureCheck(Job job, Resume resume, Job rest, List<Fault> faults) {
        this.job = job;
        this.resume = resume;
        this.rest = rest;
        this.faults = faults;
        for (SizeNow piece : resume.pieces()) pieces.put(piece.id(), piece);
    }

    Optional<SizeNow> piece(String id) {
        return Optional.ofNullable(pieces.get(id));
    }

    void check() {
        theSamePieces();
        apartByTheKerfs();
        for (SizeNow piece : resume.pieces()) notGrown(piece);
        for (Board board : rest.boards()) piece(board.id()).ifPresent(piece -> asItIs(board, piece));
    }

    private Length over() {
        return job.breakdown().over();
    }

    private void fault(String piece, String what) {
        faults.add(new Fault(piece, what, RULE));
    }

    /** All in hand that a part could come of is listed, and nothing that is not in hand. */
    private void theSamePieces() {
        Set<String> listed = new HashSet<>();
        for (Board board : rest.boards()) {
            listed.add(board.id());
            if (piece(board.id()).filter(SizeNow::inHand).isEmpty()) fault(board.id(), "it is not in hand.");
        }
        for (SizeNow piece : resume.pieces())
            if (piece.inHand()
                    && rest.parts().stream().anyMatch(part -> piece.gives(part, over()))
                    && !listed.contains(piece.id())) fault(piece.id(), "it is in hand, and not listed.");
    }

    /** What the steps made of a board lies in it side by side, with a kerf between. */
    private void apartByTheKerfs() {
        Map<String, List<SizeNow>> ofBoard = new HashMap<>();
        for (SizeNow piece : resume.pieces())
            ofBoard.computeIfAbsent(piece.board(), key -> new ArrayList<>()).add(piece);
        ofBoard.values().forEach(these -> {
            for (int i = 0; i < these.size(); i++) {
                inItsBoard(these.get(i));
                for (int k = 0; k < i; k++) apart(these.get(k), these.get(i));
            }
        });
    }

    private void inItsBoard(SizeNow piece) {
        Piece wood = piece.planned().wood();
        boolean in = wood.from() >= 0
                && wood.left() >= 0
                && wood.to() <= wood.board().length().nanometers()
                && right(wood, wood.from()) <= across(wood, wood.from()) + TOLERANCE
                && right(wood, wood.to()) <= across(wood, wood.to()) + TOLERANCE;
        if (!in) fault(piece.id(), "it reaches beyond board " + piece.board() + ".");
    }

    private static long right(Piece wood, long x) {
        return wood.left() + wood.widthAt(x);
    }

    private static long across(Piece wood, long x) {
        return wood.board().widthAt(new Length(x)).nanometers();
    }

    private void apart(SizeNow one, SizeNow other) {
        Piece a = one.planned().wood();
        Piece b = other.planned().wood();
        long kerf = job.saw().crosscutKerf().nanometers() - TOLERANCE;
        boolean along = a.to() + kerf <= b.from() || b.to() + kerf <= a.from();
        long rip = job.saw().ripKerf().nanometers() - TOLERANCE;
        boolean across = a.right().orElse(Long.MAX_VALUE / 2) + rip <= b.left()
                || b.right().orElse(Long.MAX_VALUE / 2) + rip <= a.left();
        if (!along && !across) fault(one.id(), "no saw can part it from " + other.id() + ".");
    }

    /** What went wrong makes no wood: only a strip may be wider, of what was beside it, and a whole board another size. */
    private void notGrown(SizeNow piece) {
        if (piece.planned().kind() == Kind.BOARD) return;
        Piece was = piece.planned().wood();
        Piece is = piece.wood();
        boolean in = is.from() >= was.from() && is.to() <= was.to() && is.left() >= was.left();
        boolean narrower =
                is.widthAt(is.from()) <= was.widthAt(is.from()) && is.widthAt(is.to()) <= was.widthAt(is.to());
        if (!in || (!narrower && piece.planned().kind() != Kind.STRIP)) fault(piece.id(), "it has grown.");
    }

    /** It is as large, as thick and as sound as the wood it is. */
    private void asItIs(Board board, SizeNow piece) {
        Piece wood = piece.wood();
        Board whole = wood.board();
        boolean turned = piece.turned();
        long near = wood.widthAt(turned ? wood.to() : wood.from());
        long far = wood.widthAt(turned ? wood.from() : wood.to());
        boolean size = board.length().nanometers() == wood.length()
                && board.width().nanometers() == near
                && board.widthAtFarEnd().nanometers() == far;
        boolean thick = board.millsTo().equals(whole.millsTo())
                && board.thickness().equals(wood.milled() ? whole.millsTo() : whole.thickness());
        if (!size) fault(piece.id(), "it is listed in another size than it has.");
        if (!thick) fault(piece.id(), "it is listed in another thickness than it has.");
        if (!board.species().equals(whole.species())) fault(piece.id(), "it is listed as " + board.species() + ".");
        boolean edges = board.straightEdges() <= (wood.leftStraight() ? 1 : 0) + (wood.rightStraight() ? 1 : 0);
        if (!edges) fault(piece.id(), "it is listed with more straight edges than it has.");
        if (board.squareEnds() != piece.squareEnds())
            fault(piece.id(), "it is listed with other square ends than it has.");
    }

    /** Lays a blank of the rest back into the board it comes from: in its piece, and on nothing that bars its part. */
    void layBack(SizeNow piece, Section section, Strip strip, Blank blank, Part part) {
        Piece wood = piece.wood();
        Piece in = wood;
        long length = blank.length().nanometers();
        long width = strip.width().nanometers();
        long x = blank.from().nanometers();
        long wide = Math.min(
                in.widthAt(place(piece, section.from().nanometers())),
                in.widthAt(place(piece, section.to().nanometers())));
        long near = section.edgeLoss().nanometers() + strip.offset().nanometers();
        long y = section.referenceEdge() == Edge.LEFT ? near : wide - near - width;
        boolean turned = piece.turned();
        long from = turned ? wood.to() - x - length : wood.from() + x;
        long left = wood.left() + (turned ? wood.narrowWidth() - y - width : y);
        boolean inPiece = from >= wood.from() - TOLERANCE
                && from + length <= wood.to() + TOLERANCE
                && left >= wood.left() - TOLERANCE
                && left + width <= right(wood, clamped(wood, from)) + TOLERANCE
                && left + width <= right(wood, clamped(wood, from + length)) + TOLERANCE;
        if (!inPiece) fault(blank.id(), "it does not lie in " + piece.id() + ".");
        for (Defect defect : wood.board().defects())
            if (defect.blocks() == Defect.Blocks.ALL || part.face() == Part.Face.SHOW)
                if (defect.from().nanometers() < from + length - TOLERANCE
                        && defect.to().nanometers() > from + TOLERANCE
                        && defect.left().nanometers() < left + width - TOLERANCE
                        && defect.right().nanometers() > left + TOLERANCE)
                    fault(blank.id(), "in board " + piece.board() + " it lies on a " + defect.kind() + ".");
    }

    private static long place(SizeNow piece, long x) {
        Piece wood = piece.wood();
        return clamped(wood, piece.turned() ? wood.to() - x : wood.from() + x);
    }

    private static long clamped(Piece wood, long x) {
        return Math.max(wood.from(), Math.min(wood.to(), x));
    }
}
