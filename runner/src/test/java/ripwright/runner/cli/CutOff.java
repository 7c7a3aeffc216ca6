package ripwright.runner.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Arrays;
import picocli.CommandLine;
import ripwright.runner.disk.Disk;

/** One settle or unsettle in a process of its own that is killed at a given instant; ends with 137 when it was. */
final class CutOff implements Disk {
    static final int KILLED = 137;

    private int instants;

    private CutOff(int instants) {
        this.instants = instants;
    }

    /** The arguments: how many instants it lives, and then a command. */
    public static void main(String[] args) {
        Disk disk = new CutOff(Integer.parseInt(args[0]));
        Terminal terminal = new Terminal(
                new PrintWriter(System.out, true, StandardCharsets.UTF_8),
                new PrintWriter(System.err, true, StandardCharsets.UTF_8),
                false);
        Clock clock = Clock.fixed(Instant.parse("2026-10-01T12:00:00Z"), ZoneOffset.UTC);
        Object command = args[1].equals("settle")
                ? new SettleCommand(terminal, clock, disk)
                : new UnsettleCommand(terminal, disk);
        System.exit(new CommandLine(command).execute(Arrays.copyOfRange(args, 2, args.length)));
    }

    private void instant() {
        if (instants-- == 0) Runtime.getRuntime().halt(KILLED);
    }

    @Override
    public void write(Path file, byte[] bytes) throws IOException {
        instant();
        Files.write(file, Arrays.copyOf(bytes, bytes.length / 2));
        instant();
        REAL.write(file, bytes);
    }

    @Override
    public void move(Path from, Path to) throws IOException {
        instant();
        REAL.move(from, to);
    }

    @Override
    public void delete(Path file) throws IOException {
        instant();
        REAL.delete(file);
    }

    @Override
    public void keep(Path folder) throws IOException {
        instant();
        REAL.keep(folder);
    }
}
