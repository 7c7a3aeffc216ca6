package ripwright.runner;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/**
 * The jar as it is handed out, started as its user starts it.
 *
 * @param folder where what it says lands: {@code out} and {@code err}
 */
public record RunnerJar(Path folder) {
    /** Where it is. */
    static final Path FILE = Path.of(System.getProperty("ripwright.jar", "target/ripwright.jar"));

    /** Its exit code. */
    public int run(String... arguments) throws IOException, InterruptedException {
        return start(List.of(), ProcessBuilder.Redirect.PIPE, arguments).waitFor();
    }

    /** It at work, with those options of Java's and that on its standard input. */
    public Process start(List<String> java, ProcessBuilder.Redirect in, String... arguments) throws IOException {
        List<String> command = new ArrayList<>();
        command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
        command.addAll(java);
        command.addAll(List.of("-jar", FILE.toString()));
        command.addAll(List.of(arguments));
        return new ProcessBuilder(command)
                .redirectInput(in)
                .redirectOutput(folder.resolve("out").toFile())
                .redirectError(folder.resolve("err").toFile())
                .start();
    }
}
