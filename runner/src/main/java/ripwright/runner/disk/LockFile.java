package ripwright.runner.disk;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Optional;

/** A lock that one run at a time can hold; the system lets it go when the run ends, however it ends. The file stays. */
public final class LockFile implements AutoCloseable {
    private final FileChannel channel;

    private LockFile(FileChannel channel) {
        this.channel = channel;
    }

    /** The lock; empty while another run holds it. */
    public static Optional<LockFile> take(Path file) throws IOException {
        FileChannel channel = FileChannel.open(file, StandardOpenOption.CREATE, StandardOpenOption.WRITE);
        boolean taken = false;
        try {
            taken = lock(channel).isPresent();
            return taken ? Optional.of(new LockFile(channel)) : Optional.empty();
        } finally {
            if (!taken) channel.close();
        }
    }

    private static Optional<FileLock> lock(FileChannel channel) throws IOException {
        try {
            return Optional.ofNullable(channel.tryLock());
        } catch (OverlappingFileLockException e) {
            return Optional.empty(); // held by this very process
        }
    }

    @Override
    public void close() throws IOException {
        channel.close();
    }
}
