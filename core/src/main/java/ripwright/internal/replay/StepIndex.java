package ripwright.internal.replay;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import ripwright.plan.Plan;
import ripwright.plan.Step;

/** Which steps do what. Steps are told apart by their places in the plan, from 0, whatever numbers they bear. */
public final class StepIndex {
    private record Deed(Step.Does does, String piece) {}

    private final List<Step> steps;
    private final Map<String, List<Integer>> makers = new HashMap<>(); // id -> steps that make it
    private final Map<Deed, List<Integer>> deeds = new HashMap<>();
    private final Map<String, List<Integer>> rips = new HashMap<>(); // setting -> rips at it
    private final Map<String, List<Integer>> tests = new HashMap<>(); // setting -> tests of it
    private final Map<String, List<Integer>> checks = new HashMap<>(); // setting -> checks of it

    public StepIndex(Plan plan) {
        this.steps = plan.steps();
        for (int i = 0; i < steps.size(); i++) {
            Step step = steps.get(i);
            for (String made : step.makes()) add(makers, made, i);
            add(deeds, new Deed(step.does(), step.piece()), i);
            if (step.setting().isEmpty()) continue;
            String setting = step.setting().get();
            if (step.does() == Step.Does.RIP) add(rips, setting, i);
            if (step.does() == Step.Does.TEST) add(tests, setting, i);
            if (step.does() == Step.Does.CHECK) add(checks, setting, i);
        }
    }

    private static <K> void add(Map<K, List<Integer>> map, K key, int step) {
        map.computeIfAbsent(key, unused -> new ArrayList<>()).add(step);
    }

    public int size() {
        return steps.size();
    }

    public Step step(int place) {
        return steps.get(place);
    }

    /** How a message names it. */
    public String name(int place) {
        return "step " + steps.get(place).n();
    }

    public List<Integer> makersOf(String id) {
        return List.copyOf(makers.getOrDefault(id, List.of()));
    }

    public OptionalInt firstMaker(String id) {
        return makers.getOrDefault(id, List.of()).stream()
                .mapToInt(Integer::intValue)
                .findFirst();
    }

    public List<Integer> all(Step.Does does, String piece) {
        return List.copyOf(deeds.getOrDefault(new Deed(does, piece), List.of()));
    }

    public OptionalInt first(Step.Does does, String piece) {
        return all(does, piece).stream().mapToInt(Integer::intValue).findFirst();
    }

    public OptionalInt last(Step.Does does, String piece) {
        return all(does, piece).stream().mapToInt(Integer::intValue).max();
    }

    public List<Integer> ripsAt(String setting) {
        return List.copyOf(rips.getOrDefault(setting, List.of()));
    }

    public List<Integer> testsOf(String setting) {
        return List.copyOf(tests.getOrDefault(setting, List.of()));
    }

    public List<Integer> checksOf(String setting) {
        return List.copyOf(checks.getOrDefault(setting, List.of()));
    }
}
