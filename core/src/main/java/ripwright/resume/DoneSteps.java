package ripwright.resume;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import ripwright.job.Problem;
import ripwright.plan.Plan;
import ripwright.plan.Step;
import ripwright.plan.Step.Does;
import ripwright.plan.TestBlank;

/** The steps a report calls done: they are the plan's, and each has behind it those without which it cannot be done. */
final class DoneSteps {
    private static final Set<Does> PREPARING = EnumSet.of(Does.MILL, Does.STRAIGHTEN, Does.RIP);
    private static final Set<Does> AFTER_PREPARING = EnumSet.of(Does.STRAIGHTEN, Does.RIP, Does.TEST, Does.TRIM);

    private final PlannedPieces pieces;
    private final Map<Integer, Step> byNumber = new HashMap<>();
    private final Map<String, Step> makers = new HashMap<>();
    private final Map<String, List<Step>> preparing = new HashMap<>(); // piece -> its mill, straighten and rip steps
    private final List<Problem> problems = new ArrayList<>();
    private final TreeMap<Integer, Step> done = new TreeMap<>();

    DoneSteps(Plan plan, PlannedPieces pieces, List<Integer> numbers) {
        this.pieces = pieces;
        for (Step step : plan.steps()) {
            byNumber.put(step.n(), step);
            for (String made : step.makes()) makers.putIfAbsent(made, step);
            if (PREPARING.contains(step.does()))
                preparing
                        .computeIfAbsent(step.piece(), key -> new ArrayList<>())
                        .add(step);
        }
        Set<Integer> met = new HashSet<>();
        for (int i = 0; i < numbers.size(); i++) {
            int n = numbers.get(i);
            Step step = byNumber.get(n);
            if (step == null)
                problem(
                        i,
                        n + " is no step of this plan; its steps are 1 to "
                                + plan.steps().size() + ".");
            else if (!met.add(n)) problem(i, "step " + n + " is listed twice; list it once.");
            else done.put(n, step);
        }
        met.clear();
        for (int i = 0; i < numbers.size(); i++) {
            Step step = done.get(numbers.get(i));
            if (step != null && met.add(step.n())) needs(i, step);
        }
    }

    private void problem(int place, String what) {
        problems.add(new Problem("done[" + place + "]", what));
    }

    /** In the order of the plan. */
    List<Step> steps() {
        return List.copyOf(done.values());
    }

    List<Problem> problems() {
        return List.copyOf(problems);
    }

    private void needs(int place, Step step) {
        Set<Step> needed = new java.util.LinkedHashSet<>();
        Step maker = makers.get(step.piece());
        if (maker != null) needed.add(maker);
        pieces.sectionOf(step.piece()).ifPresent(section -> earlier(step, section.id(), EnumSet.of(Does.MILL), needed));
        if (AFTER_PREPARING.contains(step.does())) earlier(step, step.piece(), PREPARING, needed);
        if (step.does() == Does.TEST) step.setting().ifPresent(setting -> allThatProve(setting, step, needed));
        for (Step before : needed)
            if (!done.containsKey(before.n()))
                problem(
                        place,
                        "step " + step.n() + " is done to " + step.piece() + " after step " + before.n()
                                + ", which is not reported. Report it too, or leave step " + step.n() + " out.");
    }

    /** A test counts for all test blanks that prove its setting, so all are there, not only the one it names. */
    private void allThatProve(String setting, Step step, Set<Step> needed) {
        for (TestBlank blank : pieces.plan().testBlanks()) {
            if (!blank.proves().contains(setting)) continue;
            Step maker = makers.get(blank.id());
            if (maker != null && maker.n() < step.n()) needed.add(maker);
            earlier(step, blank.id(), PREPARING, needed);
        }
    }

    private void earlier(Step step, String piece, Set<Does> kinds, Set<Step> needed) {
        for (Step before : preparing.getOrDefault(piece, List.of())) {
            if (before.n() >= step.n()) return;
            if (kinds.contains(before.does())) needed.add(before);
        }
    }
}
