package ripwright.runner.disk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class WholeFileTest {
    @TempDir
    private Path folder;

    private long files() throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.count();
        }
    }

    @Test
    void a_file_is_there_with_all_its_bytes_and_nothing_beside_it() throws IOException {
        byte[] bytes = new byte[3_000_000];
        bytes[2_999_999] = 7;
        new WholeFile(folder.resolve("plan")).write(bytes);
        assertThat(folder.resolve("plan")).hasBinaryContent(bytes);
        assertThat(files()).isEqualTo(1);
    }

    @Test
    void an_old_file_is_replaced() throws IOException {
        Path file = Files.writeString(folder.resolve("plan"), "a longer one before");
        new WholeFile(file).write(new byte[] {1});
        assertThat(file).hasBinaryContent(new byte[] {1});
        assertThat(files()).isEqualTo(1);
    }

    @Test
    void what_cannot_be_moved_into_place_leaves_nothing_behind() throws IOException {
        Path inTheWay = Files.createDirectory(folder.resolve("plan"));
        Files.writeString(inTheWay.resolve("child"), "");
        assertThatThrownBy(() -> new WholeFile(inTheWay).write(new byte[] {1})).isInstanceOf(IOException.class);
        assertThat(files()).isEqualTo(1);
        assertThat(inTheWay.resolve("child")).exists();
    }

    @Test
    void others_may_read_it_as_any_new_file() throws IOException {
        new WholeFile(folder.resolve("plan")).write(new byte[] {1});
        Path plain = Files.createFile(folder.resolve("plain"));
        assertThat(Files.getPosixFilePermissions(folder.resolve("plan")))
                .isEqualTo(Files.getPosixFilePermissions(plain));
    }

    @Test
    void a_device_is_not_replaced_by_a_file() throws IOException {
        Path device = Files.createSymbolicLink(folder.resolve("report.json"), Path.of("/dev/full"));
        assertThatThrownBy(() -> new WholeFile(device).write(new byte[] {1}))
                .isInstanceOf(IOException.class)
                .hasMessage(device + ": this is a pipe or a device; it must be a file");
        assertThat(device).isSymbolicLink();
        assertThat(files()).isEqualTo(1);
    }

    @Test
    void one_that_another_run_takes_for_left_over_meanwhile_is_written_again() throws IOException {
        int[] writes = {0};
        Disk shared = new FullDisk(Integer.MAX_VALUE) {
            @Override
            public void write(Path file, byte[] bytes) throws IOException {
                super.write(file, bytes);
                if (++writes[0] == 1) Files.delete(file);
            }
        };
        new WholeFile(folder.resolve("plan"), shared).write(new byte[] {1});
        assertThat(folder.resolve("plan")).hasBinaryContent(new byte[] {1});
        assertThat(writes[0]).isEqualTo(2);
    }
}
