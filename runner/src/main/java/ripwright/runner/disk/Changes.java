package ripwright.runner.disk;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import ripwright.json.tree.JsonOut;
import ripwright.json.tree.WrongInputException;

/**
 * Changes several files so that in the end all are changed or none, wherever the power is cut. A note tells which files are
 * about to change; what is new is written beside them; then a note that it is all there takes the place of the first, whole:
 * that is the instant from which on the change is made. Then the files are moved, and the note goes. Where a run finds a note
 * of one before it, that one was cut off: before that instant, what lies beside the files is cleared away, after it, what is
 * left undone is done first. One run at a time: hold a {@link LockFile}.
 *
 * @see "Common practice: an undo and a redo log of one entry"
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
        List<Change> some = changes.stream().filter(change -> !change.isNone()).toList();
        List<Note.Entry> entries = some.stream()
                .map(change -> new Note.Entry(
                        change.file().toAbsolutePath(),
                        change.before().map(Digest::of),
                        change.after().isPresent()))
                .toList();
        Note begun = new Note(what, entries, false);
        Note made = new Note(what, entries, true);
        try {
            put(begun);
            disk.keep(folder);
            for (Change change : some)
                if (change.after().isPresent())
                    write(change.file().toAbsolutePath(), change.after().get());
            keepFolders(begun);
            put(made);
        } catch (IOException | RuntimeException e) {
            abandon(begun, e);
            throw e;
        }
        disk.keep(folder);
        carryOut(made);
    }

    private void put(Note written) throws IOException {
        write(note, JsonOut.bytes(written.writtenFrom(folder)));
        disk.move(beside(note), note);
    }

    /** What is new, beside the file; what fails is told of the file. */
    private void write(Path file, byte[] bytes) throws IOException {
        try {
            disk.write(beside(file), bytes);
        } catch (IOException e) {
            throw new Trouble(e).with(file);
        }
    }

    /** Where that fails too, the next run does it. */
    private void abandon(Note begun, Exception why) {
        try {
            abandon(begun);
        } catch (IOException e) {
            why.addSuppressed(e);
        }
    }

    /** As if it had never begun. The note goes last: as long as it is there, whatever else is left is known. */
    private void abandon(Note begun) throws IOException {
        for (Note.Entry entry : begun.entries()) if (entry.stays()) disk.delete(beside(entry.file()));
        keepFolders(begun);
        disk.delete(beside(note));
        disk.delete(note);
        disk.keep(folder);
    }

    /** Finishes what a run before was cut off in; tells what that was, if anything. What was only begun is cleared away. */
    public Optional<String> finish() throws IOException, WrongInputException {
        if (Files.notExists(note)) {
            if (Files.exists(beside(note))) disk.delete(beside(note));
            return Optional.empty();
        }
        Note read = Note.read(note);
        if (!read.made()) {
            abandon(read);
            return Optional.empty();
        }
        for (Note.Entry entry : read.entries()) requireUntouched(entry);
        carryOut(read);
        return Optional.of(read.what());
    }

    private void carryOut(Note made) throws IOException {
        for (Note.Entry entry : made.entries()) {
            if (!entry.stays()) disk.delete(entry.file());
            else if (Files.exists(beside(entry.file()))) disk.move(beside(entry.file()), entry.file());
        }
        keepFolders(made);
        disk.delete(note);
        disk.keep(folder);
    }

    private void keepFolders(Note of) throws IOException {
        Set<Path> folders = new LinkedHashSet<>();
        for (Note.Entry entry : of.entries())
            folders.add(Objects.requireNonNull(entry.file().getParent()));
        for (Path changed : folders) disk.keep(changed);
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
