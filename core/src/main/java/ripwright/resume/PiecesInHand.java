package ripwright.resume;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.OptionalLong;
import java.util.Set;
import ripwright.internal.geometry.Piece;
import ripwright.internal.geometry.RackEntry;
import ripwright.internal.meant.PlannedPieces;
import ripwright.job.Job;
import ripwright.measure.Length;
import ripwright.measure.OnePlace;
import ripwright.plan.CutBoard;
import ripwright.plan.Section;
import ripwright.plan.Step;
import ripwright.plan.Step.Does;
import ripwright.plan.Strip;
import ripwright.plan.TestBlank;
import ripwright.resume.HeldPiece.Kind;
import ripwright.stock.Board;
import ripwright.stock.Edge;

/**
 * Re-enacts steps of a plan on the job's boards, one after the other: every piece that is there afterwards, and all the wood
 * that went to dust. Both together are always the whole boards.
 */
final class PiecesInHand {
    private final Job job;
    private final PlannedPieces pieces;
    private final PartialCrosscut crosscut;
    private final List<HeldPiece> held = new ArrayList<>();
    private final List<Losses> dust = new ArrayList<>();
    private final SawsUsed saws = new SawsUsed();
    private final Set<String> opened = new LinkedHashSet<>();
    private final Map<String, Piece> made = new HashMap<>();

    PiecesInHand(Job job, PlannedPieces pieces) {
        this.job = job;
        this.pieces = pieces;
        crosscut = new PartialCrosscut(
                job.saw().crosscutKerf().nanometers(), job.breakdown().leavesOver(), held, dust, saws);
        for (Board board : job.boards())
            held.add(new HeldPiece(
                    Kind.BOARD,
                    board.id(),
                    board.id(),
                    Piece.across(board, 0, board.length().nanometers())));
    }

    List<HeldPiece> held() {
        return Collections.unmodifiableList(held);
    }

    List<Losses> dust() {
        return Collections.unmodifiableList(dust);
    }

    SawsUsed saws() {
        return saws;
    }

    /** The boards something was cut from. */
    Set<String> opened() {
        return Collections.unmodifiableSet(opened);
    }

    /** Where all that was ever made lay in its board, by its id; offcuts as they are now. */
    Map<String, Piece> places() {
        Map<String, Piece> places = new HashMap<>(made);
        for (HeldPiece piece : held) if (piece.kind() == Kind.OFFCUT) places.put(piece.name(), piece.wood());
        return places;
    }

    /** As much of a step as it says it makes; offcuts lie in {@code places}. */
    void doesInPart(Step step, Map<String, Piece> places) {
        if (step.does() == Does.TEST) {
            step.setting().ifPresent(setting -> test(setting, false));
            return;
        }
        work(step);
        for (String id : step.makes())
            pieces.offcut(id).ifPresent(offcut -> {
                Piece place = Objects.requireNonNull(places.get(id));
                Piece wood = crosscut.takesAtTheStop(offcut.from(), place.from(), place.to());
                held.add(new HeldPiece(Kind.OFFCUT, id, offcut.from(), wood));
            });
    }

    void does(Step step) {
        work(step);
        for (String id : step.makes()) pieces.offcut(id).ifPresent(offcut -> new OffcutFound(offcut, held).claim());
    }

    private void work(Step step) {
        switch (step.does()) {
            case BREAKDOWN -> breakDown(step);
            case MILL -> mill(step.piece());
            case STRAIGHTEN -> straighten(step.piece());
            case TEST -> step.setting().ifPresent(setting -> test(setting, true));
            case RIP -> rip(step);
            case CHECK -> {}
            case SQUARE -> square(step.piece());
            case BLANK, TRIM -> crosscut(step);
        }
    }

    private void breakDown(Step step) {
        String id = step.piece();
        opened.add(id);
        replace(named(Kind.BOARD, id), board -> new HeldPiece(Kind.REST, id, id, board.wood()));
        for (Section section : pieces.cutBoard(id).map(CutBoard::sections).orElse(List.of())) {
            if (!step.makes().contains(section.id())
                    && section.strips().stream().map(Strip::id).noneMatch(step.makes()::contains)) continue;
            Piece wood =
                    crosscut.takes(id, section.from().nanometers(), section.to().nanometers());
            if (wood.board().ripped()) {
                Piece strip = edges(wood, wood.left(), OptionalLong.of(wood.narrowWidth()), true, true);
                for (Strip one : section.strips()) add(new HeldPiece(Kind.STRIP, one.id(), one.id(), strip));
            } else add(new HeldPiece(Kind.SECTION, section.id(), section.id(), wood));
        }
        step.makes().forEach(this::testBlank);
    }

