package ripwright.runner.cli;

import java.util.Optional;
import ripwright.runner.tree.JsonOut;

/**
 * The line that goes out for a job that came in as a line.
 *
 * @param exit how the job ended
 * @param json the line, without its line break
 * @param said what belongs on the error stream; mostly nothing
 */
record LineAnswer(ExitCode exit, String json, String said) {
    /** Of a job that was interrupted before its turn. */
    static LineAnswer notBegun(LineReader.Line line) {
        String json = JsonOut.line(out -> {
            out.number("line", Math.toIntExact(line.number()));
            BatchReport.outcome(ExitCode.INTERRUPTED, Optional.empty(), out);
        });
        return new LineAnswer(ExitCode.INTERRUPTED, json, "");
    }
}
