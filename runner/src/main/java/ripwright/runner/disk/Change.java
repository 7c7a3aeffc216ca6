package ripwright.runner.disk;

import java.nio.file.Path;
import java.util.Optional;

/**
 * What becomes of one file.
 *
 * @param file the file
 * @param before what it holds now; empty when there is none
 * @param after what it is to hold; empty when it is to go
 */
public record Change(Path file, Optional<byte[]> before, Optional<byte[]> after) {
    /** Whether the file stays as it is. */
    boolean isNone() {
        return before.map(Digest::of).equals(after.map(Digest::of));
    }
}
