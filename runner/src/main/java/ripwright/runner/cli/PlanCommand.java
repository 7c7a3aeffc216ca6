package ripwright.runner.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.concurrent.Callable;
import java.util.function.BiFunction;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import ripwright.Options;
import ripwright.job.Job;
import ripwright.json.csv.PlanTables;
import ripwright.json.tree.WrongInputException;
import ripwright.plan.Plan;
import ripwright.runner.disk.Leftovers;
import ripwright.runner.disk.WholeFile;
import ripwright.shared.SharedPlan;
import ripwright.shared.SharedPlanner;

/** Plans jobs, many at once. A job that cannot be planned stops none of the others. */
@Command(
        name = "plan",
        mixinStandardHelpOptions = true,
        sortOptions = false,
        description = {
            "Plans each job: which board every part comes from, the fence settings and the order of the rips, the crosscuts at "
                    + "the stop, and what goes back to the rack.",
            "",
            "For lockers.job.json it writes, next to it or under --out:",
            "  lockers.plan.json    the plan, for programs",
            "  lockers.sheet.html   the sheet, to print and work from",
            "",
            "Ctrl-C ends the search early; the best plan so far is written.",
            "",
            "Many jobs are planned a few at once, and at the end a table says what came of each. A job whose plan is there and "
                    + "was made from just this job and this rack by this Ripwright is not planned again, so a batch that was "
                    + "interrupted goes on where it stopped. (It is kept in a hidden file beside the plan what it was made "
                    + "from, as digests.) One job alone is always planned.",
            "",
            "Jobs that share one stack are planned --together or --in-turn. The stack is then all boards that any of them lists. "
                    + "A board is paid by the job that cuts it first; its offcuts lie on the rack of the next, at their salvage "
                    + "value, so the costs of the plans add up. Beside each plan is written what it is cut from "
                    + "(lockers.as-planned.json, with its rack): replay and settle the plans against that, in the order told. "
                    + "And one list of the rip settings of all, where a width that several jobs need is set once "
                    + "(lockers.settings.json, after the first job).",
            "",
            "With - jobs come from standard input, one a line, and a line of JSON goes to standard output for each, in the "
                    + "same order: { line, job, outcome, exitCode, figures of the plan, plan } or { line, outcome, exitCode, "
                    + "mistakes }. Blank lines are left out; a line may hold its rack, or name a rack file in the "
                    + "working folder and below, and no other. A line, as "
                    + "any file, may have 64 MB, and a twentieth of the memory Java may use where that is less.",
            ""
        },
        exitCodeListHeading = "%nExit codes; of many jobs the worst, in this order:%n",
        exitCodeList = {
            "  0:every part is planned",
            "  1:the stack is short; the rest is planned, and what to buy is said",
            "  2:something is wrong with the input, and nothing was written for that job",
            "  3:a fault of Ripwright's, or too little memory for that job",
            "130:interrupted; the best plan so far was written, and of jobs not begun nothing"
        },
        footer = {
            "",
            "Examples:",
            "  java -jar ripwright.jar plan lockers.job.json",
            "  java -jar ripwright.jar plan lockers.job.json bench.job.json --out plans",
            "  java -jar ripwright.jar plan jobs --out plans --report plans/report.json",
            "  java -jar ripwright.jar plan lockers.job.json bench.job.json --together",
            "  java -jar ripwright.jar plan - < jobs.jsonl > plans.jsonl",
            "  java -jar ripwright.jar plan lockers.job.json --stack stack.csv --parts bill.csv --tables"
        })
final class PlanCommand implements Callable<Integer> {
    private static final Path STANDARD_INPUT = Path.of("-");

    private final Terminal terminal;
    private final BiFunction<Job, Options, Plan> planner;

    @Spec
    private CommandSpec spec;

    @Parameters(
            paramLabel = "JOB",
            arity = "1..*",
            description =
                    "Job files, as in lockers.job.json; folders, for every *.job.json in them and below; or - alone.")
    private List<Path> jobs;

    @Option(names = "--out", paramLabel = "DIR", description = "Where to write; made when it is not there.")
    private Optional<Path> out;

    @Option(
            names = "--drawings",
            description = "Also write the drawings of the boards apart, as in lockers.boards.svg.")
    private boolean drawings;

    @Option(names = "--again", description = "Plan every job, also those whose plans are there already.")
    private boolean again;

