package ripwright.runner.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.function.BiFunction;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import ripwright.Options;
import ripwright.job.Job;
import ripwright.json.tree.WrongInputException;
import ripwright.plan.Plan;
import ripwright.runner.disk.Leftovers;
import ripwright.runner.trial.Comparison;
import ripwright.runner.trial.ComparisonFiles;
import ripwright.runner.trial.ComparisonPicture;
import ripwright.runner.trial.ComparisonTable;
import ripwright.runner.trial.TrialRequest;
import ripwright.runner.trial.WidthTrial;

/** Plans a job with some of its parts at one width after another, and compares. */
@Command(
        name = "trial",
        mixinStandardHelpOptions = true,
        sortOptions = false,
        description = {
            "Plans a job with a part, or several, at one width after another, and shows side by side what each width comes to: "
                    + "boards, cost, settings, offcuts, yield, time. So a look is priced before it is chosen.",
            "",
            "Every width has the whole time of the job's limits; as many are planned at once as the job has threads.",
            ""
        },
        exitCodeListHeading = "%nExit codes:%n",
        exitCodeList = {
            "  0:every part is planned at every width",
            "  1:at some width the stack is short; which and what to buy is said",
            "  2:something is wrong with the input, and nothing was planned",
            "  3:a fault of Ripwright's",
            "130:interrupted; the widths planned so far were compared"
        },
        footer = {
            "",
            "Examples:",
            "  java -jar ripwright.jar trial lockers.job.json --part rail --widths \"2, 2 1/8, 2 1/4, 2 3/8\"",
            "  java -jar ripwright.jar trial lockers.job.json --part rail --part stile --widths 2,2-1/4 --picture"
        })
final class TrialCommand implements Callable<Integer> {
    private final Terminal terminal;
    private final BiFunction<Job, Options, Plan> planner;

    @Parameters(paramLabel = "JOB", description = "The job file.")
    private Path file;

    @Option(
            names = "--part",
            paramLabel = "NAME",
            required = true,
            description =
                    "The part to try, by its name in the bill. Given again: several parts, all at the same width.")
    private List<String> parts;

    @Option(
            names = "--widths",
            paramLabel = "LIST",
            required = true,
            split = ",",
            hideParamSyntax = true,
            description =
                    "Finished widths with commas between, as in \"2, 2 1/8, 52 mm\". Written 2-1/8 none needs quotes.")
    private List<String> widths;

    @Option(
            names = "--out",
            paramLabel = "DIR",
            description = "Where to write; made when it is not there. Else next to the job.")
    private Optional<Path> out;

    @Option(names = "--picture", description = "Write the comparison as a picture, as in lockers.trial.svg.")
    private boolean picture;

    @Mixin
    private TableOptions tables;

    @Option(names = "--json", description = "Write it for programs, as in lockers.trial.json.")
    private boolean json;

    @Mixin
    private SpreadsheetOptions spreadsheets;

    TrialCommand(Terminal terminal, BiFunction<Job, Options, Plan> planner) {
        this.terminal = terminal;
        this.planner = planner;
    }

    @Override
    public Integer call() throws InterruptedException {
        try {
            Job job = spreadsheets.job(file, terminal);
            TrialRequest request = new TrialRequest(job, parts, widths);
            if (!request.mistakes().isEmpty())
                return refused(request.mistakes()).number();
            return tried(job, request).number();
        } catch (WrongInputException e) {
            terminal.err().print(e.text("nothing was planned"));
            return ExitCode.BAD_INPUT.number();
        } catch (IOException e) {
            terminal.err().println(file + ": the comparison cannot be written: " + PlanFiles.reason(e) + ".");
            return ExitCode.BAD_INPUT.number();
        }
    }

    private ExitCode refused(List<String> mistakes) {
        String count = mistakes.size() == 1 ? "1 mistake" : mistakes.size() + " mistakes";
        terminal.err().println(file + ": " + count + " in what to try, nothing was planned.");
        mistakes.forEach(mistake -> terminal.err().println("  " + mistake));
        return ExitCode.BAD_INPUT;
    }

    private ExitCode tried(Job job, TrialRequest request) throws InterruptedException, IOException {
        PlanFiles files = new PlanFiles(file, out);
        if (picture || tables.asked() || json) files.prepare();
        Leftovers.clear(List.of(files.folder()));
        try (Interruption interruption = new Interruption()) {
            Comparison comparison = compared(job, request, interruption);
            if (!comparison.outcomes().isEmpty()) {
                terminal.out().print(new ComparisonTable(comparison).text());
                write(comparison, files);
            }
            if (interruption.came()) {
                int left = request.widths().size() - comparison.outcomes().size();
                terminal.out()
                        .println("  Interrupted: the best plans so far are compared"
                                + (left == 0 ? "." : ", " + left + " of the widths not at all."));
                return ExitCode.INTERRUPTED;
            }
            return comparison.complete() ? ExitCode.COMPLETE : ExitCode.SHORT;
        }
    }

    private Comparison compared(Job job, TrialRequest request, Interruption interruption) throws InterruptedException {
        ProgressLine line = new ProgressLine(terminal);
        int all = request.widths().size();
        line.show("  Planning " + (all == 1 ? "1 width" : all + " widths") + ". Ctrl-C ends it.");
        Options options = Options.defaults().withCancellation(interruption::came);
        Comparison comparison = new WidthTrial(job, request.parts(), planner)
                .compare(
                        request.widths(),
                        options,
                        planned -> line.show("  Planned " + planned + " of " + all + " widths. Ctrl-C ends it."));
        line.wipe();
        return comparison;
    }

    private void write(Comparison comparison, PlanFiles files) throws IOException {
        if (picture)
            written(files.write(
                    ".trial.svg", new ComparisonPicture(comparison).svg().getBytes(StandardCharsets.UTF_8)));
        ComparisonFiles all = new ComparisonFiles(comparison);
        if (tables.asked()) written(files.write(".trial.csv", all.table(tables.style())));
        if (json) written(files.write(".trial.json", all.json()));
    }

    private void written(Path file) {
        terminal.out().println("  wrote " + file);
    }
}
