package ripwright.runner.start;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.NotDirectoryException;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/** The starter job in a folder: the job, its rack, and its stack and bill once more as spreadsheets. */
public final class Starter {
    /** The job's name in the folder. */
    public static final String JOB = "shoe-rack.job.json";

    /** The rack's. */
    public static final String RACK = "rack.json";

    /** That of the stack as a spreadsheet. */
    public static final String STACK = "stack.csv";

    /** That of the cutting bill as a spreadsheet. */
    public static final String BILL = "bill.csv";

    private static final List<String> NAMES = List.of(JOB, RACK, STACK, BILL);

    private final Path folder;

    /** In that folder. */
    public Starter(Path folder) {
        this.folder = folder;
    }

    /** Those of its files that are there already. */
    public List<Path> inTheWay() {
        return NAMES.stream()
                .map(folder::resolve)
                .filter(file -> Files.exists(file, java.nio.file.LinkOption.NOFOLLOW_LINKS))
                .toList();
    }

    /** Writes all of them, none over another: a file in the way is a {@link FileAlreadyExistsException}, and none is left. */
    public void write() throws IOException {
        Path there = folder.toAbsolutePath();
        if (Files.exists(there) && !Files.isDirectory(there)) throw new NotDirectoryException(folder.toString());
        Files.createDirectories(there);
        List<Path> written = new ArrayList<>();
        try {
            for (String name : NAMES) {
                Path file = folder.resolve(name);
                Files.createFile(file);
                written.add(file);
                Files.write(file, bytes(name), StandardOpenOption.WRITE);
            }
        } catch (IOException e) {
            for (Path file : written) Files.deleteIfExists(file);
            throw e;
        }
    }

    private static byte[] bytes(String name) {
        try (InputStream in = Objects.requireNonNull(Starter.class.getResourceAsStream(name), name)) {
            return in.readAllBytes();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
