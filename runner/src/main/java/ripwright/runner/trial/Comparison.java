package ripwright.runner.trial;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import ripwright.bill.Part;
import ripwright.job.Job;
import ripwright.measure.Length;

/**
 * What a job comes to at every width that was tried.
 *
 * @param job the job as it is
 * @param parts the parts on trial, as the job has them
 * @param outcomes one for each width, in the order they were asked for
 */
public record Comparison(Job job, List<Part> parts, List<Outcome> outcomes) {
    /** Keeps copies of the lists. */
    public Comparison {
        parts = List.copyOf(parts);
        outcomes = List.copyOf(outcomes);
    }

    /** Whether every part is made at every width. */
    public boolean complete() {
        return outcomes.stream().allMatch(Outcome::complete);
    }

    /** The first of the cheapest among those that make every part. */
    Optional<Outcome> cheapest() {
        return outcomes.stream().filter(Outcome::complete).min(Comparator.comparing(Outcome::net));
    }

    /** The one at the width that all parts on trial have in the job; empty when they differ or it was not tried. */
    Optional<Outcome> asInTheJob() {
        return outcomes.stream().filter(this::isAsInTheJob).findFirst();
    }

    /** Whether that is the width that all parts on trial have in the job. */
    boolean isAsInTheJob(Outcome outcome) {
        return parts.stream().allMatch(part -> part.width().equals(outcome.width()));
    }

    /** The widths that no plan can make as cheap as the cheapest found. */
    List<Outcome> surelyDearer() {
        return cheapest()
                .map(best -> outcomes.stream()
                        .filter(outcome -> outcome.complete() && outcome.bound().compareTo(best.net()) > 0)
                        .toList())
                .orElse(List.of());
    }

    /** A width exactly, unit and all: in the job's, or in the other one where six decimals of the job's do not do. */
    String text(Length width) {
        boolean exact = Length.of(job.units().number(width), job.units()).equals(width);
        return exact ? job.units().exact(width) + " " + job.units().symbol() : width.toString();
    }

    /** The names of the parts on trial. */
    String names() {
        return parts.stream().map(Part::name).collect(Collectors.joining(", "));
    }
}
