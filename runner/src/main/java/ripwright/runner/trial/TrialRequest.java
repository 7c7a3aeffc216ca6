package ripwright.runner.trial;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import ripwright.bill.Part;
import ripwright.job.Job;
import ripwright.json.tree.Nearest;
import ripwright.measure.Length;

/** Which parts to try at which widths, as a user asks for it, and what is wrong with that. */
public final class TrialRequest {
    private final Job job;
    private final Set<String> parts = new LinkedHashSet<>();
    private final Set<Length> widths = new LinkedHashSet<>();
    private final List<String> mistakes = new ArrayList<>();

    /** Asked of {@code job}; widths are lengths in its unit or with their own. */
    public TrialRequest(Job job, List<String> names, List<String> lengths) {
        this.job = job;
        for (String name : names) name(name).ifPresentOrElse(parts::add, () -> unknown(name));
        for (String length : lengths) width(length);
        if (widths.isEmpty() && mistakes.isEmpty())
            mistakes.add("--widths   names no width. Write it like \"2, 2 1/8, 2 1/4\".");
    }

    /** That part's name as the job writes it: the very same, or the only one but for case and outer blanks. */
    private Optional<String> name(String name) {
        List<String> all = job.parts().stream().map(Part::name).toList();
        if (all.contains(name)) return Optional.of(name);
        List<String> alike = all.stream()
                .filter(part -> part.strip().equalsIgnoreCase(name.strip()))
                .toList();
        return alike.size() == 1 ? Optional.of(alike.get(0)) : Optional.empty();
    }

    private void unknown(String name) {
        List<String> all = job.parts().stream().map(Part::name).toList();
        mistakes.add("--part     no part of the job is called \"" + name + "\". " + new Nearest(name, all).sentence());
    }

    private void width(String text) {
        if (text.isBlank()) return; // a comma too many
        try {
            Length width = Length.parse(text, job.units());
            if (width.isZero()) throw new IllegalArgumentException("\"" + text.strip() + "\"; it must be more than 0.");
            for (Part part : job.parts())
                if (parts.contains(part.name()) && part.edgeAllowance().exceeds(Length.LONGEST.minus(width)))
                    throw new IllegalArgumentException(
                            "\"" + text.strip() + "\" and an edge allowance are over 100 m; make it less.");
            widths.add(width);
        } catch (IllegalArgumentException e) {
            mistakes.add("--widths   " + e.getMessage());
        }
    }

    /** What is wrong with it, in the order it was asked; empty when nothing is. */
    public List<String> mistakes() {
        return List.copyOf(mistakes);
    }

    /** The parts to try, each once. */
    public List<String> parts() {
        return List.copyOf(parts);
    }

    /** The widths to try, each once. */
    public List<Length> widths() {
        return List.copyOf(widths);
    }
}
