package ripwright.resume;

import java.util.List;
import java.util.Optional;
import ripwright.measure.Name;

/**
 * How far the work has come, and what is different from the plan.
 *
 * @param job the name of the job, as in the plan
 * @param done the numbers of the steps done, from 1, in any order
 * @param changes what is different
 * @param note what else the person says
 */
public record Report(String job, List<Integer> done, List<Change> changes, Optional<String> note) {
    /**
     * Keeps copies of the lists. Whether there are such steps and pieces is for {@link Resume}.
     *
     * @throws IllegalArgumentException when the job is no {@link Name}
     */
    public Report {
        Name.require("job's name", job);
        done = List.copyOf(done);
        changes = List.copyOf(changes);
    }
}