    /** Where its first blank starts; what falls there is no longer the strip. */
    private void square(String id) {
        Strip strip = pieces.strip(id).orElseThrow();
        crosscut.squares(id, strip.blanks().get(0).from().nanometers());
    }

    private void crosscut(Step step) {
        for (String id : step.makes()) {
            pieces.blank(id).ifPresent(blank -> {
                String strip = pieces.stripOf(id).orElseThrow();
                long from = blank.from().nanometers();
                Piece wood = crosscut.takesAtTheStop(
                        strip, from, from + blank.length().nanometers());
                add(new HeldPiece(Kind.BLANK, id, strip, wood));
            });
            testBlank(id);
        }
        pieces.strip(step.piece()).ifPresent(this::oneIsTheStrip);
    }

    /** Of what is left of a strip that is what blanks are still to be cut from, or else the longest; the rest is left over. */
    private void oneIsTheStrip(Strip strip) {
        List<HeldPiece> left = held.stream()
                .filter(piece -> piece.kind() == Kind.STRIP && piece.name().equals(strip.id()))
                .toList();
        List<HeldPiece> open =
                left.stream().filter(piece -> isToBeCut(strip, piece.wood())).toList();
        List<HeldPiece> still = open.isEmpty()
                ? left.stream()
                        .max(Comparator.comparingLong(piece -> piece.wood().length()))
                        .stream()
                        .toList()
                : open;
        for (HeldPiece piece : left)
            if (!still.contains(piece))
                replace(piece, part -> new HeldPiece(Kind.REST, strip.id(), strip.id(), part.wood()));
    }

    private boolean isToBeCut(Strip strip, Piece wood) {
        return strip.blanks().stream()
                .filter(blank -> !made.containsKey(blank.id()))
                .mapToLong(blank -> blank.from().nanometers())
                .anyMatch(from -> from >= wood.from() - OnePlace.NANOMETERS && from < wood.to());
    }

    private void testBlank(String id) {
        pieces.testBlank(id).ifPresent(this::testBlank);
    }

    private void testBlank(TestBlank blank) {
        pieces.placeOf(blank).ifPresent(place -> {
            Piece wood = crosscut.takes(
                    blank.from(), place.from().nanometers(), place.to().nanometers());
            add(new HeldPiece(Kind.TEST_BLANK, blank.id(), blank.from(), wood));
        });
    }

    /** A section, the strip of a ripped board, or a test blank. */
    private void mill(String id) {
        Set<String> strips = pieces.stripsOf(id);
        for (HeldPiece piece : List.copyOf(held))
            if (piece.name().equals(id) || (piece.kind() == Kind.STRIP && strips.contains(piece.name())))
                replace(piece, rough -> rough.with(milled(rough.wood())));
    }

    private void straighten(String id) {
        pieces.section(id)
                .ifPresentOrElse(
                        section -> {
                            HeldPiece rough = named(Kind.SECTION, id);
                            long loss = pieces.exactLoss(section.edgeLoss(), due(rough.wood()));
                            replace(rough, piece -> piece.with(straight(piece.wood(), section.referenceEdge(), loss)));
                            saws.rip();
                        },
                        () -> replace(named(Kind.TEST_BLANK, id), piece -> piece.with(straightened(piece.wood()))));
    }

    /** What straightening an edge of that piece takes, at least. */
    private static long due(Piece piece) {
        Board entry = new RackEntry(piece).board("?");
        return entry.edgeLoss().max(entry.crook()).nanometers();
    }

    private Piece straightened(Piece piece) {
        return straight(piece, Edge.LEFT, due(piece));
    }

    private Piece straight(Piece piece, Edge edge, long loss) {
        long right = edge == Edge.LEFT ? 0 : rightOf(piece);
        if (edge == Edge.LEFT) {
            lose(Losses.Cause.EDGE, piece, piece.left(), OptionalLong.of(piece.left() + loss));
            return edges(piece, piece.left() + loss, piece.right(), true, piece.rightStraight());
        }
        lose(Losses.Cause.EDGE, piece, right - loss, OptionalLong.of(right));
        return edges(piece, piece.left(), OptionalLong.of(right - loss), piece.leftStraight(), true);
    }

