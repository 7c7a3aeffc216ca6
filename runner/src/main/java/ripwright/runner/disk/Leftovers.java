package ripwright.runner.disk;

import java.io.IOException;
import java.nio.file.DirectoryIteratorException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What runs that were killed left beside the files they were about to write. A {@link WholeFile} is written under a name that
 * tells which process writes it: where that process is gone, nobody will finish it.
 */
public final class Leftovers {
    private static final String ENDING = ".ripwright.tmp";
    private static final Pattern NAME = Pattern.compile("\\..+\\.(\\d{1,18})" + Pattern.quote(ENDING), Pattern.DOTALL);
    private static final Duration UNSURE = Duration.ofSeconds(10); // how exactly systems tell when a process began

    private Leftovers() {}

    /** Where this process writes what is to become {@code file}. */
    static Path beside(Path file) {
        return file.resolveSibling(
                "." + file.getFileName() + "." + ProcessHandle.current().pid() + ENDING);
    }

    /** Clears those folders, each once, of what no process at work writes; what cannot be cleared stays. */
    public static void clear(Collection<Path> folders) {
        for (Path folder : new LinkedHashSet<>(folders)) clear(folder);
    }

    private static void clear(Path folder) {
        if (!Files.isDirectory(folder)) return; // to look into a pipe is to wait for it
        try (DirectoryStream<Path> files = Files.newDirectoryStream(folder, ".*" + ENDING)) {
            for (Path file : files) if (isLeft(file)) Files.deleteIfExists(file);
        } catch (IOException | DirectoryIteratorException e) {
            // The folder is not there yet, or may not be written to: whoever writes next says so.
        }
    }

    private static boolean isLeft(Path file) throws IOException {
        Matcher name = NAME.matcher(String.valueOf(file.getFileName()));
        if (!name.matches() || !Files.isRegularFile(file)) return false;
        Optional<ProcessHandle> process = ProcessHandle.of(Long.parseLong(name.group(1)));
        if (process.isEmpty()) return true;
        Instant written = Files.getLastModifiedTime(file).toInstant();
        return process.get()
                .info()
                .startInstant()
                .filter(began -> began.minus(UNSURE).isAfter(written)) // another process, which has its number now
                .isPresent();
    }
}