    @Option(
            names = "--at-once",
            paramLabel = "N",
            description =
                    "How many jobs to plan at once; one for each processor, when it is left out. The processors are "
                            + "shared out among their searches.")
    private Optional<Integer> atOnce;

    @Option(
            names = "--report",
            paramLabel = "FILE",
            description =
                    "Write what became of every job as JSON; batch.schema.json in the jar says what the fields mean. "
                            + "With --out and several jobs it is written as DIR/report.json without being asked for.")
    private Optional<Path> report;

    @ArgGroup(exclusive = true)
    private @Nullable Sharing sharing;

    /** How several jobs share one stack. */
    static final class Sharing {
        @Option(
                names = "--together",
                required = true,
                description =
                        "The jobs share one stack: plan them so that all of them together cost the least. Takes up to "
                                + "four times their seconds.")
        private boolean together;

        @Option(
                names = "--in-turn",
                required = true,
                description =
                        "The jobs share one stack: plan them one after the other as they are named, each from what those "
                                + "before it leave, offcuts first of all.")
        private boolean inTurn;

        private Sharing() {}

        private SharedPlan plan(List<Job> jobs, Options options) {
            return inTurn && !together ? SharedPlanner.inTurn(jobs, options) : SharedPlanner.together(jobs, options);
        }
    }

    @Mixin
    private TableOptions tables;

    @Mixin
    private SpreadsheetOptions spreadsheets;

    @Option(names = "--verbose", description = "Say on the error stream what the search does.")
    private boolean verbose;

    PlanCommand(Terminal terminal, BiFunction<Job, Options, Plan> planner) {
        this.terminal = terminal;
        this.planner = planner;
    }

    @Override
    public Integer call() {
        Logging.set(verbose);
        Optional<String> wrong = wrongTogether();
        if (wrong.isPresent()) return refused(wrong.get());
        if (jobs.contains(STANDARD_INPUT)) return lines().number();
        List<JobFile> files = JobFile.all(jobs);
        Optional<String> clash = PlanFiles.clash(files, out).or(() -> spreadsheets.clash(files.size()));
        if (clash.isPresent()) return refused(clash.get());
        clearLeftovers(files);
        if (sharing != null) return shared(files, sharing);
        boolean alone = files.size() == 1 && !Files.isDirectory(jobs.get(0)) && report.isEmpty();
        if (tables.asked() && !alone) return refused("--tables goes with one job and no --report; plan these apart.");
        if (spreadsheets.given() && !alone)
            return refused("--stack and --parts go with one job and no --report; plan these apart.");
        return (alone ? one(files.get(0)) : many(files)).number();
    }

    /** What earlier runs were killed over, wherever this one writes. */
    private void clearLeftovers(List<JobFile> files) {
        List<Path> folders = new ArrayList<>();
        for (JobFile file : files) folders.add(new PlanFiles(file, out).folder());
        report.ifPresent(file -> folders.add(parent(file)));
        out.ifPresent(folder -> folders.add(folder.toAbsolutePath()));
        Leftovers.clear(folders);
    }

    /** What is wrong with the options as they stand together. */
    private Optional<String> wrongTogether() {
        if (atOnce.isPresent() && atOnce.get() < 1)
            return Optional.of("--at-once is " + atOnce.get() + "; it must be at least 1.");
        boolean ofOneJob = tables.asked() || spreadsheets.given();
        if (!jobs.contains(STANDARD_INPUT)) return wrongTogetherInFiles(ofOneJob);
        if (jobs.size() > 1) return Optional.of("- stands alone: give either job files and folders, or - for lines.");
        if (out.isPresent() || report.isPresent() || drawings || again || sharing != null || ofOneJob)
            return Optional.of("With - the plans go to standard output and nowhere else: "
                    + "leave out all options but --at-once and --verbose.");
        return Optional.empty();
    }

    private Optional<String> wrongTogetherInFiles(boolean ofOneJob) {
        if (sharing != null && (report.isPresent() || atOnce.isPresent() || again || ofOneJob))
            return Optional.of("Jobs that share a stack are planned as one: leave out --report, --at-once, --again, "
                    + "--stack, --parts and --tables.");
        return Optional.empty();
    }

    private int refused(String why) {
        terminal.err().println(why);
        return ExitCode.BAD_INPUT.number();
    }