    /** All test blanks that prove a setting count as cut down by it, those not made yet too if all are {@code there}. */
    private void test(String id, boolean there) {
        saws.setting(id);
        saws.rip();
        Length width = pieces.setting(id).orElseThrow().width();
        for (TestBlank blank : pieces.plan().testBlanks()) {
            if (!blank.proves().contains(id)) continue;
            if (there && held.stream().noneMatch(piece -> piece.name().equals(blank.id())))
                testBlank(blank); // a whole piece
            for (HeldPiece piece : List.copyOf(held))
                if (piece.name().equals(blank.id()))
                    replace(piece, whole -> whole.with(cutDown(whole.wood(), width.nanometers())));
        }
    }

    private Piece cutDown(Piece blank, long width) {
        Piece ready = blank.hasStraightEdge() ? blank : straightened(blank);
        if (ready.narrowWidth() <= width) return ready;
        if (ready.leftStraight()) {
            lose(Losses.Cause.TEST, ready, ready.left() + width, ready.right());
            return edges(ready, ready.left(), OptionalLong.of(ready.left() + width), true, true);
        }
        long right = rightOf(ready);
        lose(Losses.Cause.TEST, ready, ready.left(), OptionalLong.of(right - width));
        return edges(ready, right - width, OptionalLong.of(right), true, true);
    }

    private void rip(Step step) {
        step.setting().ifPresent(saws::setting);
        Section section = pieces.section(step.piece()).orElseThrow();
        for (Strip strip : section.strips()) {
            if (!step.makes().contains(strip.id())) continue;
            saws.rip();
            HeldPiece rest = named(Kind.SECTION, section.id());
            held.remove(rest);
            boolean last = strip.equals(section.strips().get(section.strips().size() - 1));
            rip(section, strip.id(), rest, strip.width().nanometers(), last);
        }
    }

    private void rip(Section section, String strip, HeldPiece rest, long width, boolean last) {
        boolean left = section.referenceEdge() == Edge.LEFT;
        Piece wood = rest.wood();
        long kerf = job.saw().ripKerf().nanometers();
        long start = left ? wood.left() : rightOf(wood) - width;
        add(new HeldPiece(Kind.STRIP, strip, strip, edges(wood, start, OptionalLong.of(start + width), true, true)));
        boolean remains = wood.narrowWidth() > width + kerf;
        long gone = remains ? kerf : wood.narrowWidth() - width; // at the narrow end
        Piece beside;
        if (left) {
            lose(Losses.Cause.RIP, wood, start + width, remains ? OptionalLong.of(start + width + gone) : wood.right());
            beside = edges(wood, start + width + kerf, wood.right(), true, wood.rightStraight());
        } else {
            lose(Losses.Cause.RIP, wood, start - gone, OptionalLong.of(start));
            beside = edges(wood, wood.left(), OptionalLong.of(start - kerf), wood.leftStraight(), true);
        }
        if (remains) held.add(last ? new HeldPiece(Kind.REST, section.id(), section.id(), beside) : rest.with(beside));
    }

    private void add(HeldPiece piece) {
        held.add(piece);
        made.put(piece.name(), piece.wood());
    }

    private HeldPiece named(Kind kind, String name) {
        return held.stream()
                .filter(piece -> piece.kind() == kind && piece.name().equals(name))
                .findFirst()
                .orElseThrow(() -> new IllegalStateException(name + " is not in hand."));
    }

    private void replace(HeldPiece piece, java.util.function.UnaryOperator<HeldPiece> by) {
        held.set(held.indexOf(piece), by.apply(piece));
    }

    private void lose(Losses.Cause cause, Piece piece, long left, OptionalLong right) {
        if (right.isPresent() && right.getAsLong() <= left) return;
        if (right.isEmpty() && Math.max(piece.widthAt(piece.from()), piece.widthAt(piece.to())) + piece.left() <= left)
            return;
        dust.add(new Losses(cause, edges(piece, left, right, piece.leftStraight(), piece.rightStraight())));
    }

    private static long rightOf(Piece piece) {
        return piece.left() + piece.narrowWidth();
    }

    private static Piece edges(
            Piece piece, long left, OptionalLong right, boolean leftStraight, boolean rightStraight) {
        return new Piece(
                piece.board(),
                piece.from(),
                piece.to(),
                left,
                right,
                leftStraight,
                rightStraight,
                piece.milled(),
                piece.nearSquare(),
                piece.farSquare());
    }

    private static Piece milled(Piece piece) {
        return new Piece(
                piece.board(),
                piece.from(),
                piece.to(),
                piece.left(),
                piece.right(),
                piece.leftStraight(),
                piece.rightStraight(),
                true,
                piece.nearSquare(),
                piece.farSquare());
    }
}
