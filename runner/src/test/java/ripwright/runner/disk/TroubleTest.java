package ripwright.runner.disk;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.NoSuchFileException;
import java.nio.file.NotDirectoryException;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

class TroubleTest {
    private static String words(IOException why) {
        return new Trouble(why).words();
    }

    @Test
    void what_may_not_be_written_to_is_named() {
        assertThat(words(new AccessDeniedException("plans"))).isEqualTo("plans may not be written to by this user");
    }

    @Test
    void the_working_folder_is_named_although_its_path_is_blank() {
        assertThat(words(new AccessDeniedException("")))
                .isEqualTo(Path.of("").toAbsolutePath() + " may not be written to by this user");
        assertThat(words(new NotDirectoryException("")))
                .isEqualTo(Path.of("").toAbsolutePath() + " is not a directory");
    }

    @Test
    void every_trouble_is_a_whole_sentence() {
        assertThat(words(new NotDirectoryException("plans"))).isEqualTo("plans is not a directory");
        assertThat(words(new FileAlreadyExistsException("plans"))).isEqualTo("plans is in the way");
        assertThat(words(new NoSuchFileException("plans"))).isEqualTo("plans is not there");
        assertThat(words(new FileSystemException("plans"))).isEqualTo("plans cannot be written to");
        assertThat(words(new FileSystemException("plans", null, "Read-only file system")))
                .isEqualTo("plans: Read-only file system");
        assertThat(words(new IOException("Input/output error"))).isEqualTo("Input/output error");
    }

    @Test
    void a_file_nobody_knows_is_told_by_the_one_it_was_to_become() {
        Path sheet = Path.of("lockers.sheet.html");
        String beside = Leftovers.beside(sheet).toString();
        assertThat(words(new Trouble(new FileSystemException(beside, null, "No space left on device")).with(sheet)))
                .isEqualTo("lockers.sheet.html: No space left on device");
        assertThat(words(new Trouble(new AccessDeniedException(beside)).with(sheet)))
                .isEqualTo("lockers.sheet.html may not be written to by this user");
    }
}
