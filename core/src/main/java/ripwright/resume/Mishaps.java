package ripwright.resume;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Set;
import ripwright.internal.geometry.Piece;
import ripwright.internal.meant.PlannedPieces;
import ripwright.job.Job;
import ripwright.job.Problem;
import ripwright.measure.Length;
import ripwright.plan.Section;
import ripwright.resume.HeldPiece.Kind;
import ripwright.stock.Board;
import ripwright.stock.Defect;
import ripwright.stock.Edge;

/** What a report's changes make of the pieces in hand. */
final class Mishaps {
    private static final int MOST_NAMED = 20;

    private final Job job;
    private final PlannedPieces pieces;
    private final HandIds ids;
    private final List<Change> changes;
    private final Map<String, Integer> said =
            new HashMap<>(); // a piece and what of it is said -> the change that says it
    private final Set<String> measured = new HashSet<>(); // pieces of which it is said what they still are
    private final Map<String, SizeNow> now = new LinkedHashMap<>();
    private final List<Problem> problems = new ArrayList<>();

    Mishaps(Job job, PlannedPieces pieces, List<HeldPiece> held, List<Change> changes, ChainIds used) {
        this.job = job;
        this.pieces = pieces;
        this.changes = changes;
        ids = new HandIds(held, used);
        for (HeldPiece piece : held) {
            String id = ids.of(piece);
            now.put(id, new SizeNow(id, piece, piece.wood(), true, true));
        }
        for (Change change : changes) {
            if (change instanceof Change.Width width) measured.add(width.piece());
            if (change instanceof Change.Extent length) measured.add(length.piece());
            if (change instanceof Change.Found found) measured.add(found.piece());
        }
        for (int i = 0; i < changes.size(); i++) apply(i);
    }

    List<SizeNow> now() {
        return List.copyOf(now.values());
    }

    List<Problem> problems() {
        return List.copyOf(problems);
    }

    private void apply(int place) {
        Change change = changes.get(place);
        if (change instanceof Change.Width width)
            piece(place, width.piece())
                    .filter(piece -> saidOnce(place, "width", piece))
                    .ifPresent(piece -> width(place, piece, width.width()));
        else if (change instanceof Change.Extent length)
            piece(place, length.piece())
                    .filter(piece -> saidOnce(place, "length", piece))
                    .ifPresent(piece -> length(place, piece, length.length()));
        else if (change instanceof Change.Found found)
            piece(place, found.piece()).ifPresent(piece -> defect(place, piece, found.defect()));
        else if (change instanceof Change.Spoiled spoiled)
            piece(place, spoiled.piece())
                    .ifPresent(piece -> now.put(piece.id(), piece.spoiled(!measured.contains(spoiled.piece()))));
    }

    /** A piece has one width and one length; which of two is meant nobody can know. */
    private boolean saidOnce(int place, String field, SizeNow piece) {
        Integer before = said.putIfAbsent(field + " of " + piece.id(), place);
        if (before != null)
            wrong(
                    place,
                    field,
                    "changes[" + before + "] says the " + field + " of \"" + piece.id()
                            + "\" already; say it once, as it is now.");
        return before == null;
    }

    private void wrong(int place, String field, String what) {
        problems.add(new Problem("changes[" + place + "]." + field, what));
    }

    private Optional<SizeNow> piece(int place, String id) {
        Optional<SizeNow> named = ids.piece(id.replace('#', '.')).map(piece -> now.get(ids.of(piece)));
        if (named.isPresent()) return named;
        List<String> of = now.values().stream()
                .filter(piece -> piece.planned().of().equals(id)
                        || piece.planned().name().equals(id))
                .map(SizeNow::id)
                .toList();
        boolean known = pieces.names(id) || pieces.board(id).isPresent();
        if (!of.isEmpty())
            wrong(place, "piece", "\"" + id + "\" is cut up by now; report on what it became: " + names(of) + ".");
        else if (known)
            wrong(
                    place,
                    "piece",
                    "\"" + id + "\" is not in hand after the steps reported; report the step that makes it too.");
        else wrong(place, "piece", "\"" + id + "\" is no piece of this plan.");
        return Optional.empty();
    }

    private static String names(List<String> ids) {
        if (ids.size() <= MOST_NAMED) return String.join(", ", ids);
        return String.join(", ", ids.subList(0, MOST_NAMED)) + " and " + (ids.size() - MOST_NAMED) + " more";
    }

    private void width(int place, SizeNow piece, Length width) {
        Piece wood = piece.wood();
        long wide = width.nanometers();
        if (piece.planned().kind() == Kind.BOARD) {
            Board board = wood.board();
            remeasured(place, piece, board.toBuilder().width(width, width), board.length(), width);
            return;
        }
        long more = wide - wood.narrowWidth();
        if (more == 0) return;
        if (more > 0 && !(piece.planned().kind() == Kind.STRIP && takenFromBeside(piece, more))) {
            wrong(
                    place,
                    "width",
                    text(width) + " is more than the " + text(new Length(wood.narrowWidth()))
                            + " that were cut. Trim it, or leave it out.");
            return;
        }
        change(piece, resized(wood, wood.from(), wood.to(), wood.left(), OptionalLong.of(wood.left() + wide)));
    }

