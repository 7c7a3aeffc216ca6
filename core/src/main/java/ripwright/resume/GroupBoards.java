package ripwright.resume;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import ripwright.bill.Part;
import ripwright.internal.meant.PlannedPieces;
import ripwright.job.Job;
import ripwright.measure.Length;
import ripwright.plan.Blank;
import ripwright.plan.Section;

/**
 * Keeps parts that come from certain boards, or together from one, to the pieces of those boards. A group that was begun goes
 * on with the board it was begun on; one that the plan cuts from several pieces of a board that is opened stays with them, all
 * of it, unless that is let go; one that it cuts from a single piece, or from a whole board, stays a group and nothing else.
 * What nothing is left for stays in the bill, of a board that is used up, so that it is short from then on.
 */
final class GroupBoards {
    private final Map<String, SizeNow> pieces;
    private final Length over;
    private final Map<String, Set<String>> begunOn = new HashMap<>(); // group -> boards
    private final Map<String, Set<String>> plannedOn = new HashMap<>(); // group -> boards that are opened
    private final Map<String, Integer> impossible = new LinkedHashMap<>();
    private final Set<String> letGo = new HashSet<>(); // groups not begun that their planned board no longer gives
    private final Set<String> inOnePiece =
            new HashSet<>(); // groups not begun whose blanks are all to come from one piece
    private final List<Part> parts = new ArrayList<>();

    GroupBoards(
            Job job,
            PlannedPieces plan,
            List<SizeNow> now,
            Map<String, SizeNow> pieces,
            List<Part> wanted,
            boolean asPlanned,
            boolean inOnePiece) {
        this.pieces = pieces;
        over = job.breakdown().over();
        Map<String, String> groups = new HashMap<>();
        for (Part part : job.parts()) part.together().ifPresent(group -> groups.put(part.name(), group));
        Set<String> opened = new HashSet<>();
        for (SizeNow piece : now) if (piece.planned().kind() != HeldPiece.Kind.BOARD) opened.add(piece.board());
        for (SizeNow piece : now)
            if (piece.made())
                plan.blank(piece.planned().name())
                        .flatMap(blank -> Optional.ofNullable(groups.get(blank.part())))
                        .ifPresent(group -> begunOn.computeIfAbsent(group, key -> new LinkedHashSet<>())
                                .add(piece.board()));
        if (asPlanned && inOnePiece) lieInOnePiece(plan, now, groups);
        if (asPlanned)
            plan.boardsOfParts()
                    .forEach((part, boards) -> Optional.ofNullable(groups.get(part))
                            .filter(group -> opened.containsAll(boards))
                            .ifPresent(group -> plannedOn
                                    .computeIfAbsent(group, key -> new LinkedHashSet<>())
                                    .addAll(boards)));
        for (Part part : wanted)
            planned(part)
                    .filter(boards -> begun(part).isEmpty())
                    .filter(boards -> ids(part, Optional.of(boards)).isEmpty())
                    .flatMap(boards -> part.together())
                    .ifPresent(letGo::add);
        for (Part part : wanted) keep(part);
    }

    /** Groups of which all blanks are to come from one piece in hand: such a plan keeps them together as it is. */
    private void lieInOnePiece(PlannedPieces plan, List<SizeNow> now, Map<String, String> groups) {
        Map<String, List<SizeNow>> named = new HashMap<>();
        for (SizeNow piece : now)
            named.computeIfAbsent(piece.planned().name(), key -> new ArrayList<>())
                    .add(piece);
        Map<String, Set<String>> from = new HashMap<>();
        for (String id : plan.ids())
            plan.blank(id)
                    .filter(blank -> groups.containsKey(blank.part()))
                    .ifPresent(blank -> from.computeIfAbsent(groups.get(blank.part()), key -> new HashSet<>())
                            .add(pieceOf(blank, plan, named)));
        from.forEach((group, ids) -> {
            if (ids.size() == 1 && pieces.keySet().containsAll(ids)) inOnePiece.add(group);
        });
    }

    /** The piece in hand that a blank still lies in; what is no piece where it does not lie in one. */
    private static String pieceOf(Blank blank, PlannedPieces plan, Map<String, List<SizeNow>> named) {
        String strip = plan.stripOf(blank.id()).orElse("");
        String section = plan.sectionOf(strip).map(Section::id).orElse("");
        for (String id : List.of(strip, section))
            for (SizeNow piece : named.getOrDefault(id, List.of())) {
                HeldPiece.Kind kind = piece.planned().kind();
                boolean itself = kind == HeldPiece.Kind.STRIP || kind == HeldPiece.Kind.SECTION;
                long at = blank.from().nanometers();
                if (itself
                        && piece.good()
                        && piece.wood().from() <= at
                        && at < piece.wood().to()) return piece.id();
            }
        return "";
    }

    /** Whether any group is held together in one piece of those its board has become. */
    boolean inOnePiece() {
        return parts.stream()
                .anyMatch(part -> part.together().filter(inOnePiece::contains).isPresent());
    }

    private Optional<Set<String>> begun(Part part) {
        return part.together().flatMap(group -> Optional.ofNullable(begunOn.get(group)));
    }

    private Optional<Set<String>> planned(Part part) {
        return part.together()
                .filter(group -> !letGo.contains(group) && !inOnePiece.contains(group))
                .flatMap(group -> Optional.ofNullable(plannedOn.get(group)));
    }

    /** The parts, each of the pieces in hand that may still serve it; what none may serve is of boards that are used up. */
    List<Part> parts() {
        return List.copyOf(parts);
    }

    /** How many of which parts nothing is left for of the boards they may come from. */
    Map<String, Integer> impossible() {
        return java.util.Collections.unmodifiableMap(impossible);
    }

    private void keep(Part part) {
        Optional<Set<String>> tied = begun(part).or(() -> planned(part));
        if (tied.isEmpty() && part.boards().isEmpty()) {
            parts.add(part);
            return;
        }
        Set<String> ids = ids(part, tied);
        Optional<String> together = tied.isPresent() ? Optional.empty() : part.together();
        if (ids.isEmpty()) {
            impossible.put(part.name(), part.count());
            together = Optional.empty();
            for (String board : tied.orElse(part.boards())) ids.add(usedUp(board));
        }
        parts.add(part.toBuilder().boards(ids).together(together).build());
    }

    private static String usedUp(String board) {
        return board.endsWith(Part.USED_UP) ? board : HandIds.plain(board) + Part.USED_UP;
    }

    /** The pieces in hand that the part may come from, of those boards alone if any are named. */
    private Set<String> ids(Part part, Optional<Set<String>> boards) {
        Set<String> ids = new LinkedHashSet<>();
        pieces.forEach((id, piece) -> {
            boolean there = boards.map(those -> those.contains(piece.board())).orElse(true);
            if (there && part.mayComeFrom(piece.board()) && piece.gives(part, over)) ids.add(id);
        });
        return ids;
    }
}
