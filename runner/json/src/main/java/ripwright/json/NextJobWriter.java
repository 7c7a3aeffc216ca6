package ripwright.json;

import java.util.List;
import java.util.Optional;
import ripwright.job.Job;
import ripwright.json.tree.JsonOut;
import ripwright.stock.Board;

/**
 * Writes what a job leaves for the next one: a job file with the same saws, rules and prices, the boards that are left and
 * the rack. Only its parts are missing, and a better name. Keeps no state; safe on any thread.
 */
public final class NextJobWriter {
    private NextJobWriter() {}

    /** What {@code job} leaves when those boards of its stack are left, with offcuts on the rack of that path. */
    public static byte[] bytes(Job job, List<Board> left, String rack) {
        return JsonOut.bytes(json -> new JobOut(job, json).write("Next job", left, Optional.of(rack), List.of()));
    }
}
