package ripwright.runner.disk;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.NoSuchFileException;
import java.nio.file.NotDirectoryException;
import java.nio.file.Path;

/** Why something could not be written, in plain words, with the file or the folder named. */
public record Trouble(IOException why) {
    /** As in "plans may not be written to by this user"; without a full stop. */
    public String words() {
        if (!(why instanceof FileSystemException of)) return String.valueOf(why.getMessage());
        String file = file(of);
        if (of.getReason() != null) return file + ": " + of.getReason();
        if (of instanceof AccessDeniedException) return file + " may not be written to by this user";
        if (of instanceof NotDirectoryException) return file + " is not a directory";
        if (of instanceof FileAlreadyExistsException) return file + " is in the way";
        if (of instanceof NoSuchFileException) return file + " is not there";
        return file + " cannot be written to";
    }

    /** The working folder is called nothing at all as long as nothing else is named. */
    private static String file(FileSystemException of) {
        String file = String.valueOf(of.getFile());
        return file.isBlank() ? Path.of("").toAbsolutePath().toString() : file;
    }

    /** The same trouble with {@code file}, where what it came from names another that nobody knows, or none. */
    IOException with(Path file) {
        IOException named = named(file.toString());
        named.initCause(why);
        return named;
    }

    private IOException named(String file) {
        if (why instanceof FileSystemException of && of.getReason() != null)
            return new FileSystemException(file, null, of.getReason());
        if (why instanceof AccessDeniedException) return new AccessDeniedException(file);
        if (why instanceof NotDirectoryException) return new NotDirectoryException(file);
        if (why instanceof FileAlreadyExistsException) return new FileAlreadyExistsException(file);
        if (why instanceof NoSuchFileException) return new NoSuchFileException(file);
        return new FileSystemException(file, null, why instanceof FileSystemException ? null : why.getMessage());
    }
}
