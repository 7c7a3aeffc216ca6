package ripwright.shared;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import ripwright.bill.Part;
import ripwright.job.Job;
import ripwright.job.Limits;

/** Several jobs with the same boards as one: their bills together, every part named by its job's and its own place. */
final class JointJob {
    private static final String BETWEEN = ".";

    private final List<Job> jobs;

    JointJob(List<Job> jobs) {
        this.jobs = jobs;
    }

    /** The job. */
    Job job() {
        Job first = jobs.get(0);
        List<Part> parts = new ArrayList<>();
        for (int j = 0; j < jobs.size(); j++) {
            List<Part> own = jobs.get(j).parts();
            Map<String, Integer> groups = new HashMap<>();
            for (int p = 0; p < own.size(); p++) parts.add(part(j, p, own.get(p), groups));
        }
        return first.toBuilder().parts(parts).limits(limits()).build();
    }

    /** The place in the first job's bill of the part that is called so here; empty when it is another job's. */
    static OptionalInt placeInFirst(String part) {
        return part.startsWith("0" + BETWEEN)
                ? OptionalInt.of(Integer.parseInt(part.substring(2)))
                : OptionalInt.empty();
    }

    private static Part part(int job, int place, Part part, Map<String, Integer> groups) {
        return new Part(
                job + BETWEEN + place,
                part.count(),
                part.length(),
                part.width(),
                part.thickness(),
                part.species(),
                part.face(),
                part.sneakUp(),
                part.edgeAllowance(),
                part.fitted(),
                part.together().map(group -> job + BETWEEN + groups.computeIfAbsent(group, first -> groups.size())),
                part.boards());
    }

    /** As long as the longest of them is given, or without an end of its own as soon as one of them is. */
    private Limits limits() {
        Optional<BigDecimal> seconds = Optional.of(BigDecimal.ZERO);
        for (Job job : jobs) {
            Optional<BigDecimal> own = job.limits().seconds();
            seconds = seconds.flatMap(longest -> own.map(longest::max));
        }
        Limits first = jobs.get(0).limits();
        return new Limits(seconds, first.seed(), first.threads());
    }
}
