package ripwright.runner.disk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class FullDiskTest {
    private static final byte[] OLD = "old".getBytes(StandardCharsets.UTF_8);
    private static final byte[] NEW = "something new".getBytes(StandardCharsets.UTF_8);

    @TempDir
    private Path folder;

    private List<String> files() throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(file -> String.valueOf(file.getFileName()))
                    .sorted()
                    .toList();
        }
    }

    /** A call that writes. */
    private interface Writing {
        void run() throws IOException;
    }

    private static String told(Writing writing) {
        return new Trouble(catchThrowableOfType(IOException.class, writing::run)).words();
    }

    @Test
    void a_file_that_does_not_fit_is_named_and_nothing_of_it_is_left() throws IOException {
        Path file = Files.write(folder.resolve("lockers.sheet.html"), OLD);
        WholeFile whole = new WholeFile(file, new FullDisk(0));
        assertThat(told(() -> whole.write(NEW))).isEqualTo(file + ": No space left on device");
        assertThat(file).hasBinaryContent(OLD);
        assertThat(files()).containsExactly("lockers.sheet.html");
    }

    @Test
    void of_several_files_none_is_changed_when_one_does_not_fit_whichever_it_is() throws IOException {
        Path rack = Files.write(folder.resolve("rack.json"), OLD);
        List<Change> changes = List.of(
                new Change(rack, Optional.of(OLD), Optional.of(NEW)),
                new Change(folder.resolve("rack.book.json"), Optional.empty(), Optional.of(NEW)));
        String note = folder.resolve("rack.pending.json") + ": No space left on device";
        List<String> due = List.of(
                note,
                rack + ": No space left on device",
                folder.resolve("rack.book.json") + ": No space left on device",
                note);
        for (int fits = 0; fits < due.size(); fits++) {
            Changes cramped = new Changes(folder.resolve("rack.pending.json"), new FullDisk(fits));
            assertThat(told(() -> cramped.make("settle", changes))).isEqualTo(due.get(fits));
            assertThat(files()).containsExactly("rack.json");
            assertThat(rack).hasBinaryContent(OLD);
        }
        new Changes(folder.resolve("rack.pending.json"), new FullDisk(due.size())).make("settle", changes);
        assertThat(files()).containsExactly("rack.book.json", "rack.json");
    }

    @Test
    void the_device_that_is_always_full_says_so() {
        Path full = Path.of("/dev/full");
        assumeTrue(Files.exists(full));
        assertThat(told(() -> Disk.REAL.write(full, NEW))).isEqualTo("No space left on device");
    }
}
