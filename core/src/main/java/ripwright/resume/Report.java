package ripwright.resume;

import java.util.List;
import java.util.Optional;
import ripwright.measure.Name;

/**
 * How far the work has come, and what is different from the plan.
 *
 * @param job the name of the job, as in the plan
 * @param done the numbers of the steps done, from 1, in any order
 * @param made the ids of pieces that are there, as planned, though the step that makes them is not done
 * @param changes what is different
 * @param note what else the person says
 */
public record Report(String job, List<Integer> done, List<String> made, List<Change> changes, Optional<String> note) {
    /**
     * Keeps copies of the lists. Whether there are such steps and pieces is for {@link Resume}.
     *
     * @throws IllegalArgumentException when the job is no {@link Name}
     */
    public Report {
        Name.require("job's name", job);
        done = List.copyOf(done);
        made = List.copyOf(made);
        changes = List.copyOf(changes);
    }

    /**
     * A report of whole steps alone.
     *
     * @throws IllegalArgumentException when the job is no {@link Name}
     */
    public Report(String job, List<Integer> done, List<Change> changes, Optional<String> note) {
        this(job, done, List.of(), changes, note);
    }
}
