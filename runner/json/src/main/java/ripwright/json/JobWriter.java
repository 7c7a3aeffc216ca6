package ripwright.json;

import java.util.Optional;
import ripwright.job.Job;
import ripwright.json.tree.JsonOut;

/** Writes job files: exactly the job that is read back, its rack beside it. Board ids must be free of {@code #}. */
public final class JobWriter {
    private JobWriter() {}

    /** The job as its file holds it, in UTF-8, with its rack at that path. */
    public static byte[] bytes(Job job, Optional<String> rack) {
        return JsonOut.bytes(json -> new JobOut(job, json).write(job.name(), job.stack(), rack, job.parts()));
    }
}
