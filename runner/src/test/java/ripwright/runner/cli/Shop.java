package ripwright.runner.cli;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.function.BiFunction;
import java.util.stream.Stream;
import ripwright.Options;
import ripwright.job.Job;
import ripwright.plan.Plan;

/** A folder to run commands in, and what they said; the folder is called FOLDER. */
final class Shop {
    private final Path folder;
    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();
    private final Ripwright ripwright;

    Shop(Path folder, BiFunction<Job, Options, Plan> planner) {
        this(folder, planner, false);
    }

    Shop(Path folder, BiFunction<Job, Options, Plan> planner, boolean live) {
        this(folder, planner, live, "");
    }

    /** Where {@code given} comes on standard input. */
    Shop(Path folder, BiFunction<Job, Options, Plan> planner, boolean live, String given) {
        this.folder = folder;
        InputStream in = new ByteArrayInputStream(given.getBytes(StandardCharsets.UTF_8));
        Terminal terminal = new Terminal(in, new PrintWriter(out, true), new PrintWriter(err, true), live);
        this.ripwright = new Ripwright(terminal, "1.2.3", planner);
    }

    Path file(String name, String text) throws IOException {
        Path file = folder.resolve(name);
        Files.createDirectories(file.getParent());
        return Files.writeString(file, text);
    }

    int run(String... arguments) {
        return ripwright.run(Stream.of(arguments)
                .map(argument -> argument.replace("FOLDER", folder.toString()))
                .toArray(String[]::new));
    }

    String out() {
        return said(out);
    }

    String err() {
        return said(err);
    }

    private String said(StringWriter writer) {
        return writer.toString().replace(folder.toString(), "FOLDER").replace(System.lineSeparator(), "\n");
    }

    /** Every file there is, hidden ones too. */
    List<String> files() {
        try (Stream<Path> files = Files.walk(folder)) {
            return files.filter(Files::isRegularFile)
                    .map(file -> folder.relativize(file).toString())
                    .sorted()
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
