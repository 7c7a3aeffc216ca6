package ripwright.runner.cli;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A job file on the command line or in a folder there.
 *
 * @param path where it is
 * @param folder its own folder as seen from the folder on the command line, so that what comes of it keeps its place
 * @param hindrance why there is nothing to plan here at all
 */
record JobFile(Path path, Path folder, Optional<String> hindrance) {
    private static final Path HERE = Path.of("");

    /** One that is named itself. */
    static JobFile of(Path path) {
        return new JobFile(path, HERE, Optional.empty());
    }

    /** All that those arguments name: of a folder every job file in it and below, in the order of their paths. */
    static List<JobFile> all(List<Path> arguments) {
        List<JobFile> jobs = new ArrayList<>();
        for (Path argument : arguments) {
            if (Files.isDirectory(argument)) jobs.addAll(new JobFolder(argument).jobs());
            else jobs.add(of(argument));
        }
        return List.copyOf(jobs);
    }

    static Path parent(Path file) {
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
