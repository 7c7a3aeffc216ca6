package ripwright.runner;

import java.io.Console;
import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.OutputStreamWriter;
import java.io.PrintWriter;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import ripwright.Planner;
import ripwright.runner.cli.Ripwright;
import ripwright.runner.cli.Terminal;

/** Where the executable jar starts. */
public final class Main {
    private static final int FAULT = 3; // what even saying it fails for; Java's own 1 would mean a stack that is short

    private Main() {}

    /** Runs one command and ends the process with its exit code. */
    public static void main(String[] args) {
        Optional<Console> console = console();
        Charset charset = console.map(Console::charset).orElse(StandardCharsets.UTF_8);
        Terminal terminal = new Terminal(
                System.in,
                writer(FileDescriptor.out, charset),
                writer(FileDescriptor.err, charset),
                console.isPresent());
        int code = FAULT;
        try {
            code = new Ripwright(terminal, version(), Planner::plan).run(args);
        } finally {
            Runtime.getRuntime().halt(code); // all is said and written; an exit would wait for what listens for Ctrl-C
        }
    }

    /** The console, when somebody sits at it: from Java 22 on there may be one even where nobody does. */
    @SuppressWarnings("SystemConsoleNull")
    private static Optional<Console> console() {
        return Optional.ofNullable(System.console()).filter(Main::isTerminal);
    }

    private static boolean isTerminal(Console console) {
        try {
            return (Boolean) Console.class.getMethod("isTerminal").invoke(console);
        } catch (NoSuchMethodException e) {
            return true; // before Java 22
        } catch (ReflectiveOperationException e) {
            return false;
        }
    }

    private static PrintWriter writer(FileDescriptor descriptor, Charset charset) {
        return new PrintWriter(new OutputStreamWriter(new FileOutputStream(descriptor), charset), true);
    }

    /** The version that the jar's manifest tells, or "development" outside of a jar. */
    private static String version() {
        String told = Main.class.getPackage().getImplementationVersion();
        return told == null ? "development" : told;
    }
}
