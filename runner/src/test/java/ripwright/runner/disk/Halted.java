package ripwright.runner.disk;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;

/** A process of its own that writes a file and is killed at a given instant; ends with 137 when it was. */
public final class Halted {
    private static final int KILLED = 137;

    private Halted() {}

    /** The arguments: how many instants it lives, and the file. */
    public static void main(String[] arguments) throws IOException {
        int[] instants = {Integer.parseInt(arguments[0])};
        new WholeFile(Path.of(arguments[1]), new FullDisk(Integer.MAX_VALUE) {
                    private void instant() {
                        if (instants[0]-- == 0) Runtime.getRuntime().halt(KILLED);
                    }

                    @Override
                    public void write(Path file, byte[] bytes) throws IOException {
                        instant();
                        Files.write(file, Arrays.copyOf(bytes, bytes.length / 2));
                        instant();
                        super.write(file, bytes);
                    }

                    @Override
                    public void move(Path from, Path to) throws IOException {
                        instant();
                        super.move(from, to);
                        instant();
                    }
                })
                .write(new byte[1_000]);
    }

    /** Runs that; whether it was killed. */
    public static boolean isKilled(int instants, Path file) throws IOException, InterruptedException {
        Process process = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-XX:TieredStopAtLevel=1",
                        "-cp",
                        System.getProperty("java.class.path"),
                        Halted.class.getName(),
                        Integer.toString(instants),
                        file.toString())
                .inheritIO()
                .start();
        return process.waitFor() == KILLED;
    }
}
