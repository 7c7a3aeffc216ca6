package ripwright.runner.disk;

import java.io.IOException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.Objects;

/** A file that appears whole or not at all, whatever happens meanwhile: written beside its place, then moved there. */
public final class WholeFile {
    private static final int MOST_TRIES = 3;

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
        Path beside = Leftovers.beside(file);
        for (int tries = 1; ; tries++) {
            try {
                disk.write(beside, bytes);
                disk.move(beside, file);
                break;
            } catch (NoSuchFileException e) {
                // Another machine may share the folder and know nothing of this process: it took the file for left
                // over.
                if (tries == MOST_TRIES) throw new Trouble(e).with(file);
            } catch (IOException e) {
                disk.delete(beside);
                throw new Trouble(e).with(file);
            } catch (RuntimeException | Error e) {
                disk.delete(beside);
                throw e;
            }
        }
        disk.keep(Objects.requireNonNull(file.getParent()));
    }
}
