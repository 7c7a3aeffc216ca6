package ripwright.resume;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import ripwright.internal.meant.PlannedPieces;
import ripwright.job.Problem;
import ripwright.plan.Step;
import ripwright.plan.Step.Does;

/**
 * The work a report calls done: steps of the plan, and pieces that are there though their step is not done. Each has behind
 * it all without which it cannot be.
 */
final class DoneSteps {
    private final PlannedPieces pieces;
    private final List<Integer> numbers;
    private final List<String> made;
    private final StepsBefore before;
    private final List<Problem> problems = new ArrayList<>();
    private final TreeMap<Integer, Step> done = new TreeMap<>();
    private final Map<String, Step> there = new HashMap<>(); // pieces reported, and the step that makes each
    private final TreeMap<Integer, Step> begun = new TreeMap<>(); // steps not done that made some of their pieces

    DoneSteps(PlannedPieces pieces, List<Integer> numbers, List<String> made) {
        this.pieces = pieces;
        this.numbers = numbers;
        this.made = made;
        before = new StepsBefore(pieces);
        steps();
        pieces();
        stepsHaveAllBehindThem();
        piecesHaveAllBehindThem();
    }

    private void steps() {
        Map<Integer, Step> byNumber = new HashMap<>();
        for (Step step : pieces.plan().steps()) byNumber.put(step.n(), step);
        Set<Integer> met = new HashSet<>();
        for (int i = 0; i < numbers.size(); i++) {
            int n = numbers.get(i);
            Step step = byNumber.get(n);
            if (step == null)
                problem("done", i, n + " is no step of this plan; its steps are 1 to " + byNumber.size() + ".");
            else if (!met.add(n)) problem("done", i, "step " + n + " is listed twice; list it once.");
            else done.put(n, step);
        }
    }

    private void pieces() {
        Set<String> met = new HashSet<>();
        for (int i = 0; i < made.size(); i++) {
            String id = made.get(i);
            Optional<Step> maker = before.maker(id);
            String named = "\"" + id + "\" ";
            if (!met.add(id)) problem("made", i, named + "is listed twice; list it once.");
            else if (maker.isEmpty()) problem("made", i, named + madeByNone(id));
            else if (done.containsKey(maker.get().n()))
                problem(
                        "made",
                        i,
                        named + "is made by step " + maker.get().n() + ", which is done already; leave it out.");
            else {
                there.put(id, maker.get());
                begun.put(maker.get().n(), maker.get());
            }
        }
    }

    private String madeByNone(String id) {
        boolean known = pieces.names(id) || pieces.board(id).isPresent();
        return known ? "is made by no step of this plan; leave it out." : "is no piece of this plan.";
    }

    private void problem(String list, int place, String what) {
        problems.add(new Problem(list + "[" + place + "]", what));
    }

    /** A step, or as much of it as is done. */
    record Work(Step step, boolean whole) {}

    /** In the order of the plan; with a strip that is there the test of its setting. */
    List<Work> work() {
        TreeMap<Integer, Work> work = new TreeMap<>();
        done.forEach((n, step) -> work.put(n, new Work(step, true)));
        begun.forEach((n, step) -> work.put(n, new Work(asFarAsMade(step), false)));
        Set<String> settings = new HashSet<>();
        for (Step step : begun.values())
            if (asFarAsMade(step).makes().stream()
                    .anyMatch(id -> pieces.strip(id).isPresent()))
                step.setting().ifPresent(settings::add);
        for (Step step : pieces.plan().steps())
            if (step.does() == Does.TEST
                    && step.setting().filter(settings::contains).isPresent())
                work.putIfAbsent(step.n(), new Work(step, false));
        return List.copyOf(work.values());
    }

    private Step asFarAsMade(Step step) {
        List<String> makes = step.makes().stream().filter(there::containsKey).toList();
        return new Step(
                step.n(), step.saw(), step.does(), step.setting(), step.stop(), step.piece(), makes, step.spare());
    }

    List<Problem> problems() {
        return List.copyOf(problems);
    }

    private void stepsHaveAllBehindThem() {
        Set<Integer> met = new HashSet<>();
        for (int i = 0; i < numbers.size(); i++) {
            Step step = done.get(numbers.get(i));
            if (step == null || !met.add(step.n())) continue;
            Set<Integer> missing = new LinkedHashSet<>();
            for (StepsBefore.Need need : before.of(step))
                if (!isThere(need)) missing.add(need.step().n());
            for (int n : missing)
                problem(
                        "done",
                        i,
                        "step " + step.n() + " is done to " + step.piece() + " after step " + n
                                + ", which is not reported. Report it too, or leave step " + step.n() + " out.");
        }
    }

    private void piecesHaveAllBehindThem() {
        Set<String> met = new HashSet<>();
        for (int i = 0; i < made.size(); i++) {
            String id = made.get(i);
            Step step = there.get(id);
            if (step == null || !met.add(id)) continue;
            for (StepsBefore.Need need : before.of(step, id))
                if (!isThere(need)) problem("made", i, missing(id, step, need));
        }
    }

    private boolean isThere(StepsBefore.Need need) {
        return done.containsKey(need.step().n())
                || need.piece().filter(there::containsKey).isPresent();
    }

    private static String missing(String id, Step step, StepsBefore.Need need) {
        int n = need.step().n();
        String named = "\"" + id + "\"";
        String comes = named + " comes from " + step.piece();
        String leave = ", or leave " + named + " out.";
        if (need.piece().isEmpty())
            return comes + " after step " + n + ", which is not reported. Add " + n + " to done" + leave;
        String piece = need.piece().get();
        String what = piece.equals(step.piece()) ? comes : comes + " after " + piece;
        return what + ", which is not reported. Add \"" + piece + "\" to made, or " + n + " to done" + leave;
    }
}
