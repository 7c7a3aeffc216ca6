package ripwright.runner.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;
import ripwright.runner.start.Starter;

/** Writes a starter job for a new user. */
@Command(
        name = "start",
        mixinStandardHelpOptions = true,
        description = {
            "Writes a small job to begin with, its stack and its cutting bill as spreadsheets too, and says what to do next. "
                    + "Nothing that is there is ever written over.",
            ""
        },
        exitCodeListHeading = "%nExit codes:%n",
        exitCodeList = {"0:written", "2:something is in the way; nothing was written", "3:a fault of Ripwright's"},
        footer = {"", "Example:", "  java -jar ripwright.jar start first-job"})
final class StartCommand implements Callable<Integer> {
    private final Terminal terminal;

    @Parameters(paramLabel = "DIR", description = "Where to write; made when it is not there.")
    private Path folder;

    StartCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() {
        Starter starter = new Starter(folder);
        List<Path> inTheWay = starter.inTheWay();
        if (!inTheWay.isEmpty()) {
            String files = inTheWay.stream().map(Path::toString).collect(Collectors.joining(", "));
            String are = inTheWay.size() == 1 ? " is" : " are";
            terminal.err().println(files + are + " there already; nothing was written. Name another folder.");
            return ExitCode.BAD_INPUT.number();
        }
        try {
            starter.write();
        } catch (IOException e) {
            terminal.err().println(folder + ": the starter job cannot be written: " + PlanFiles.reason(e) + ".");
            return ExitCode.BAD_INPUT.number();
        }
        sayWhatIsNext();
        return ExitCode.COMPLETE.number();
    }

    private void sayWhatIsNext() {
        String job = word(Starter.JOB);
        terminal.out().print("""
                A starter job is in %1$s: a shoe rack from five boards.
                  %2$s    saws, prices, boards and parts
                  %3$s             the rack, with two offcuts
                  %4$s, %5$s   the same boards and parts as spreadsheets

                Plan it:
                  java -jar ripwright.jar plan %6$s
                and open shoe-rack.sheet.html beside it: that is what goes to the saw.

                Then make it yours. Measure the kerfs of your own saws first. Either edit the boards and parts in
                %2$s, or keep them as spreadsheets, saved as CSV:
                  java -jar ripwright.jar plan %6$s --stack %7$s --parts %8$s
                """.formatted(
                        folder,
                        Starter.JOB,
                        Starter.RACK,
                        Starter.STACK,
                        Starter.BILL,
                        job,
                        word(Starter.STACK),
                        word(Starter.BILL)));
    }

    /** The path as it is typed into a shell. */
    private String word(String name) {
        String path = folder.resolve(name).toString();
        return path.matches("[\\w./\\\\:-]+") ? path : "\"" + path + "\"";
    }
}
