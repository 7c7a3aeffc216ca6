package ripwright.json;

import java.util.Optional;
import ripwright.job.Job;
import ripwright.json.tree.JsonOut;

/**
 * Writes job files: exactly the job that is read back, its rack beside it. Boards {@code id#1}, {@code id#2} and so on, which an
 * entry with a count stands for, are written as one: they must be there from 1 on, side by side and measured alike, and no
 * other id may hold a {@code #}. Keeps no state; safe on any thread.
 */
public final class JobWriter {
    private JobWriter() {}

    /** The job as its file holds it, in UTF-8, with its rack at that path; with the rack itself where there is none. */
    public static byte[] bytes(Job job, Optional<String> rack) {
        return JsonOut.bytes(json -> new JobOut(job, json).write(job.name(), job.stack(), rack, job.parts()));
    }
}
