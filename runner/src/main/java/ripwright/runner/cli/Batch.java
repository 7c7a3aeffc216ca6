package ripwright.runner.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.function.BiFunction;
import ripwright.Options;
import ripwright.job.Job;
import ripwright.json.PlanReader;
import ripwright.json.tree.Problems;
import ripwright.json.tree.WrongInputException;
import ripwright.plan.Plan;
import ripwright.runner.cli.Result.Ending;

/**
 * Plans many jobs that have nothing to do with each other, a few at once. Whatever befalls one stops none of the others; of
 * each no more is kept than a line of the table needs.
 */
final class Batch {
    private final BiFunction<Job, Options, Plan> planner;
    private final How how;
    private final Interruption interruption;
    private final BatchProgress progress;
    private final SharedHeap heap = new SharedHeap();

    /**
     * How jobs are planned.
     *
     * @param out where to write, where it is not next to the jobs
     * @param drawings whether the drawings are written apart too
     * @param again whether a job is planned although its plan stands
     * @param share how the processors are shared out
     * @param version which Ripwright this is
     */
    record How(Optional<Path> out, boolean drawings, boolean again, Share share, String version) {}

    Batch(BiFunction<Job, Options, Plan> planner, How how, Interruption interruption, BatchProgress progress) {
        this.planner = planner;
        this.how = how;
        this.interruption = interruption;
        this.progress = progress;
    }

    /** How each of them ended, in their order. */
    List<Result> plan(List<JobFile> jobs) {
        ExecutorService threads = Executors.newFixedThreadPool(how.share().jobs());
        try {
            List<Future<Result>> running = new ArrayList<>();
            for (JobFile job : jobs) running.add(threads.submit(() -> told(job)));
            List<Result> results = new ArrayList<>();
            for (int i = 0; i < running.size(); i++) results.add(result(jobs.get(i), running.get(i)));
            return results;
        } catch (InterruptedException e) {
            throw new IllegalStateException("Nobody interrupts this thread.", e);
        } finally {
            threads.shutdown();
        }
    }

    /** That of a job whose end could not even be told is a fault, and the others go on. */
    private static Result result(JobFile job, Future<Result> running) throws InterruptedException {
        try {
            return running.get();
        } catch (ExecutionException e) {
            Throwable cause = e.getCause() == null ? e : e.getCause();
            return Result.without(job, Ending.FAULT, new FaultText(cause).reason(), Duration.ZERO);
        }
    }

    private Result told(JobFile job) {
        long begun = System.nanoTime();
        StringBuilder said = new StringBuilder();
        Result result = ended(job, begun, said);
        try {
            progress.ended(result, said.toString());
        } catch (RuntimeException | Error e) {
            // How far all have come is a comfort: what came of this one stands in the table and in the report all the
            // same.
        }
        return result;
    }

    private Result ended(JobFile job, long begun, StringBuilder said) {
        if (interruption.came()) return Result.notBegun(job);
        try {
            return heap.run(() -> planned(job, begun));
        } catch (WrongInputException e) {
            said.append(e.text("nothing was planned"));
            return Result.wrong(job, e.mistakes(), since(begun));
        } catch (IOException e) {
            String reason = "the plan cannot be written: " + PlanFiles.reason(e);
            said.append(job.path() + ": " + reason + ".\n");
            return Result.without(job, Ending.WRONG, reason, since(begun));
        } catch (RuntimeException | Error e) {
            FaultText fault = new FaultText(e);
            said.append(job.path()).append(":\n").append(fault.text());
            return Result.without(job, Ending.FAULT, fault.reason(), since(begun));
        }
    }

    private Result planned(JobFile job, long begun) throws WrongInputException, IOException {
        if (job.hindrance().isPresent()) {
            Problems problems = new Problems();
            problems.add(job.path().toString(), job.hindrance().get());
            problems.throwIfAny();
        }
        PlanFiles files = new PlanFiles(job, how.out());
        MadeFrom madeFrom = new MadeFrom(job, files, how.drawings(), how.version());
        if (!how.again() && madeFrom.stands())
            return Result.of(job, Ending.STANDS, Figures.of(PlanReader.read(files.plan())), since(begun));
        Options options = Options.defaults().withCancellation(interruption::came);
        OneJob one = new OneJob(job, files, how.drawings(), planner);
        Figures figures = Figures.of(
                one.plan(options, OptionalInt.of(how.share().threads())).plan());
        if (interruption.came()) return Result.of(job, Ending.CUT_SHORT, figures, since(begun));
        madeFrom.keep();
        return Result.of(job, Ending.PLANNED, figures, since(begun));
    }

    private static Duration since(long begun) {
        return Duration.ofNanos(System.nanoTime() - begun);
    }
}