    private Share share(int jobs) {
        OptionalInt asked = atOnce.isPresent() ? OptionalInt.of(atOnce.get()) : OptionalInt.empty();
        return Share.of(Runtime.getRuntime().availableProcessors(), jobs, asked);
    }

    private ExitCode lines() {
        try (Interruption interruption = new Interruption()) {
            return new JobLines(terminal, planner, share(Integer.MAX_VALUE), interruption).run();
        }
    }

    private int shared(List<JobFile> files, Sharing sharing) {
        if (files.size() < 2) return refused("Only one job is named; a stack is shared by two at least.");
        Batch.How how = new Batch.How(out, drawings, again, share(1), spec.version()[0]);
        try (Interruption interruption = new Interruption()) {
            return new SharedJobs(terminal, files, how, sharing::plan)
                    .plan(interruption)
                    .number();
        }
    }

    private ExitCode many(List<JobFile> files) {
        long begun = System.nanoTime();
        Batch.How how = new Batch.How(out, drawings, again, share(files.size()), spec.version()[0]);
        try (Interruption interruption = new Interruption()) {
            List<Result> results = results(files, how, interruption);
            terminal.out().print(new BatchTable(results).text());
            Duration took = Duration.ofNanos(System.nanoTime() - begun);
            ExitCode worst = BatchReport.worst(results);
            if (!reported(new BatchReport(results, how, took))) worst = worst.worse(ExitCode.BAD_INPUT);
            return worst;
        }
    }

    private List<Result> results(List<JobFile> files, Batch.How how, Interruption interruption) {
        try (BatchProgress progress = new BatchProgress(terminal, files.size())) {
            return new Batch(planner, how, interruption, progress).plan(files);
        }
    }

    /** Whether the report stands where it belongs. */
    private boolean reported(BatchReport written) {
        Optional<Path> file = report.or(() -> out.map(folder -> folder.resolve("report.json")));
        if (file.isEmpty()) return true;
        try {
            Files.createDirectories(parent(file.get()));
            new WholeFile(file.get()).write(written.bytes());
            terminal.out().println("Report: " + file.get());
            return true;
        } catch (IOException e) {
            terminal.err().println(file.get() + ": the report cannot be written: " + PlanFiles.reason(e) + ".");
            return false;
        }
    }

    private static Path parent(Path file) {
        return Objects.requireNonNull(file.toAbsolutePath().getParent());
    }

    private ExitCode one(JobFile file) {
        try (Interruption interruption = new Interruption()) {
            return planned(file, interruption);
        }
    }

    private ExitCode planned(JobFile file, Interruption interruption) {
        try {
            Job job = spreadsheets.job(file.path(), terminal);
            PlanFiles files = new PlanFiles(file, out);
            ProgressLine line = new ProgressLine(terminal);
            Options options = Options.defaults().withListener(line).withCancellation(interruption::came);
            OneJob.Done done = new OneJob(file, files, drawings, planner).plan(job, options, OptionalInt.empty());
            line.wipe();
            terminal.out().print(new Summary(done.job(), done.plan()).text());
            terminal.out().println("  wrote         " + files.plan());
            terminal.out().println("                " + files.sheet());
            if (drawings) terminal.out().println("                " + files.drawings());
            if (tables.asked())
                for (Path table : files.writeTables(new PlanTables(done.job(), done.plan(), tables.style())))
                    terminal.out().println("                " + table);
            Optional<Path> whole = spreadsheets.keep(done.job(), file.path(), files);
            whole.ifPresent(kept -> terminal.out().println("                " + kept));
            if (interruption.came()) {
                terminal.out().println("  Interrupted: this is the best plan so far.");
                return ExitCode.INTERRUPTED;
            }
            return done.plan().status() == Plan.Status.SHORT ? ExitCode.SHORT : ExitCode.COMPLETE;
        } catch (WrongInputException e) {
            terminal.err().print(e.text("nothing was planned"));
            return ExitCode.BAD_INPUT;
        } catch (IOException e) {
            terminal.err().println(file.path() + ": the plan cannot be written: " + PlanFiles.reason(e) + ".");
            return ExitCode.BAD_INPUT;
        } catch (RuntimeException | Error e) {
            terminal.err().println(file.path() + ":");
            terminal.fault(e);
            return ExitCode.FAULT;
        }
    }
}
