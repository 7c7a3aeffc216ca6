package ripwright.runner.rack;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import ripwright.runner.disk.Disk;

/**
 * A disk whose power is cut at a given instant. What was done to names since their folder was last kept may be lost then, as
 * a system may have it in memory alone; a file half written is half there.
 */
final class ShakyDisk implements Disk {
    /** The power is cut. */
    static final class PowerCut extends Error {
        private static final long serialVersionUID = 1;
    }

    /** What a name stood for before it was touched. */
    private record Touched(Path file, Optional<byte[]> before) {
        static Touched now(Path file) throws IOException {
            return new Touched(file, Files.exists(file) ? Optional.of(Files.readAllBytes(file)) : Optional.empty());
        }

        void undo() throws IOException {
            if (before.isPresent()) Files.write(file, before.get());
            else Files.deleteIfExists(file);
        }
    }

    private final int cut; // after so many instants
    private final List<List<Touched>> unkept = new ArrayList<>(); // what each operation touched
    private int instants;

    ShakyDisk(int cut) {
        this.cut = cut;
    }

    /** How many instants there were. */
    int instants() {
        return instants;
    }

    /** How much was done that may be lost. */
    int unkept() {
        return unkept.size();
    }

    /** Loses the last {@code count} things done of those that may be lost. */
    void lose(int count) throws IOException {
        for (int i = 0; i < count; i++) {
            List<Touched> last = unkept.remove(unkept.size() - 1);
            for (Touched touched : last) touched.undo();
        }
    }

    private void instant() {
        if (instants++ >= cut) throw new PowerCut();
    }

    @Override
    public void write(Path file, byte[] bytes) throws IOException {
        instant();
        unkept.add(List.of(Touched.now(file)));
        Files.write(file, Arrays.copyOf(bytes, bytes.length / 2));
        instant();
        REAL.write(file, bytes);
    }

    @Override
    public void move(Path from, Path to) throws IOException {
        instant();
        unkept.add(List.of(Touched.now(from), Touched.now(to)));
        REAL.move(from, to);
    }

    @Override
    public void delete(Path file) throws IOException {
        instant();
        unkept.add(List.of(Touched.now(file)));
        REAL.delete(file);
    }

    @Override
    public void keep(Path folder) throws IOException {
        instant();
        REAL.keep(folder);
        unkept.removeIf(touched -> folder.equals(touched.get(0).file().getParent()));
    }
}
