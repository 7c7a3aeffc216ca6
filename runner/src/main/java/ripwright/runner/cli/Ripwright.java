package ripwright.runner.cli;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneId;
import java.util.function.BiFunction;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import ripwright.Options;
import ripwright.job.Job;
import ripwright.plan.Plan;
import ripwright.runner.disk.Disk;

/** The command line as a whole. Keeps no state from one run to the next. */
@Command(
        name = "ripwright",
        mixinStandardHelpOptions = true,
        description = "Plans how a stack of individually measured boards becomes the parts of a furniture job.",
        synopsisSubcommandLabel = "COMMAND",
        footer = {
            "",
            "The first five minutes:",
            "  java -jar ripwright.jar start first-job",
            "  java -jar ripwright.jar plan first-job/shoe-rack.job.json",
            "Open first-job/shoe-rack.sheet.html. Then change the job: your kerfs, your boards, your parts.",
            "Mistakes are told all at once, each with its line. Boards and parts may be spreadsheets, too:",
            "  java -jar ripwright.jar plan first-job/shoe-rack.job.json --parts first-job/bill.csv",
            "",
            "What else is there:",
            "  java -jar ripwright.jar trial first-job/shoe-rack.job.json --part rail --widths \"2, 2 1/8, 2 1/4\"",
            "  java -jar ripwright.jar replay first-job/shoe-rack.job.json first-job/shoe-rack.plan.json",
            "  java -jar ripwright.jar settle first-job/shoe-rack.plan.json --rack first-job/rack.json",
            "  java -jar ripwright.jar help plan"
        })
public final class Ripwright implements Runnable {
    private final Terminal terminal;
    private final CommandLine commands;

    /** Talks to {@code terminal} and plans by {@code planner}. */
    public Ripwright(Terminal terminal, String version, BiFunction<Job, Options, Plan> planner) {
        this.terminal = terminal;
        CommandSpec spec = CommandSpec.forAnnotatedObject(this).version("ripwright " + version);
        this.commands = new CommandLine(spec)
                .addSubcommand(new PlanCommand(terminal, planner))
                .addSubcommand(new ReplayCommand(terminal))
                .addSubcommand(new ResumeCommand(terminal, planner))
                .addSubcommand(new SettleCommand(terminal, Clock.system(ZoneId.systemDefault()), Disk.REAL))
                .addSubcommand(new UnsettleCommand(terminal, Disk.REAL))
                .addSubcommand(new TrialCommand(terminal, planner))
                .addSubcommand(new StartCommand(terminal))
                .addSubcommand(new CompletionCommand(terminal))
                .addSubcommand(new CommandLine.HelpCommand())
                .registerConverter(Path.class, Ripwright::path)
                .setExpandAtFiles(false) // @name is a name like any other, not a file whose words are options
                .setOut(terminal.out())
                .setErr(terminal.err())
                .setUsageHelpWidth(100)
                .setParameterExceptionHandler((wrong, arguments) -> refused(wrong))
                .setExecutionExceptionHandler((fault, command, parsed) -> {
                    terminal.fault(fault);
                    return ExitCode.FAULT.number();
                });
        commands.getSubcommands()
                .values()
                .forEach(command -> command.getCommandSpec().version("ripwright " + version));
    }

    /** A blank one is a variable that is not set more likely than the working folder. */
    private static Path path(String text) {
        if (text.isEmpty()) throw new CommandLine.TypeConversionException("a blank path; the working folder is .");
        try {
            return Path.of(text);
        } catch (InvalidPathException e) {
            throw new CommandLine.TypeConversionException("this is no path: " + e.getReason());
        }
    }

    /** Runs one command and answers its exit code. */
    public int run(String... arguments) {
        Logging.set(false);
        try {
            return commands.execute(arguments);
        } catch (Error fault) {
            terminal.fault(fault);
            return ExitCode.FAULT.number();
        } finally {
            terminal.out().flush();
            terminal.err().flush();
        }
    }

    /** What is wrong with the command line is told in a few lines: the whole help would push it off the screen. */
    private int refused(CommandLine.ParameterException wrong) {
        CommandLine command = wrong.getCommandLine();
        String name = command.getCommandSpec().qualifiedName(" ").replaceFirst("^ripwright", "java -jar ripwright.jar");
        terminal.err().println(wrong.getMessage());
        if (!CommandLine.UnmatchedArgumentException.printSuggestions(wrong, terminal.err()))
            terminal.err().print(command.getHelp().fullSynopsis());
        terminal.err().println("More: " + name + " --help");
        return ExitCode.BAD_INPUT.number();
    }

    /** Without a command: what to do next. */
    @Override
    public void run() {
        terminal.out().print("""
                Ripwright plans how a stack of boards becomes the parts of a furniture job.

                Begin with a small job that is ready to be planned and changed:
                  java -jar ripwright.jar start first-job

                Or plan a job file of your own:
                  java -jar ripwright.jar plan lockers.job.json

                It writes lockers.plan.json and lockers.sheet.html. Open the sheet, or print it, and read its cautions first:
                the saws' manuals go before it. Then start cutting.
                More: java -jar ripwright.jar --help
                """);
    }
}
