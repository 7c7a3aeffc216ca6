package ripwright.runner.disk;

import java.io.IOException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Objects;

/** A file that appears whole or not at all, whatever happens meanwhile: written beside its place, then moved there. */
public final class WholeFile {
    private final Path file;
    private final Disk disk;

    /** On the disk there is. */
    public WholeFile(Path file) {
        this(file, Disk.REAL);
    }

    WholeFile(Path file, Disk disk) {
        this.file = file.toAbsolutePath();
        this.disk = disk;
    }

    /** Puts those bytes in its place, on the disk when this returns. */
    public void write(byte[] bytes) throws IOException {
        if (Files.exists(file) && !Files.isRegularFile(file) && !Files.isDirectory(file))
            throw new FileSystemException(file.toString(), null, "this is a pipe or a device; it must be a file");
        Path folder = Objects.requireNonNull(file.getParent());
        Path beside = folder.resolve(
                "." + file.getFileName() + "." + ProcessHandle.current().pid() + ".tmp");
        try {
            disk.write(beside, bytes);
            disk.move(beside, file);
        } catch (IOException | RuntimeException e) {
            disk.delete(beside);
            throw e;
        }
        disk.keep(folder);
    }
}
