package ripwright.replay;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.IntUnaryOperator;
import java.util.function.UnaryOperator;
import ripwright.measure.Length;
import ripwright.plan.Caution;
import ripwright.plan.Plan;
import ripwright.plan.Step;

/** The steps of a plan to be altered, and the cautions that name them by their numbers. */
final class DraftSteps {
    private final List<Step> steps;
    private final List<Caution> cautions;

    DraftSteps(Plan plan) {
        steps = new ArrayList<>(plan.steps());
        cautions = new ArrayList<>(plan.cautions());
    }

    List<Step> steps() {
        return steps;
    }

    List<Caution> cautions() {
        return cautions;
    }

    void cautions(List<Caution> all) {
        cautions.clear();
        cautions.addAll(all);
    }

    // ---- one step ----

    void replace(int n, UnaryOperator<Step> edit) {
        steps.set(n - 1, edit.apply(steps.get(n - 1)));
    }

    void number(int n, int number) {
        replace(n, s -> new Step(number, s.saw(), s.does(), s.setting(), s.stop(), s.piece(), s.makes(), s.spare()));
    }

    void saw(int n, Optional<Step.Saw> saw) {
        replace(n, s -> new Step(s.n(), saw, s.does(), s.setting(), s.stop(), s.piece(), s.makes(), s.spare()));
    }

    void does(int n, Step.Does does) {
        replace(n, s -> new Step(s.n(), s.saw(), does, s.setting(), s.stop(), s.piece(), s.makes(), s.spare()));
    }

    void setting(int n, Optional<String> setting) {
        replace(n, s -> new Step(s.n(), s.saw(), s.does(), setting, s.stop(), s.piece(), s.makes(), s.spare()));
    }

    void stop(int n, Optional<Length> stop) {
        replace(n, s -> new Step(s.n(), s.saw(), s.does(), s.setting(), stop, s.piece(), s.makes(), s.spare()));
    }

    void piece(int n, String piece) {
        replace(n, s -> new Step(s.n(), s.saw(), s.does(), s.setting(), s.stop(), piece, s.makes(), s.spare()));
    }

    void makes(int n, List<String> makes) {
        replace(n, s -> new Step(s.n(), s.saw(), s.does(), s.setting(), s.stop(), s.piece(), makes, s.spare()));
    }

    void spare(int n, Optional<Length> spare) {
        replace(n, s -> new Step(s.n(), s.saw(), s.does(), s.setting(), s.stop(), s.piece(), s.makes(), spare));
    }

    // ---- their order: steps are numbered anew, and so are cautions about them ----

    void remove(int n) {
        steps.remove(n - 1);
        renumber(step -> step > n ? step - 1 : step);
    }

    void insert(int n, Step step) {
        steps.add(n - 1, step);
        renumber(about -> about >= n ? about + 1 : about);
    }

    void swap(int n, int m) {
        reorder(order -> Collections.swap(order, n - 1, m - 1));
    }

    void move(int n, int m) {
        reorder(order -> order.add(m - 1, order.remove(n - 1)));
    }

    private void reorder(Consumer<List<Integer>> edit) {
        List<Integer> order = new ArrayList<>(); // order.get(i): the number that step i + 1 had
        for (int i = 1; i <= steps.size(); i++) order.add(i);
        edit.accept(order);
        List<Step> before = List.copyOf(steps);
        for (int i = 0; i < order.size(); i++) steps.set(i, before.get(order.get(i) - 1));
        renumber(n -> order.indexOf(n) + 1);
    }

    private void renumber(IntUnaryOperator now) {
        cautions.replaceAll(caution ->
                new Caution(caution.steps().stream().map(now::applyAsInt).toList(), caution.text()));
        for (int i = 0; i < steps.size(); i++) number(i + 1, i + 1);
    }
}
