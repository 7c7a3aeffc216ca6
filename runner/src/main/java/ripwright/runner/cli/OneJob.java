package ripwright.runner.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.BiFunction;
import ripwright.Ending;
import ripwright.Options;
import ripwright.job.Job;
import ripwright.job.Limits;
import ripwright.json.JobReader;
import ripwright.json.PlanWriter;
import ripwright.json.tree.WrongInputException;
import ripwright.plan.CutBoard;
import ripwright.plan.Plan;
import ripwright.runner.sheet.Picture;
import ripwright.runner.sheet.Sheet;

/** Plans one job, from its file to the files that come of it. */
final class OneJob {
    /** A job that is planned and written. */
    record Done(Job job, Plan plan) {}

    private final JobFile file;
    private final PlanFiles files;
    private final boolean drawings;
    private final BiFunction<Job, Options, Plan> planner;

    OneJob(JobFile file, PlanFiles files, boolean drawings, BiFunction<Job, Options, Plan> planner) {
        this.file = file;
        this.files = files;
        this.drawings = drawings;
        this.planner = planner;
    }

    /** Plans it; {@code mostThreads} holds even where the job itself would take more. */
    Done plan(Options options, OptionalInt mostThreads) throws WrongInputException, IOException {
        return plan(JobReader.read(file.path()), options, mostThreads);
    }

    /** The same, when the job is read already. */
    Done plan(Job job, Options options, OptionalInt mostThreads) throws IOException {
        files.prepare();
        Ended ended = new Ended(options.listener());
        Job asked = mostThreads.isPresent() ? within(job, mostThreads.getAsInt()) : job;
        Plan plan = planner.apply(asked, options.withListener(ended));
        write(job, plan, ended.ending());
        return new Done(job, plan);
    }

    /** Writes what comes of it. */
    void write(Job job, Plan plan, Optional<Ending> ending) throws IOException {
        files.write(PlanWriter.bytes(plan), new Sheet(job, plan, ending).html().getBytes(StandardCharsets.UTF_8));
        if (drawings) {
            List<String> boards = plan.boards().stream().map(CutBoard::board).toList();
            files.writeDrawings(new Picture(job, plan, boards).svg().getBytes(StandardCharsets.UTF_8));
        }
    }

    /** That job on so many threads, or fewer where it says so itself. */
    static Job within(Job job, int threads) {
        Limits limits = job.limits();
        int fewer = Math.min(threads, limits.threads().orElse(threads));
        return job.withLimits(new Limits(limits.seconds(), limits.seed(), OptionalInt.of(fewer)));
    }
}
