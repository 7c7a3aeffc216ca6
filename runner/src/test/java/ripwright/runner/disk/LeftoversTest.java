package ripwright.runner.disk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class LeftoversTest {
    private static final long OURS = ProcessHandle.current().pid();

    @TempDir
    private Path folder;

    private long gone;

    /** The number of a process that has ended. */
    @BeforeEach
    void endAProcess() throws IOException, InterruptedException {
        String java = Path.of(System.getProperty("java.home"), "bin", "java").toString();
        Process process = new ProcessBuilder(java, "--version")
                .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                .start();
        process.waitFor();
        gone = process.pid();
    }

    private Path file(String name) throws IOException {
        return Files.writeString(folder.resolve(name), "half");
    }

    private void clear() {
        Leftovers.clear(List.of(folder, folder, folder.resolve("none")));
    }

    @Test
    void what_a_process_that_is_gone_was_about_to_write_goes() throws IOException {
        Path left = file(".lockers.sheet.html." + gone + ".ripwright.tmp");
        Path kept = file("..lockers.made-from." + gone + ".ripwright.tmp");
        clear();
        assertThat(left).doesNotExist();
        assertThat(kept).doesNotExist();
    }

    @Test
    void what_a_process_at_work_writes_stays() throws IOException {
        Path ours = Files.writeString(Leftovers.beside(folder.resolve("lockers.plan.json")), "half");
        assertThat(ours.getFileName()).hasToString(".lockers.plan.json." + OURS + ".ripwright.tmp");
        ProcessHandle.current()
                .parent()
                .ifPresent(parent -> assertThat(fileOf(parent.pid())).exists());
        clear();
        assertThat(ours).exists();
        ProcessHandle.current()
                .parent()
                .ifPresent(
                        parent -> assertThat(folder.resolve(name(parent.pid()))).exists());
    }

    private static String name(long process) {
        return ".lockers.sheet.html." + process + ".ripwright.tmp";
    }

    private Path fileOf(long process) {
        try {
            return file(name(process));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Test
    void what_was_written_before_its_process_began_is_another_ones_that_had_its_number() throws IOException {
        Path left = file(name(OURS));
        Files.setLastModifiedTime(left, FileTime.fromMillis(0));
        clear();
        assertThat(left).doesNotExist();
    }

    @Test
    void files_of_other_programs_stay() throws IOException {
        List<Path> others = List.of(
                file(".lockers.sheet.html." + gone + ".tmp"),
                file("lockers.sheet.html." + gone + ".ripwright.tmp"),
                file(".lockers.sheet.html.ripwright.tmp"),
                file("." + gone + ".ripwright.tmp"),
                file(".lockers." + "9".repeat(30) + ".ripwright.tmp"),
                Files.createDirectory(folder.resolve(".lockers." + gone + ".ripwright.tmp")));
        clear();
        assertThat(others).allSatisfy(other -> assertThat(other).exists());
    }

    @Test
    void a_pipe_that_is_no_folder_is_not_waited_for() throws IOException, InterruptedException {
        Path pipe = folder.resolve("pipe");
        assumeTrue(new ProcessBuilder("mkfifo", pipe.toString()).start().waitFor() == 0);
        Thread clearing = new Thread(() -> Leftovers.clear(List.of(pipe)));
        clearing.setDaemon(true); // nothing else ends what waits for a pipe
        clearing.start();
        clearing.join(TimeUnit.SECONDS.toMillis(60));
        assertThat(clearing.isAlive()).isFalse();
    }
}
