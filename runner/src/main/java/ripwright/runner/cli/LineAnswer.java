package ripwright.runner.cli;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.function.Consumer;
import ripwright.json.tree.JsonOut;

/**
 * The line that goes out for a job that came in as a line.
 *
 * @param exit how the job ended
 * @param json the line, without its line break
 * @param said what belongs on the error stream; mostly nothing
 */
record LineAnswer(ExitCode exit, String json, String said) {
    /** Of the line of that number, with what there is to say beside its number and how it ended. */
    static LineAnswer of(long line, ExitCode exit, Optional<Figures> figures, String said, Consumer<JsonOut> more) {
        String json = JsonOut.line(out -> {
            out.number("line", BigDecimal.valueOf(line));
            BatchReport.outcome(exit, figures, out);
            more.accept(out);
        });
        return new LineAnswer(exit, json, said);
    }

    /** Of a job that was interrupted before its turn. */
    static LineAnswer notBegun(long line) {
        return of(line, ExitCode.INTERRUPTED, Optional.empty(), "", json -> {});
    }

    /** Of a job that the user is not to blame for. */
    static LineAnswer fault(long line, Throwable fault) {
        FaultText text = new FaultText(fault);
        String said = "line " + line + ":\n" + text.text();
        return of(line, ExitCode.FAULT, Optional.empty(), said, json -> json.text("reason", text.reason()));
    }

    /** How much of the heap it takes, in bytes. */
    long size() {
        return (long) json.length() + said.length();
    }
}
