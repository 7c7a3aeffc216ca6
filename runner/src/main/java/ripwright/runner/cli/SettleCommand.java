package ripwright.runner.cli;

import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import ripwright.measure.Name;
import ripwright.measure.Unit;
import ripwright.runner.disk.Disk;
import ripwright.runner.rack.Settled;
import ripwright.settle.Settlement;
import ripwright.stock.Board;

/** Books a finished plan against the rack. */
@Command(
        name = "settle",
        mixinStandardHelpOptions = true,
        sortOptions = false,
        description = {
            "Books a finished plan, once, when all of it is cut: the offcuts it took leave the rack, those it left enter. What "
                    + "to chalk on each is printed.",
            "",
            "Beside lockers.plan.json it writes lockers.left.json, a job file with the boards of the stack that are left and "
                    + "this rack: give it a name and its parts, and plan the next job.",
            "",
            "A job that was resumed is booked by the plan of the rest, lockers.resumed.plan.json, alone; the plan it was begun by "
                    + "must lie beside that one.",
            "",
            "Beside rack.json it keeps:",
            "  rack.book.json      the plans that are booked",
            "  rack.last.json      the rack before its last change",
            "",
            "A power cut at any instant leaves the rack as it was or as it is to be, never half of it; where the latter is not "
                    + "all written yet, the next settle or unsettle finishes it.",
            ""
        },
        exitCodeListHeading = "%nExit codes:%n",
        exitCodeList = {
            "0:the plan is booked",
            "2:the plan cannot be booked, or a file cannot be read or written; nothing was changed",
            "3:a fault of Ripwright's"
        },
        footer = {
            "",
            "Examples:",
            "  java -jar ripwright.jar settle lockers.plan.json --rack rack.json",
            "  java -jar ripwright.jar settle plans/lockers.plan.json --job lockers.job.json --rack rack.json"
        })
final class SettleCommand implements Callable<Integer> {
    private final Terminal terminal;
    private final Clock clock;
    private final Disk disk;

    @Parameters(paramLabel = "PLAN", description = "The plan file, as in lockers.plan.json.")
    private Path plan;

    @Option(
            names = "--rack",
            paramLabel = "RACK",
            required = true,
            description = "The rack file; made when it is not there.")
    private Path rack;

    @Option(
            names = "--job",
            paramLabel = "FILE",
            description = "The job that was planned; lockers.job.json beside lockers.plan.json when it is not named.")
    private Optional<Path> job;

    @Option(
            names = "--day",
            paramLabel = "DAY",
            description = "Since when the offcuts lie on the rack, as you write days; today when it is not named.")
    private Optional<String> day;

    SettleCommand(Terminal terminal, Clock clock, Disk disk) {
        this.terminal = terminal;
        this.clock = clock;
        this.disk = disk;
    }

    @Override
    public Integer call() {
        try {
            day.ifPresent(text -> Name.require("day", text));
        } catch (IllegalArgumentException e) {
            terminal.err().println("--day: " + e.getMessage() + " Nothing was booked.");
            return ExitCode.BAD_INPUT.number();
        }
        return new AtTheDesk(terminal, plan, rack, "nothing was booked")
                .run(
                        disk,
                        desk -> told(desk.settle(
                                plan,
                                job,
                                day.orElseGet(() -> LocalDate.now(clock).toString()))))
                .number();
    }

    private void told(Settled settled) {
        Settlement booked = settled.entry().settlement();
        Unit units = settled.plan().units();
        terminal.out()
                .println(settled.plan().job() + ": booked"
                        + (settled.finished() ? "; the run that was cut off before is finished now." : "."));
        line("off the stack", AtTheDesk.names(booked.cut()));
        line(
                "off the rack",
                AtTheDesk.names(
                        booked.taken().stream().map(Settlement.Taken::offcut).toList()));
        line("to the rack", booked.entered().isEmpty() ? "nothing" : "");
        for (int i = 0; i < booked.entered().size(); i++)
            terminal.out()
                    .println("    "
                            + offcut(settled.called().get(i), booked.entered().get(i), units));
        line("rack", settled.rack().toString());
        line("boards left", settled.left().toString());
    }

    private void line(String name, String text) {
        terminal.out().println(("  " + name + " ".repeat(14 - name.length()) + text).stripTrailing());
    }

    private static String offcut(String sheet, Board entered, Unit units) {
        String mark = Settlement.mark(entered);
        String note = sheet.equals(mark)
                ? ""
                : ". The sheet calls it " + sheet + ", which is chalked on another: chalk " + mark + " on it";
        return mark + ": " + AtTheDesk.size(entered, units) + note;
    }
}
