package ripwright.runner.cli;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.Objects;

/** A file that appears whole or not at all, whatever happens meanwhile: written beside its place, then moved there. */
final class WholeFile {
    private final Path file;

    WholeFile(Path file) {
        this.file = file.toAbsolutePath();
    }

    /** Puts those bytes in its place, on the disk when this returns. */
    void write(byte[] bytes) throws IOException {
        Path folder = Objects.requireNonNull(file.getParent());
        Path beside = folder.resolve(
                "." + file.getFileName() + "." + ProcessHandle.current().pid() + ".tmp");
        try {
            try (FileChannel channel = FileChannel.open(
                    beside,
                    StandardOpenOption.CREATE,
                    StandardOpenOption.TRUNCATE_EXISTING,
                    StandardOpenOption.WRITE)) {
                ByteBuffer rest = ByteBuffer.wrap(bytes);
                while (rest.hasRemaining()) channel.write(rest);
                channel.force(true);
            }
            Files.move(beside, file, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
        } finally {
            Files.deleteIfExists(beside);
        }
        keep(folder);
    }

    /** Makes the new name itself last through a power cut, where the system can. */
    private static void keep(Path folder) {
        try (FileChannel channel = FileChannel.open(folder, StandardOpenOption.READ)) {
            channel.force(true);
        } catch (IOException e) {
            // Some systems open no directory. The bytes are safe already; only the name may be the old one after a cut.
        }
    }
}
