package ripwright.runner.cli;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import ripwright.Options;
import ripwright.job.Job;
import ripwright.plan.Plan;
import ripwright.runner.json.JobReader;
import ripwright.runner.json.PlanWriter;
import ripwright.runner.tree.JsonOut;
import ripwright.runner.tree.WrongInputException;

/** Plans a job that came in as a line; its rack is looked for from the working folder. */
final class LineJob {
    private final LineReader.Line line;
    private final BiFunction<Job, Options, Plan> planner;
    private final int threads;
    private final Options options;
    private final BooleanSupplier interrupted;

    LineJob(
            LineReader.Line line,
            BiFunction<Job, Options, Plan> planner,
            int threads,
            Options options,
            BooleanSupplier interrupted) {
        this.line = line;
        this.planner = planner;
        this.threads = threads;
        this.options = options;
        this.interrupted = interrupted;
    }

    /** Its plan, or what is wrong with it. */
    LineAnswer answer() {
        try {
            Job job = JobReader.read(new ByteArrayInputStream(line.bytes()), name(), Path.of(""));
            Plan plan = planner.apply(OneJob.within(job, threads), options);
            Figures figures = Figures.of(plan);
            ExitCode exit = interrupted.getAsBoolean()
                    ? ExitCode.INTERRUPTED
                    : figures.complete() ? ExitCode.COMPLETE : ExitCode.SHORT;
            return answer(
                    exit, Optional.of(figures), "", json -> json.object("plan", () -> PlanWriter.write(plan, json)));
        } catch (WrongInputException e) {
            return answer(
                    ExitCode.BAD_INPUT,
                    Optional.empty(),
                    "",
                    json -> json.list("mistakes", e.mistakes(), mistake -> BatchReport.mistake(mistake, json)));
        } catch (IOException e) {
            throw new UncheckedIOException("Reading from memory failed.", e);
        } catch (RuntimeException | Error e) {
            StringWriter said = new StringWriter();
            said.append(name()).append(":\n");
            Terminal.fault(e, new PrintWriter(said));
            return answer(ExitCode.FAULT, Optional.empty(), said.toString(), json -> json.text("reason", e.toString()));
        }
    }

    private String name() {
        return "line " + line.number();
    }

    private LineAnswer answer(ExitCode exit, Optional<Figures> figures, String said, Consumer<JsonOut> rest) {
        String json = JsonOut.line(out -> {
            out.number("line", Math.toIntExact(line.number()));
            BatchReport.outcome(exit, figures, out);
            rest.accept(out);
        });
        return new LineAnswer(exit, json, said);
    }
}
