package ripwright.runner.disk;

import java.io.IOException;
import java.nio.file.Path;

/** The few things that are done to a disk, one at a time, so that a test can cut the power before and within each. */
public interface Disk {
    /** The disk there is. */
    Disk REAL = new RealDisk();

    /** A new file with those bytes, on the disk when this returns; its name may still be lost. */
    void write(Path file, byte[] bytes) throws IOException;

    /** Another name for a file, at once, in place of what had that name. */
    void move(Path from, Path to) throws IOException;

    /** No such file any more; nothing where there is none. */
    void delete(Path file) throws IOException;

    /** Makes names last that came and went in that folder, where the system can. */
    void keep(Path folder) throws IOException;
}
