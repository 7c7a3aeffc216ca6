package ripwright.runner.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;
import ripwright.job.Job;
import ripwright.json.PlanReader;
import ripwright.json.tree.WrongInputException;
import ripwright.plan.Plan;
import ripwright.replay.Fault;
import ripwright.replay.Replay;

/** Re-enacts a written plan on its job's boards. */
@Command(
        name = "replay",
        mixinStandardHelpOptions = true,
        description = {
            "Re-enacts a written plan on its job's boards, step by step, and says all that a saw could not make or that does "
                    + "not add up.",
            ""
        },
        exitCodeListHeading = "%nExit codes:%n",
        exitCodeList = {
            "0:the plan is right and complete",
            "1:the plan is right, but short of some parts",
            "2:the plan is not right for this job, or a file cannot be read",
            "3:a fault of Ripwright's"
        },
        footer = {"", "Example:", "  java -jar ripwright.jar replay lockers.job.json lockers.plan.json"})
final class ReplayCommand implements Callable<Integer> {
    private final Terminal terminal;

    @Parameters(index = "0", paramLabel = "JOB", description = "The job file.")
    private Path job;

    @Parameters(index = "1", paramLabel = "PLAN", description = "The plan file that was made from it.")
    private Path plan;

    @Mixin
    private SpreadsheetOptions spreadsheets;

    ReplayCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() {
        try {
            Job read = spreadsheets.job(job, terminal);
            return replayed(read, PlanReader.read(plan)).number();
        } catch (WrongInputException e) {
            terminal.err().print(e.text("nothing was replayed"));
            return ExitCode.BAD_INPUT.number();
        }
    }

    private ExitCode replayed(Job read, Plan written) {
        List<Fault> faults = Replay.faults(read, written);
        if (faults.isEmpty()) {
            terminal.out().println(plan + ": right, all " + written.steps().size() + " steps.");
            return written.status() == Plan.Status.SHORT ? ExitCode.SHORT : ExitCode.COMPLETE;
        }
        terminal.err().println(plan + ": " + (faults.size() == 1 ? "1 fault." : faults.size() + " faults."));
        for (Fault fault : faults)
            terminal.err().println("  " + fault.piece() + ": " + fault.what() + " [" + fault.rule() + "]");
        return ExitCode.BAD_INPUT;
    }
}
