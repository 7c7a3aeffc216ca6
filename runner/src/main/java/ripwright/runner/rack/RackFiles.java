package ripwright.runner.rack;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Objects;
import java.util.Optional;

/**
 * A rack's file and those beside it. For {@code rack.json}: {@code rack.book.json}, the plans booked; {@code
 * rack.last.json}, the rack before its last change; {@code rack.pending.json}, only there when a run was cut off; and
 * {@code .rack.lock}.
 */
record RackFiles(Path rack) {
    private static final String ENDING = ".json";

    /** A link is followed, so that its target is replaced and not the link. */
    static RackFiles of(Path rack) throws IOException {
        return new RackFiles(
                Files.exists(rack) ? rack.toRealPath() : rack.toAbsolutePath().normalize());
    }

    Path book() {
        return beside("", ".book" + ENDING);
    }

    Path last() {
        return beside("", ".last" + ENDING);
    }

    Path pending() {
        return beside("", ".pending" + ENDING);
    }

    Path lock() {
        return beside(".", ".lock");
    }

    private Path beside(String before, String after) {
        String name = String.valueOf(rack.getFileName());
        String stem = name.endsWith(ENDING) ? name.substring(0, name.length() - ENDING.length()) : name;
        return rack.resolveSibling(before + stem + after);
    }

    /** How {@code folder} calls the rack: relative where there is such a path. */
    String seenFrom(Path folder) throws IOException {
        Path real = folder.toRealPath();
        boolean sameRoot = Objects.equals(real.getRoot(), rack.getRoot());
        return (sameRoot ? real.relativize(rack) : rack).toString().replace('\\', '/');
    }

    /** What a file holds; empty when there is none. */
    static Optional<byte[]> bytes(Path file) throws IOException {
        return Files.notExists(file) ? Optional.empty() : Optional.of(Files.readAllBytes(file));
    }
}
