package ripwright.json;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/**
 * Where a job may have its rack file. A job that is a file may have it anywhere, as a shop's rack often lies a folder up. One
 * that came by a stream or as a line may be anybody's: it may have it in the folder its caller names and below, and reads no
 * other file there is.
 *
 * @param folder what paths are relative to
 * @param closed whether no path leads out of it
 */
record RackHome(Path folder, boolean closed) {
    private static final Path DEVICES = Path.of("/dev"); // such as /dev/stdin: a stream by the name of a file
    private static final Path UP = Path.of("..");

    /** That of the job in that file. */
    static RackHome of(Path file) {
        Path parent = file.getParent();
        if (file.startsWith(DEVICES)) return inside(Path.of(""));
        return new RackHome(parent == null ? Path.of("") : parent, false);
    }

    /** That of a job which its caller keeps to {@code folder}. */
    static RackHome inside(Path folder) {
        return new RackHome(folder, true);
    }

    /** Whether that path leads to where the job may have no rack. What lies there is not even looked at. */
    boolean forbids(Path path) {
        if (!closed) return false;
        if (path.getRoot() != null) return true;
        for (Path name : path) if (name.equals(UP)) return true;
        return leadsOut(path);
    }

    /** By a link; one that cannot be followed may lead anywhere. */
    private boolean leadsOut(Path path) {
        try {
            Path home = folder.toRealPath();
            return !home.resolve(path).toRealPath().startsWith(home);
        } catch (IOException e) {
            Path there = folder;
            for (Path name : path) {
                there = there.resolve(name);
                if (Files.isSymbolicLink(there)) return true;
            }
            return false; // nothing is there
        }
    }
}
