package ripwright.runner.sheet.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import ripwright.plan.Step;

/**
 * Steps that follow one another and are one piece of work: a stage, a rip setting, a stop.
 *
 * @param work what kind of work
 * @param key what tells it from other work of the kind: the id of the setting, the length of the stop
 * @param steps the steps
 */
record Run(Work work, String key, List<Step> steps) {
    /** A kind of work. */
    enum Work {
        /** Breaking boards down. */
        BREAKDOWN,
        /** Milling. */
        MILL,
        /** Straightening reference edges. */
        STRAIGHTEN,
        /** All that is done at one fence position. */
        RIP,
        /** Squaring the ends of strips. */
        SQUARE,
        /** Blanks that are their whole strip. */
        WHOLE,
        /** All that is done at one stop. */
        STOP,
        /** Blanks cut one by one to the opening. */
        FIT,
        /** Other crosscuts. */
        TRIM
    }

    private record Place(Work work, String key) {}

    /** The steps of a plan in their order. A trim belongs to the rips around it, or to those it prepares. */
    static List<Run> of(List<Step> steps) {
        List<Run> runs = new ArrayList<>();
        Place last = new Place(Work.TRIM, "");
        for (int i = 0; i < steps.size(); i++) {
            Step step = steps.get(i);
            Place place = step.does() == Step.Does.TRIM ? trim(steps.subList(i, steps.size())) : place(step);
            if (runs.isEmpty() || !place.equals(last)) runs.add(new Run(place.work(), place.key(), new ArrayList<>()));
            runs.get(runs.size() - 1).steps().add(step);
            last = place;
        }
        return runs.stream()
                .map(run -> new Run(run.work(), run.key(), List.copyOf(run.steps())))
                .toList();
    }

    private static Place trim(List<Step> rest) {
        Optional<Place> next = rest.stream()
                .filter(step -> step.does() != Step.Does.TRIM)
                .map(Run::place)
                .findFirst();
        return next.filter(place -> place.work() == Work.RIP).orElse(new Place(Work.TRIM, ""));
    }

    private static Place place(Step step) {
        return switch (step.does()) {
            case BREAKDOWN -> new Place(Work.BREAKDOWN, "");
            case MILL -> new Place(Work.MILL, "");
            case STRAIGHTEN -> new Place(Work.STRAIGHTEN, "");
            case TEST, RIP, CHECK -> new Place(Work.RIP, step.setting().orElse(""));
            case SQUARE -> new Place(Work.SQUARE, "");
            case BLANK ->
                step.stop()
                        .map(stop -> new Place(Work.STOP, stop.toString()))
                        .orElse(new Place(step.saw().isEmpty() && step.spare().isEmpty() ? Work.WHOLE : Work.FIT, ""));
            case TRIM -> new Place(Work.TRIM, "");
        };
    }
}
