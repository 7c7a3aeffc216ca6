package ripwright.runner.cli;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import ripwright.runner.disk.Disk;
import ripwright.runner.rack.Unsettled;
import ripwright.settle.Settlement;

/** Takes a booked plan back. */
@Command(
        name = "unsettle",
        mixinStandardHelpOptions = true,
        sortOptions = false,
        description = {
            "Takes a booked plan back: what it took lies on the rack again, what it left does not. Not while a plan that was "
                    + "booked later has taken one of its offcuts; take that one back first.",
            "",
            "When the last plan booked is taken back, the rack file is byte for byte what it was before.",
            ""
        },
        exitCodeListHeading = "%nExit codes:%n",
        exitCodeList = {
            "0:the plan is taken back",
            "2:the plan cannot be taken back, or a file cannot be read or written; nothing was changed",
            "3:a fault of Ripwright's"
        },
        footer = {"", "Example:", "  java -jar ripwright.jar unsettle lockers.plan.json --rack rack.json"})
final class UnsettleCommand implements Callable<Integer> {
    private final Terminal terminal;
    private final Disk disk;

    @Parameters(paramLabel = "PLAN", description = "The plan file that was booked.")
    private Path plan;

    @Option(names = "--rack", paramLabel = "RACK", required = true, description = "The rack file.")
    private Path rack;

    UnsettleCommand(Terminal terminal, Disk disk) {
        this.terminal = terminal;
        this.disk = disk;
    }

    @Override
    public Integer call() {
        return new AtTheDesk(terminal, plan, rack, "nothing was taken back")
                .run(disk, desk -> told(desk.unsettle(plan)))
                .number();
    }

    private void told(Unsettled unsettled) {
        boolean finished = unsettled.settlement().isEmpty();
        terminal.out()
                .println(unsettled.plan().job() + ": taken back"
                        + (finished ? "; the run that was cut off before is finished now." : "."));
        unsettled.settlement().ifPresent(this::told);
        terminal.out().println("  rack          " + unsettled.rack());
        unsettled.kept().ifPresent(left -> terminal.out().println("  " + left + " was changed since, and stays."));
    }

    private void told(Settlement settlement) {
        terminal.out().println("  to the stack  " + AtTheDesk.names(settlement.cut()));
        terminal.out()
                .println("  to the rack   "
                        + AtTheDesk.names(settlement.taken().stream()
                                .map(Settlement.Taken::offcut)
                                .toList()));
        terminal.out().println("  off the rack  " + AtTheDesk.names(settlement.entered()));
    }
}
