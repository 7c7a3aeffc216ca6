package ripwright.runner.cli;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;

/**
 * A job file on the command line or in a folder there.
 *
 * @param path where it is
 * @param folder its own folder as seen from the folder on the command line, so that what comes of it keeps its place
 * @param hindrance why there is nothing to plan here at all
 */
record JobFile(Path path, Path folder, Optional<String> hindrance) {
    private static final String ENDING = ".job.json";
    private static final Path HERE = Path.of("");

    /** One that is named itself. */
    static JobFile of(Path path) {
        return new JobFile(path, HERE, Optional.empty());
    }

    /** All that those arguments name: of a folder every job file in it and below, in the order of their paths. */
    static List<JobFile> all(List<Path> arguments) {
        List<JobFile> jobs = new ArrayList<>();
        for (Path argument : arguments) {
            if (Files.isDirectory(argument)) jobs.addAll(below(argument));
            else jobs.add(of(argument));
        }
        return List.copyOf(jobs);
    }

    private static List<JobFile> below(Path folder) {
        try (Stream<Path> files = Files.walk(folder)) {
            List<JobFile> jobs = files.filter(file -> isJob(folder.relativize(file)) && Files.isRegularFile(file))
                    .sorted()
                    .map(file -> new JobFile(file, parent(folder.relativize(file)), Optional.empty()))
                    .toList();
            return jobs.isEmpty() ? hindered(folder, "no file in this folder ends with " + ENDING + ".") : jobs;
        } catch (IOException | UncheckedIOException e) {
            return hindered(folder, "the folder cannot be read: " + e.getMessage() + ".");
        }
    }

    private static List<JobFile> hindered(Path folder, String why) {
        return List.of(new JobFile(folder, HERE, Optional.of(why)));
    }

    private static boolean isJob(Path file) {
        boolean hidden = StreamSupport.stream(file.spliterator(), false)
                .anyMatch(name -> name.toString().startsWith("."));
        return !hidden && file.toString().endsWith(ENDING);
    }

    private static Path parent(Path file) {
        return Optional.ofNullable(file.getParent()).orElse(HERE);
    }

    /** Its name as a table has it: its path without the ending. */
    String name() {
        return PlanFiles.stem(path.normalize().toString());
    }

    /** The folder its rack file is looked for from. */
    Path home() {
        return parent(path);
    }
}
