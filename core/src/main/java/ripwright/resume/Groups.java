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
import ripwright.job.Job;

/**
 * Keeps parts that come from certain boards, or together from one, to the pieces of those boards. A group that was begun goes
 * on with the board it was begun on; one that the plan cuts from a board that is opened stays with it, unless that is let go.
 */
final class Groups {
    private final Map<String, Now> pieces;
    private final Map<String, Set<String>> begunOn = new HashMap<>(); // group -> boards
    private final Map<String, Set<String>> plannedOn = new HashMap<>(); // group -> boards that are opened
    private final Map<String, Integer> impossible = new LinkedHashMap<>();
    private final List<Part> possible = new ArrayList<>();

    Groups(Job job, PlanPieces plan, List<Now> now, Map<String, Now> pieces, List<Part> wanted, boolean asPlanned) {
        this.pieces = pieces;
        Map<String, String> groups = new HashMap<>();
        for (Part part : job.parts()) part.together().ifPresent(group -> groups.put(part.name(), group));
        Set<String> opened = new HashSet<>();
        for (Now piece : now) if (piece.planned().kind() != Held.Kind.BOARD) opened.add(piece.board());
        for (Now piece : now)
            if (piece.made())
                plan.blank(piece.planned().name())
                        .flatMap(blank -> Optional.ofNullable(groups.get(blank.part())))
                        .ifPresent(group -> begunOn.computeIfAbsent(group, key -> new LinkedHashSet<>())
                                .add(piece.board()));
        if (asPlanned)
            plan.boardsOfParts()
                    .forEach((part, boards) -> Optional.ofNullable(groups.get(part))
                            .filter(group -> opened.containsAll(boards))
                            .ifPresent(group -> plannedOn
                                    .computeIfAbsent(group, key -> new LinkedHashSet<>())
                                    .addAll(boards)));
        for (Part part : wanted) keep(part);
    }

    /** The parts that pieces in hand may still serve. */
    List<Part> possible() {
        return List.copyOf(possible);
    }

    /** How many of which parts nothing is left for of the boards they may come from. */
    Map<String, Integer> impossible() {
        return java.util.Collections.unmodifiableMap(impossible);
    }

    private void keep(Part part) {
        Optional<String> group = part.together();
        Optional<Set<String>> begun = group.flatMap(name -> Optional.ofNullable(begunOn.get(name)));
        Optional<Set<String>> planned = group.flatMap(name -> Optional.ofNullable(plannedOn.get(name)));
        Set<String> ids = ids(part, begun.or(() -> planned));
        boolean letGo = ids.isEmpty() && begun.isEmpty();
        if (letGo) ids = ids(part, Optional.empty());
        boolean anywhere = part.boards().isEmpty() && (letGo || (begun.isEmpty() && planned.isEmpty()));
        boolean tied = !letGo && (begun.isPresent() || planned.isPresent());
        if (anywhere) possible.add(part);
        else if (ids.isEmpty()) impossible.put(part.name(), part.count());
        else {
            Optional<String> together = tied ? Optional.empty() : group;
            possible.add(part.toBuilder().boards(ids).together(together).build());
        }
    }

    /** The pieces in hand that the part may come from, of those boards alone if any are named. */
    private Set<String> ids(Part part, Optional<Set<String>> boards) {
        Set<String> ids = new LinkedHashSet<>();
        pieces.forEach((id, piece) -> {
            boolean there = boards.map(those -> those.contains(piece.board())).orElse(true);
            if (there && part.mayComeFrom(piece.board()) && piece.gives(part)) ids.add(id);
        });
        return ids;
    }
}
