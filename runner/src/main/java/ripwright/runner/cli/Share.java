package ripwright.runner.cli;

import java.util.OptionalInt;

/**
 * How the processors are shared out among jobs planned at once, so that all are used and none twice.
 *
 * @param jobs how many jobs are planned at once
 * @param threads how many threads each of their searches has
 */
record Share(int jobs, int threads) {
    /** Of those processors among so many jobs, {@code atOnce} of them at once where that is asked for. */
    static Share of(int processors, int jobs, OptionalInt atOnce) {
        int together = Math.max(1, Math.min(jobs, atOnce.orElse(processors)));
        return new Share(together, Math.max(1, processors / together));
    }
}
