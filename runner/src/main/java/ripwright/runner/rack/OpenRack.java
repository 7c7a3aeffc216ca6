package ripwright.runner.rack;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import ripwright.json.Book;
import ripwright.json.BookReader;
import ripwright.json.BookWriter;
import ripwright.json.Rack;
import ripwright.json.RackReader;
import ripwright.json.tree.WrongInputException;
import ripwright.measure.Unit;
import ripwright.runner.disk.Change;
import ripwright.runner.disk.Changes;
import ripwright.runner.disk.Disk;
import ripwright.runner.disk.LockFile;
import ripwright.stock.Board;

/** A rack and its book, held by this run alone until it is closed; what a run before was cut off in is finished first. */
final class OpenRack implements AutoCloseable {
    private final RackFiles files;
    private final LockFile lock;
    private final Changes changes;
    private final Optional<String> finished;
    private final Optional<byte[]> rackBytes;
    private final Optional<byte[]> bookBytes;
    private final Optional<Rack> rack;
    private final Optional<Book> book;

    private OpenRack(RackFiles files, LockFile lock, Disk disk) throws IOException, WrongInputException {
        this.files = files;
        this.lock = lock;
        this.changes = new Changes(files.pending(), disk);
        this.finished = changes.finish();
        this.rackBytes = RackFiles.bytes(files.rack());
        this.bookBytes = RackFiles.bytes(files.book());
        this.rack = rackBytes.isPresent() ? Optional.of(RackReader.read(files.rack())) : Optional.empty();
        this.book = bookBytes.isPresent() ? Optional.of(BookReader.read(files.book())) : Optional.empty();
    }

    static OpenRack open(RackFiles files, Disk disk) throws IOException, WrongInputException, RefusedException {
        if (Files.isDirectory(files.rack()))
            throw new RefusedException(files.rack() + " is a directory; a rack is a file.");
        if (Files.exists(files.rack()) && !Files.isRegularFile(files.rack()))
            throw new RefusedException(files.rack() + " is a pipe or a device; a rack is a file.");
        Path folder = Objects.requireNonNull(files.rack().getParent());
        if (Files.notExists(folder))
            throw new RefusedException("There is no folder " + folder + ". Make it, or name another rack.");
        Optional<LockFile> lock = LockFile.take(files.lock());
        if (lock.isEmpty())
            throw new RefusedException("Another run is at work on " + files.rack() + ". Try again when it has ended.");
        boolean open = false;
        try {
            OpenRack rack = new OpenRack(files, lock.get(), disk);
            open = true;
            return rack;
        } finally {
            if (!open) lock.get().close();
        }
    }

    /** What the run before was cut off in and this one has finished. */
    boolean hasFinished(String what) {
        return finished.filter(what::equals).isPresent();
    }

    RackFiles files() {
        return files;
    }

    /** The rack's file as it is; empty when there is none yet. */
    Optional<byte[]> bytes() {
        return rackBytes;
    }

    List<Board> offcuts() {
        return rack.map(Rack::offcuts).orElse(List.of());
    }

    /** What its lengths are written in; a new one has those of the job. */
    Unit units(Unit otherwise) {
        return rack.map(Rack::units).orElse(otherwise);
    }

    Book book(Unit units) {
        return book.orElseGet(() -> new Book(units, List.of()));
    }

    /** Changes rack, book and more together; the rack as it was is kept as the last good copy. */
    void change(String what, Optional<byte[]> newRack, Book newBook, List<Change> more) throws IOException {
        boolean empty = newBook.booked().isEmpty();
        List<Change> all = new ArrayList<>();
        all.add(new Change(files.rack(), rackBytes, newRack));
        all.add(new Change(files.book(), bookBytes, empty ? Optional.empty() : Optional.of(BookWriter.bytes(newBook))));
        Optional<byte[]> last = RackFiles.bytes(files.last());
        all.add(new Change(files.last(), last, rackBytes.or(() -> last)));
        all.addAll(more);
        changes.make(what, all);
    }

    @Override
    public void close() throws IOException {
        lock.close();
    }
}
