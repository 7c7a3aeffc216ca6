package ripwright.runner.cli;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.BooleanSupplier;
import ripwright.Options;
import ripwright.job.Job;
import ripwright.json.JobReader;
import ripwright.json.PlanWriter;
import ripwright.json.tree.Problems;
import ripwright.json.tree.TextLimit;
import ripwright.json.tree.WrongInputException;
import ripwright.plan.Plan;

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

    /** Its plan, or what is wrong with it; what else befalls it is thrown. */
    LineAnswer answer() throws IOException {
        try {
            requireRead();
            Job job = JobReader.read(new ByteArrayInputStream(line.bytes()), name(), Path.of(""));
            Plan plan = planner.apply(OneJob.within(job, threads), options);
            Figures figures = Figures.of(plan);
            ExitCode exit = interrupted.getAsBoolean()
                    ? ExitCode.INTERRUPTED
                    : figures.complete() ? ExitCode.COMPLETE : ExitCode.SHORT;
            return LineAnswer.of(
                    line.number(),
                    exit,
                    Optional.of(figures),
                    "",
                    json -> json.object("plan", () -> PlanWriter.write(plan, json)));
        } catch (WrongInputException e) {
            return LineAnswer.of(
                    line.number(),
                    ExitCode.BAD_INPUT,
                    Optional.empty(),
                    "",
                    json -> json.list("mistakes", e.mistakes(), mistake -> BatchReport.mistake(mistake, json)));
        }
    }

    private void requireRead() throws WrongInputException {
        if (line.read() == LineReader.Read.NO_ROOM) throw new OutOfMemoryError("no room to read the line");
        if (line.read() == LineReader.Read.WHOLE) return;
        Problems problems = new Problems();
        problems.add(name(), TextLimit.ofThisHeap().over("the line"));
        problems.throwIfAny();
    }

    private String name() {
        return "line " + line.number();
    }
}
