package ripwright.runner.cli;

import java.util.concurrent.Callable;
import picocli.AutoComplete;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** Prints a script by which a shell completes commands and options. */
@Command(
        name = "completion",
        mixinStandardHelpOptions = true,
        description = {
            "Prints a script by which bash and zsh complete commands, options and file names.",
            "",
            "The shell must know the program as ripwright for that. Put both lines into ~/.bashrc or ~/.zshrc, with the jar's "
                    + "whole path:",
            "  alias ripwright='java -jar /path/to/ripwright.jar'",
            "  source <(java -jar /path/to/ripwright.jar completion)",
            ""
        },
        footer = {"", "Example:", "  java -jar ripwright.jar completion > ripwright-completion.sh"})
final class CompletionCommand implements Callable<Integer> {
    private final Terminal terminal;

    @Spec
    private CommandSpec spec;

    CompletionCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() {
        CommandLine whole = spec.root().commandLine();
        terminal.out().print(AutoComplete.bash(whole.getCommandName(), whole));
        return ExitCode.COMPLETE.number();
    }
}