    /** What a strip has too much, what is left of its section has too little. */
    private boolean takenFromBeside(SizeNow strip, long more) {
        Optional<Section> section = pieces.sectionOf(strip.planned().name());
        if (section.isEmpty()) return false;
        for (SizeNow beside : List.copyOf(now.values())) {
            Kind kind = beside.planned().kind();
            boolean rest = kind == Kind.SECTION || kind == Kind.REST || kind == Kind.OFFCUT;
            if (!rest || !beside.planned().of().equals(section.get().id())) continue;
            Piece wood = beside.wood();
            if (wood.narrowWidth() <= more) return false;
            boolean left = section.get().referenceEdge() == Edge.LEFT;
            Piece less = left
                    ? resized(wood, wood.from(), wood.to(), wood.left() + more, wood.right())
                    : resized(
                            wood,
                            wood.from(),
                            wood.to(),
                            wood.left(),
                            OptionalLong.of(wood.left() + wood.narrowWidth() - more));
            if (!measured.contains(beside.id())) change(beside, less);
            return true;
        }
        return false;
    }

    private void length(int place, SizeNow piece, Length length) {
        Piece wood = piece.wood();
        if (piece.planned().kind() == Kind.BOARD) {
            Board board = wood.board();
            remeasured(
                    place,
                    piece,
                    board.toBuilder().length(length),
                    length,
                    board.width().max(board.widthAtFarEnd()));
            return;
        }
        if (length.nanometers() == wood.length()) return;
        if (length.nanometers() > wood.length())
            wrong(
                    place,
                    "length",
                    text(length) + " is more than the " + text(new Length(wood.length()))
                            + " that were cut. Trim it, or leave it out.");
        else change(piece, wood.span(wood.from(), wood.from() + length.nanometers()));
    }

    /** A board nothing is cut from, of another size than it was said to be; defects beyond it are gone with it. */
    private void remeasured(int place, SizeNow piece, Board.Builder board, Length length, Length width) {
        List<Defect> defects = new ArrayList<>();
        for (Defect defect : piece.wood().board().defects())
            if (length.exceeds(defect.from()) && width.exceeds(defect.left()))
                defects.add(new Defect(
                        defect.from(),
                        defect.to().min(length),
                        defect.left(),
                        defect.right().min(width),
                        defect.kind(),
                        defect.blocks()));
        try {
            Board whole = board.defects(defects).build();
            change(piece, Piece.across(whole, 0, whole.length().nanometers()));
        } catch (IllegalArgumentException e) {
            wrong(place, "piece", String.valueOf(e.getMessage()));
        }
    }

    private void defect(int place, SizeNow piece, Defect defect) {
        Piece wood = piece.wood();
        Length length = new Length(wood.length());
        Length width = new Length(Math.max(wood.widthAt(wood.from()), wood.widthAt(wood.to())));
        if (defect.to().exceeds(length)) {
            wrong(place, "defect.to", text(defect.to()) + " is beyond the piece's length of " + text(length) + ".");
            return;
        }
        if (defect.right().exceeds(width)) {
            wrong(place, "defect.right", text(defect.right()) + " is beyond the piece's width of " + text(width) + ".");
            return;
        }
        Length along = new Length(wood.from());
        Length across = new Length(wood.left());
        List<Defect> defects = new ArrayList<>(wood.board().defects());
        defects.add(new Defect(
                defect.from().plus(along),
                defect.to().plus(along),
                defect.left().plus(across),
                defect.right().plus(across),
                defect.kind(),
                defect.blocks()));
        Board board = wood.board().toBuilder().defects(defects).build();
        SizeNow with = piece.as(new Piece(
                board,
                wood.from(),
                wood.to(),
                wood.left(),
                wood.right(),
                wood.leftStraight(),
                wood.rightStraight(),
                wood.milled(),
                wood.nearSquare(),
                wood.farSquare()));
        boolean still = piece.good() && !bars(piece.planned(), defect);
        now.put(piece.id(), new SizeNow(with.id(), with.planned(), with.wood(), still, with.usable()));
    }

    /** Whether a blank with that defect no longer serves its part. */
    private boolean bars(HeldPiece piece, Defect defect) {
        return pieces.blank(piece.name())
                .flatMap(blank -> job.parts().stream()
                        .filter(part -> part.name().equals(blank.part()))
                        .findFirst())
                .map(part -> defect.blocks() == Defect.Blocks.ALL || part.face() == ripwright.bill.Part.Face.SHOW)
                .orElse(true);
    }

    private void change(SizeNow piece, Piece wood) {
        now.put(piece.id(), piece.as(wood));
    }

    private static Piece resized(Piece wood, long from, long to, long left, OptionalLong right) {
        return new Piece(
                wood.board(),
                from,
                to,
                left,
                right,
                wood.leftStraight(),
                wood.rightStraight(),
                wood.milled(),
                wood.nearSquare(),
                wood.farSquare());
    }

    private String text(Length length) {
        return job.units().exact(length) + " " + job.units().symbol();
    }
}
