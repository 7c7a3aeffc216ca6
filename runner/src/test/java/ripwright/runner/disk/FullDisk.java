package ripwright.runner.disk;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Arrays;

/** A disk that is full from a given write on: half of that file still fits. */
class FullDisk implements Disk {
    private int writes;

    FullDisk(int writes) {
        this.writes = writes;
    }

    @Override
    public void write(Path file, byte[] bytes) throws IOException {
        boolean fits = writes-- > 0;
        REAL.write(file, fits ? bytes : Arrays.copyOf(bytes, bytes.length / 2));
        if (!fits) throw new IOException("No space left on device"); // as a channel says it, which knows no file
    }

    @Override
    public void move(Path from, Path to) throws IOException {
        REAL.move(from, to);
    }

    @Override
    public void delete(Path file) throws IOException {
        REAL.delete(file);
    }

    @Override
    public void keep(Path folder) throws IOException {
        REAL.keep(folder);
    }
}
