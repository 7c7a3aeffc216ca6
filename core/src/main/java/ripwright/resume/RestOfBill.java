package ripwright.resume;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import ripwright.bill.Part;
import ripwright.internal.meant.PlannedPieces;
import ripwright.job.Job;
import ripwright.job.Problem;

/** The parts not made yet, as they must be now. */
final class RestOfBill {
    private final Map<String, Integer> made = new HashMap<>();
    private final Map<String, Integer> said =
            new HashMap<>(); // a part and what of it is said -> the change that says it
    private final List<Part> wanted = new ArrayList<>();
    private final List<Problem> problems = new ArrayList<>();

    RestOfBill(Job job, PlannedPieces pieces, List<SizeNow> now, List<Change> changes) {
        for (SizeNow piece : now)
            if (piece.made())
                pieces.blank(piece.planned().name()).ifPresent(blank -> made.merge(blank.part(), 1, Integer::sum));
        Map<String, Part> parts = new HashMap<>();
        for (Part part : job.parts()) parts.put(part.name(), part);
        for (int i = 0; i < changes.size(); i++)
            if (changes.get(i) instanceof Change.Wanted change) change(i, change, parts);
        for (Part part : job.parts()) {
            int missing = part.count() - made(part.name());
            if (missing > 0)
                wanted.add(
                        Optional.ofNullable(parts.get(part.name())).orElse(part).times(missing));
        }
    }

    private void change(int place, Change.Wanted change, Map<String, Part> parts) {
        Part part = parts.get(change.part());
        String where = "changes[" + place + "].part";
        Optional<Integer> before = said(place, change);
        if (part == null) problems.add(new Problem(where, "\"" + change.part() + "\" is no part of the bill."));
        else if (made(part.name()) == part.count())
            problems.add(new Problem(
                    where,
                    "\"" + part.name() + "\" is made already, all of it. Report those that no longer do as pieces."));
        else if (before.isPresent())
            problems.add(new Problem(
                    where,
                    "changes[" + before.get() + "] says already how large \"" + part.name()
                            + "\" must be; say it once, as it is now."));
        else
            parts.put(
                    part.name(),
                    part.toBuilder()
                            .length(change.length().orElse(part.length()))
                            .width(change.width().orElse(part.width()))
                            .build());
    }

    /** The change that says the same of that part already, if there is one. */
    private Optional<Integer> said(int place, Change.Wanted change) {
        Optional<Integer> length = change.length().flatMap(size -> said(place, change.part() + ", length"));
        Optional<Integer> width = change.width().flatMap(size -> said(place, change.part() + ", width"));
        return length.or(() -> width);
    }

    private Optional<Integer> said(int place, String what) {
        return Optional.ofNullable(said.putIfAbsent(what, place));
    }

    /** How many of a part are made and good. */
    int made(String part) {
        return made.getOrDefault(part, 0);
    }

    Map<String, Integer> made() {
        return Map.copyOf(made);
    }

    /** In the order of the bill. */
    List<Part> wanted() {
        return List.copyOf(wanted);
    }

    List<Problem> problems() {
        return List.copyOf(problems);
    }
}
