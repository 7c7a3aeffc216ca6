package ripwright.runner.cli;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.function.BiFunction;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import ripwright.Ending;
import ripwright.Options;
import ripwright.job.Job;
import ripwright.job.Limits;
import ripwright.json.JobReader;
import ripwright.json.JobWriter;
import ripwright.json.PlanReader;
import ripwright.json.PlanWriter;
import ripwright.json.Rack;
import ripwright.json.RackWriter;
import ripwright.json.ReportFile;
import ripwright.json.tree.WrongInputException;
import ripwright.plan.Plan;
import ripwright.replay.Fault;
import ripwright.replay.Replay;
import ripwright.resume.ChainIds;
import ripwright.resume.ChainReplay;
import ripwright.resume.Report;
import ripwright.resume.Resume;
import ripwright.resume.Resumed;
import ripwright.resume.WrongReportException;
import ripwright.runner.disk.Leftovers;
import ripwright.runner.disk.WholeFile;
import ripwright.runner.sheet.Sheet;

/** Replans what is left of a job from the pieces in hand. */
@Command(
        name = "resume",
        mixinStandardHelpOptions = true,
        sortOptions = false,
        description = {
            "Replans what is left of a job, from the pieces in hand, when something went wrong or is not as it was measured: a "
                    + "strip ripped narrow, a part spoiled, a knot found, an opening larger than it was. Every cut already made "
                    + "is kept, and nothing that is good is cut again.",
            "",
            "The report says which steps are done and what is different, as in",
            "  { \"format\": 1, \"job\": \"Lockers\", \"done\": [1, 2, 3], \"changes\": [",
            "      { \"piece\": \"S4\", \"width\": \"2 3/16\" }, { \"piece\": \"B7\", \"spoiled\": true } ] }",
            "",
            "Beside lockers.plan.json it writes:",
            "  lockers.resumed.plan.json    how the rest is made",
            "  lockers.resumed.sheet.html   its sheet",
            "  lockers.resumed.job.json     the pieces in hand and the parts not made yet",
            "  lockers.resumed.rack.json    what of it lies on the rack, and the rack",
            "Nothing is written over: a second time they are called lockers.resumed-2, and so on.",
            ""
        },
        exitCodeListHeading = "%nExit codes:%n",
        exitCodeList = {
            "  0:everything that is left can be made",
            "  1:some of it cannot; what to buy is said",
            "  2:something is wrong with the input, and nothing was written",
            "  3:a fault of Ripwright's",
            "130:interrupted; the best plan so far was written"
        },
        footer = {
            "",
            "Examples:",
            "  java -jar ripwright.jar resume lockers.plan.json today.report.json",
            "  java -jar ripwright.jar resume plans/lockers.plan.json today.report.json --job lockers.job.json"
        })
final class ResumeCommand implements Callable<Integer> {
    /** Somebody stands at the saw and waits. */
    private static final BigDecimal QUICK = new BigDecimal("0.7");

    private static final int QUICKLY_PLANNED = 150; // parts

    private final Terminal terminal;
    private final BiFunction<Job, Options, Plan> planner;

    @Parameters(index = "0", paramLabel = "PLAN", description = "The plan that was begun, as in lockers.plan.json.")
    private Path plan;

    @Parameters(index = "1", paramLabel = "REPORT", description = "What is done, and what is different.")
    private Path report;

    @Option(
            names = "--job",
            paramLabel = "FILE",
            description = "The job that was planned; lockers.job.json beside lockers.plan.json when it is not named.")
    private Optional<Path> job;

    @Option(names = "--out", paramLabel = "DIR", description = "Where to write; made when it is not there.")
    private Optional<Path> out;

    ResumeCommand(Terminal terminal, BiFunction<Job, Options, Plan> planner) {
        this.terminal = terminal;
        this.planner = planner;
    }

    @Override
    public Integer call() {
        try (Interruption interruption = new Interruption()) {
            Plan planned = PlanReader.read(plan);
            ReportFile file = ReportFile.read(report, planned.units());
            Path from = job.orElseGet(() -> ResumedFiles.jobOf(plan));
            if (job.isEmpty() && Files.notExists(from)) return noJob(from).number();
            Job begun = JobReader.read(from);
            if (!holds(begun, planned)) return ExitCode.BAD_INPUT.number();
            return resumed(begun, planned, file, interruption).number();
        } catch (WrongInputException e) {
            terminal.err().print(e.text("nothing was resumed"));
            return ExitCode.BAD_INPUT.number();
        } catch (IOException e) {
            terminal.err().println(plan + ": nothing was resumed: " + PlanFiles.reason(e) + ".");
            return ExitCode.BAD_INPUT.number();
        }
    }

    private ExitCode noJob(Path beside) {
        terminal.err()
                .println(plan + ": nothing was resumed. There is no " + beside
                        + ". Name the job that was planned: --job " + wholeJob() + ".");
        return ExitCode.BAD_INPUT;
    }

