package ripwright.runner.cli;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import ripwright.Options;
import ripwright.job.Job;
import ripwright.json.JobReader;
import ripwright.json.JobWriter;
import ripwright.json.Rack;
import ripwright.json.RackWriter;
import ripwright.json.tree.WrongInputException;
import ripwright.runner.disk.WholeFile;
import ripwright.shared.DisagreeingJobsException;
import ripwright.shared.SharedPlan;
import ripwright.shared.SharedSettings;

/** Plans several jobs from one stack: a plan for each, what each is cut from, and the rip settings of all as one list. */
final class SharedJobs {
    private static final String SETTINGS = ".settings.json";
    private static final String JOB = ".as-planned.json";
    private static final String RACK = ".as-planned.rack.json";

    private final Terminal terminal;
    private final List<JobFile> files;
    private final Batch.How how;
    private final BiFunction<List<Job>, Options, SharedPlan> planner;

    SharedJobs(
            Terminal terminal, List<JobFile> files, Batch.How how, BiFunction<List<Job>, Options, SharedPlan> planner) {
        this.terminal = terminal;
        this.files = files;
        this.how = how;
        this.planner = planner;
    }

    /** Plans and writes them; nothing is written when any of them is wrong. */
    ExitCode plan(Interruption interruption) {
        try {
            Optional<List<Job>> jobs = read();
            if (jobs.isEmpty()) return ExitCode.BAD_INPUT;
            for (JobFile file : files) new PlanFiles(file, how.out()).prepare();
            ProgressLine line = new ProgressLine(terminal);
            SharedPlan plans = planner.apply(
                    jobs.get(), Options.defaults().withListener(line).withCancellation(interruption::came));
            line.wipe();
            write(plans);
            if (interruption.came()) {
                terminal.out().println("Interrupted: these are the best plans so far.");
                return ExitCode.INTERRUPTED;
            }
            return plans.complete() ? ExitCode.COMPLETE : ExitCode.SHORT;
        } catch (DisagreeingJobsException e) {
            terminal.err().println("These jobs cannot share a stack, nothing was planned.");
            for (String disagreement : e.disagreements()) terminal.err().println("  " + disagreement);
            return ExitCode.BAD_INPUT;
        } catch (IOException e) {
            terminal.err().println("The plans cannot be written: " + PlanFiles.reason(e) + ".");
            return ExitCode.BAD_INPUT;
        } catch (RuntimeException | Error e) {
            terminal.fault(e);
            return ExitCode.FAULT;
        }
    }

    private Optional<List<Job>> read() {
        List<Job> jobs = new ArrayList<>();
        for (JobFile file : files) {
            try {
                jobs.add(JobReader.read(file.path()));
            } catch (WrongInputException e) {
                terminal.err().print(e.text("nothing was planned"));
            }
        }
        return jobs.size() == files.size() ? Optional.of(jobs) : Optional.empty();
    }

    private void write(SharedPlan plans) throws IOException {
        for (SharedPlan.Turn turn : plans.turns()) {
            JobFile file = files.get(turn.place());
            PlanFiles written = new PlanFiles(file, how.out());
            new OneJob(file, written, how.drawings(), (job, options) -> turn.plan())
                    .write(turn.job(), turn.plan(), Optional.empty());
            String rack = String.valueOf(written.beside(RACK).getFileName());
            new WholeFile(written.beside(RACK))
                    .write(RackWriter.bytes(
                            new Rack(turn.job().units(), turn.job().rack())));
            new WholeFile(written.beside(JOB)).write(JobWriter.bytes(turn.job(), Optional.of(rack)));
            terminal.out().print(new Summary(turn.job(), turn.plan()).text());
            terminal.out().println("  wrote         " + written.plan());
            terminal.out().println("                " + written.sheet());
            if (how.drawings()) terminal.out().println("                " + written.drawings());
            terminal.out().println("  cut from      " + written.beside(JOB));
            terminal.out().println();
        }
        for (Job job : plans.leftOut())
            terminal.out().println(job.name() + ": not planned; the jobs before it leave no board at all.\n");
        SharedText text = new SharedText(plans, new SharedSettings(plans));
        PlanFiles first = new PlanFiles(files.get(0), how.out());
        new WholeFile(first.beside(SETTINGS)).write(text.json());
        terminal.out().print(text.text());
        terminal.out().println("Settings: " + first.beside(SETTINGS));
    }
}
