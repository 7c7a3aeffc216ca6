package ripwright.runner.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.function.BiFunction;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import ripwright.Options;
import ripwright.job.Job;
import ripwright.plan.CutBoard;
import ripwright.plan.Plan;
import ripwright.runner.json.JobReader;
import ripwright.runner.json.PlanWriter;
import ripwright.runner.sheet.Picture;
import ripwright.runner.sheet.Sheet;
import ripwright.runner.tree.WrongInputException;

/** Plans jobs, one after the other. A job that cannot be planned stops none of the others. */
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
            ""
        },
        exitCodeListHeading = "%nExit codes:%n",
        exitCodeList = {
            "  0:every part is planned",
            "  1:the stack is short; the rest is planned, and what to buy is said",
            "  2:something is wrong with the input, and nothing was written for that job",
            "  3:a fault of Ripwright's",
            "130:interrupted; the best plan so far was written"
        },
        footer = {
            "",
            "Examples:",
            "  java -jar ripwright.jar plan lockers.job.json",
            "  java -jar ripwright.jar plan lockers.job.json bench.job.json --out plans"
        })
final class PlanCommand implements Callable<Integer> {
    private final Terminal terminal;
    private final BiFunction<Job, Options, Plan> planner;

    @Parameters(paramLabel = "JOB", arity = "1..*", description = "Job files, as in lockers.job.json.")
    private List<Path> jobs;

    @Option(names = "--out", paramLabel = "DIR", description = "Where to write; made when it is not there.")
    private Optional<Path> out;

    @Option(
            names = "--drawings",
            description = "Also write the drawings of the boards apart, as in lockers.boards.svg.")
    private boolean drawings;

    @Option(names = "--verbose", description = "Say on the error stream what the search does.")
    private boolean verbose;

    PlanCommand(Terminal terminal, BiFunction<Job, Options, Plan> planner) {
        this.terminal = terminal;
        this.planner = planner;
    }

    @Override
    public Integer call() {
        Logging.set(verbose);
        Optional<String> clash = PlanFiles.clash(jobs, out);
        if (clash.isPresent()) {
            terminal.err().println(clash.get());
            return ExitCode.BAD_INPUT.number();
        }
        try (Interruption interruption = new Interruption()) {
            ExitCode worst = ExitCode.COMPLETE;
            boolean first = true;
            for (Path job : jobs) {
                if (interruption.came()) return ExitCode.INTERRUPTED.number();
                if (!first) terminal.out().println();
                first = false;
                worst = worst.worse(planned(job, interruption));
            }
            return worst.number();
        }
    }

    private ExitCode planned(Path file, Interruption interruption) {
        try {
            Job job = JobReader.read(file);
            PlanFiles files = new PlanFiles(file, out);
            files.prepare();
            ProgressLine line = new ProgressLine(terminal);
            Ended ended = new Ended(line);
            Plan plan = planner.apply(job, Options.defaults().withListener(ended).withCancellation(interruption::came));
            line.wipe();
            files.write(PlanWriter.bytes(plan), new Sheet(job, plan, ended.ending()).html().getBytes(StandardCharsets.UTF_8));
            terminal.out().print(new Summary(job, plan).text());
            terminal.out().println("  wrote         " + files.plan());
            terminal.out().println("                " + files.sheet());
            if (drawings) {
                List<String> boards =
                        plan.boards().stream().map(CutBoard::board).toList();
                files.writeDrawings(new Picture(job, plan, boards).svg().getBytes(StandardCharsets.UTF_8));
                terminal.out().println("                " + files.drawings());
            }
            if (interruption.came()) {
                terminal.out().println("  Interrupted: this is the best plan so far.");
                return ExitCode.INTERRUPTED;
            }
            return plan.status() == Plan.Status.SHORT ? ExitCode.SHORT : ExitCode.COMPLETE;
        } catch (WrongInputException e) {
            terminal.err().print(e.text("nothing was planned"));
            return ExitCode.BAD_INPUT;
        } catch (IOException e) {
            terminal.err().println(file + ": the plan cannot be written: " + PlanFiles.reason(e) + ".");
            return ExitCode.BAD_INPUT;
        } catch (RuntimeException | Error e) {
            terminal.err().println(file + ":");
            terminal.fault(e);
            return ExitCode.FAULT;
        } finally {
            terminal.out().flush();
            terminal.err().flush();
        }
    }
}