    /** After spreadsheets the job file alone does not say it all. */
    private String wholeJob() {
        return ResumedFiles.wholeJobOf(plan).map(Path::toString).orElse("FILE");
    }

    /** What the plans before this one used, as far as they lie beside it. */
    private ChainIds ids(Job begun, Plan planned) {
        ChainIds ids = ChainIds.of(begun, planned);
        for (Path other : ResumedFiles.others(plan)) {
            try {
                ids = ids.after(PlanReader.read(other));
            } catch (WrongInputException e) {
                terminal.err()
                        .println(other + " cannot be read: labels it printed may mean another piece from now on.");
            }
        }
        return ids;
    }

    private boolean holds(Job begun, Plan planned) {
        List<Fault> faults = Replay.faults(begun, planned);
        if (faults.isEmpty()) return true;
        terminal.err()
                .println(plan + ": the plan is not right for this job, nothing was resumed. Name the job: --job "
                        + wholeJob() + ".");
        for (Fault fault : faults.subList(0, Math.min(3, faults.size())))
            terminal.err().println("  " + fault.message());
        return false;
    }

    private ExitCode resumed(Job begun, Plan planned, ReportFile file, Interruption interruption)
            throws IOException, WrongInputException {
        Report told = file.report();
        ChainIds ids = ids(begun, planned);
        Resume resume;
        try {
            resume = new Resume(begun, planned, told, ids);
        } catch (WrongReportException e) {
            file.refuse(e.problems());
            throw e;
        }
        ProgressLine line = new ProgressLine(terminal);
        Ended ended = new Ended(line);
        Options options = Options.defaults().withListener(ended).withCancellation(interruption::came);
        Optional<Resumed> rest = resume.planned(left -> planner.apply(quickly(left), options));
        line.wipe();
        RestSummary summary = new RestSummary(begun, planned, told, resume);
        if (rest.isEmpty()) return nothingToCut(begun, planned, resume, summary);
        List<Fault> faults = ChainReplay.faults(begun, planned, told, rest.get(), ids);
        if (!faults.isEmpty()) throw new IllegalStateException(faults.toString());
        write(rest.get(), summary, ended.ending());
        if (interruption.came()) return ExitCode.INTERRUPTED;
        boolean all = rest.get().plan().status() == Plan.Status.COMPLETE;
        return all ? ExitCode.COMPLETE : ExitCode.SHORT;
    }

    private ExitCode nothingToCut(Job begun, Plan planned, Resume resume, RestSummary summary) {
        boolean all = resume.wanted().isEmpty();
        terminal.out()
                .println(planned.job() + ": "
                        + (all ? "every part is made." : "nothing is left to cut the rest from; nothing was written."));
        terminal.out().print(summary.text(Optional.empty()));
        terminal.out().print(new Summary(begun, planned).shorts(resume.shortages()));
        return all ? ExitCode.COMPLETE : ExitCode.SHORT;
    }

    private static Job quickly(Job left) {
        int parts = left.parts().stream().mapToInt(ripwright.bill.Part::count).sum();
        BigDecimal enough = parts <= QUICKLY_PLANNED
                ? QUICK
                : QUICK.multiply(BigDecimal.valueOf(parts))
                        .divide(BigDecimal.valueOf(QUICKLY_PLANNED), 1, java.math.RoundingMode.UP);
        Limits limits = left.limits();
        BigDecimal seconds = limits.seconds().map(enough::min).orElse(enough);
        return left.withLimits(new Limits(Optional.of(seconds), limits.seed(), limits.threads()));
    }

    /** The plan last: where it is, the rest is too. */
    private void write(Resumed rest, RestSummary summary, Optional<Ending> ending) throws IOException {
        ResumedFiles files = ResumedFiles.after(plan, out);
        Leftovers.clear(List.of(files.folder()));
        Job left = rest.job();
        boolean rack = !left.rack().isEmpty();
        if (rack) new WholeFile(files.rack()).write(RackWriter.bytes(new Rack(left.units(), left.rack())));
        new WholeFile(files.job())
                .write(JobWriter.bytes(left, rack ? Optional.of(files.rackFromJob()) : Optional.empty()));
        new WholeFile(files.sheet())
                .write(new Sheet(left, rest.plan(), ending).html().getBytes(StandardCharsets.UTF_8));
        new WholeFile(files.plan()).write(PlanWriter.bytes(rest.plan()));
        terminal.out().print(new Summary(left, rest.plan()).text());
        terminal.out().print(summary.text(Optional.of(rest)));
        terminal.out().println("  wrote         " + files.plan());
        terminal.out().println("                " + files.sheet());
        terminal.out().println("                " + files.job());
        if (rack) terminal.out().println("                " + files.rack());
    }
}
