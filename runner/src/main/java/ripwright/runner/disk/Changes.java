package ripwright.runner.disk;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import ripwright.runner.tree.JsonOut;
import ripwright.runner.tree.WrongInputException;

/**
 * Changes several files so that in the end all are changed or none, wherever the power is cut. What is new is written
 * beside the files; then a note of what is to be moved where is put in its place, whole: that is the instant from which on
 * the change is made. Then the files are moved, and the note goes. Where a run finds the note of one before it, that one
 * was cut off after that instant, and what it left undone is done first. One run at a time: hold a {@link LockFile}.
 *
 * @see "Common practice: a redo log of one entry"
 */
public final class Changes {
    private final Path note;
    private final Path folder;
    private final Disk disk;

    /** With that file for the note. */
    public Changes(Path note, Disk disk) {
        this.note = note.toAbsolutePath();
        this.folder = Objects.requireNonNull(this.note.getParent());
        this.disk = disk;
    }

    /** Makes all of them, or none when it fails; {@code what} is told to the run that has to finish it. */
    public void make(String what, List<Change> changes) throws IOException {
        List<Note.Entry> entries = new ArrayList<>();
        Set<Path> folders = new LinkedHashSet<>();
        for (Change change : changes) {
            if (change.isNone()) continue;
            Path file = change.file().toAbsolutePath();
            if (change.after().isPresent())
                disk.write(beside(file), change.after().get());
            entries.add(new Note.Entry(
                    file, change.before().map(Digest::of), change.after().isPresent()));
            folders.add(Objects.requireNonNull(file.getParent()));
        }
        for (Path changed : folders) disk.keep(changed);
        disk.write(beside(note), JsonOut.bytes(new Note(what, entries).writtenFrom(folder)));
        disk.move(beside(note), note);
        disk.keep(folder);
        carryOut(new Note(what, entries));
    }

    /** Finishes what a run before was cut off in; tells what that was, if anything. */
    public Optional<String> finish() throws IOException, WrongInputException {
        if (Files.notExists(note)) return Optional.empty();
        Note read = Note.read(note);
        for (Note.Entry entry : read.entries()) requireUntouched(entry);
        carryOut(read);
        return Optional.of(read.what());
    }

    private void carryOut(Note made) throws IOException {
        Set<Path> folders = new LinkedHashSet<>();
        for (Note.Entry entry : made.entries()) {
            if (!entry.stays()) disk.delete(entry.file());
            else if (Files.exists(beside(entry.file()))) disk.move(beside(entry.file()), entry.file());
            folders.add(Objects.requireNonNull(entry.file().getParent()));
        }
        for (Path changed : folders) disk.keep(changed);
        disk.delete(note);
        disk.keep(folder);
    }

    /** What somebody wrote since, by hand, is not written over. */
    private void requireUntouched(Note.Entry entry) throws IOException {
        boolean undone = entry.stays() ? Files.exists(beside(entry.file())) : Files.exists(entry.file());
        if (!undone) return;
        Optional<String> now = Files.exists(entry.file())
                ? Optional.of(Digest.of(Files.readAllBytes(entry.file())))
                : Optional.empty();
        if (now.equals(entry.before())) return;
        throw new IOException(
                entry.file() + " was changed by hand since a run was cut off that had more to write to it."
                        + " To go on from what it holds now, delete " + note.getFileName()
                        + (entry.stays() ? "; what that run wanted to write is in " + beside(entry.file()) : ""));
    }

    /** Where what is new waits. */
    private static Path beside(Path file) {
        return file.resolveSibling("." + file.getFileName() + ".new");
    }
}
