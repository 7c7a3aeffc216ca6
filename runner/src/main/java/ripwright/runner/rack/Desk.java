package ripwright.runner.rack;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import ripwright.job.Job;
import ripwright.json.Book;
import ripwright.json.Booked;
import ripwright.json.NextJobWriter;
import ripwright.json.Rack;
import ripwright.json.RackWriter;
import ripwright.json.tree.WrongInputException;
import ripwright.measure.Unit;
import ripwright.plan.Plan;
import ripwright.runner.disk.Change;
import ripwright.runner.disk.Digest;
import ripwright.runner.disk.Disk;
import ripwright.settle.Settlement;
import ripwright.settle.Settling;
import ripwright.stock.Board;

/**
 * Where plans are booked against a rack and taken back. The rack and the book of what is booked, a file beside it, change
 * together or not at all; one run at a time.
 */
public final class Desk {
    private static final int MOST_OFFCUTS = 10_000;

    private final RackFiles files;
    private final Disk disk;

    /** Of the rack in that file, which the first booking makes when it is not there. */
    public Desk(Path rack, Disk disk) throws IOException {
        this.files = RackFiles.of(rack);
        this.disk = disk;
    }

    /** Where the rack of that file is kept as it was before its last change. */
    public static Path lastGood(Path rack) {
        return new RackFiles(rack).last();
    }

    /**
     * Books a finished plan: the offcuts it takes leave the rack, those it leaves enter. Beside the plan a job file appears
     * with the boards of the stack that are left.
     *
     * @param plan the plan's file
     * @param job the job's file; when empty, the one beside the plan
     * @param day since when what enters lies there
     */
    public Settled settle(Path plan, Optional<Path> job, String day)
            throws IOException, WrongInputException, RefusedException {
        PlanFile read = PlanFile.read(plan);
        try (OpenRack rack = OpenRack.open(files, disk)) {
            Unit units = rack.units(read.plan().units());
            Book book = rack.book(units);
            Optional<Booked> before = book.of(read.digest());
            boolean cutOff = rack.hasFinished("settle " + read.digest());
            if (before.isPresent() && cutOff) return Settled.finished(read, before.get(), files.rack());
            if (before.isPresent())
                throw new RefusedException(
                        "This plan is booked already, on " + before.get().on() + ".");
            return settle(read, Origin.of(read, job), day, rack, book);
        }
    }

    private Settled settle(PlanFile plan, Origin origin, String day, OpenRack rack, Book book)
            throws IOException, RefusedException {
        origin.requireUnbooked(book);
        Job job = origin.begun();
        Settling settling = origin.settling(plan, rack.offcuts());
        List<String> reasons =
                new Reasons(plan.plan().units(), rack.offcuts(), book).againstSettling(settling, plan.plan());
        if (!reasons.isEmpty()) throw new RefusedException(reasons);

        Set<String> used = new HashSet<>(book.ids());
        for (Board board : job.boards()) used.add(board.id());
        Settlement settlement = settling.settlement(used, day);
        List<Board> offcuts = settlement.settled(rack.offcuts());
        if (offcuts.size() > MOST_OFFCUTS)
            throw new RefusedException("The rack would hold " + offcuts.size() + " offcuts; there may be 10,000.");
        Unit units = rack.units(job.units());
        byte[] after = RackWriter.bytes(new Rack(units, offcuts));
        byte[] left = NextJobWriter.bytes(job, settling.left(), files.seenFrom(folder(plan.left())));
        Booked entry = new Booked(
                job.name(),
                plan.name(),
                plan.digest(),
                day,
                settlement,
                rack.bytes().map(Digest::of),
                Digest.of(after),
                writtenOtherwise(rack, units),
                Digest.of(left));
        Change leaving = new Change(plan.left(), leftNow(plan, left), Optional.of(left));
        rack.change("settle " + plan.digest(), Optional.of(after), book.with(entry), List.of(leaving));
        List<String> called = settling.entering().stream().map(Settlement::mark).toList();
        return new Settled(plan.plan(), entry, called, plan.left(), files.rack(), false);
    }

    private static Path folder(Path file) {
        return Objects.requireNonNull(file.getParent());
    }

    /** What somebody has made of the boards left by an earlier plan is not written over. */
    private static Optional<byte[]> leftNow(PlanFile plan, byte[] left) throws IOException, RefusedException {
        Optional<byte[]> now = RackFiles.bytes(plan.left());
        if (now.isPresent() && !Arrays.equals(now.get(), left))
            throw new RefusedException(plan.left()
                    + " is in the way: the boards left go there. Move it somewhere else, or give it another name.");
        return now;
    }

    /** The rack's file, where writing the rack it holds does not give the same bytes: somebody's own hand. */
    private static Optional<String> writtenOtherwise(OpenRack rack, Unit units) {
        byte[] ours = RackWriter.bytes(new Rack(units, rack.offcuts()));
        return rack.bytes()
                .filter(bytes -> !Arrays.equals(bytes, ours))
                .map(bytes -> new String(bytes, StandardCharsets.UTF_8));
    }

    /** Takes a booked plan back, while nothing that was booked later needs what it left. */
    public Unsettled unsettle(Path plan) throws IOException, WrongInputException, RefusedException {
        PlanFile read = PlanFile.read(plan);
        try (OpenRack rack = OpenRack.open(files, disk)) {
            Book book = rack.book(rack.units(read.plan().units()));
            Optional<Booked> entry = book.of(read.digest());
            if (entry.isEmpty() && rack.hasFinished("unsettle " + read.digest()))
                return new Unsettled(read.plan(), Optional.empty(), files.rack(), Optional.empty());
            if (entry.isEmpty()) throw new RefusedException(notBooked(read.plan(), book));
            return unsettle(read, entry.get(), rack, book);
        }
    }

    private static List<String> notBooked(Plan plan, Book book) {
        return book.booked().stream()
                .filter(entry -> entry.job().equals(plan.job()))
                .reduce((earlier, later) -> later)
                .map(entry -> List.of("This plan is not booked; another one of the same job is: " + Reasons.said(entry)
                        + " and only that one can be taken back."))
                .orElse(List.of("This plan is not booked."));
    }

    private Unsettled unsettle(PlanFile plan, Booked entry, OpenRack rack, Book book)
            throws IOException, RefusedException {
        List<String> reasons =
                new Reasons(plan.plan().units(), rack.offcuts(), book).againstUnsettling(entry.settlement());
        if (!reasons.isEmpty()) throw new RefusedException(reasons);

        Optional<byte[]> left = RackFiles.bytes(plan.left());
        boolean touched = left.isPresent() && !Digest.of(left.get()).equals(entry.left());
        List<Change> leaving = touched ? List.of() : List.of(new Change(plan.left(), left, Optional.empty()));
        rack.change("unsettle " + plan.digest(), before(entry, rack), book.without(entry), leaving);
        return new Unsettled(
                plan.plan(),
                Optional.of(entry.settlement()),
                files.rack(),
                Optional.of(plan.left()).filter(l -> touched));
    }

    /** The rack's file without that plan: the very bytes it had, when nothing else has changed it since. */
    private static Optional<byte[]> before(Booked entry, OpenRack rack) {
        boolean untouched =
                rack.bytes().map(Digest::of).filter(entry.after()::equals).isPresent();
        if (untouched && entry.before().isEmpty()) return Optional.empty();
        if (untouched && entry.writtenBefore().isPresent())
            return entry.writtenBefore().map(text -> text.getBytes(StandardCharsets.UTF_8));
        List<Board> offcuts = entry.settlement().unsettled(rack.offcuts());
        byte[] before = RackWriter.bytes(new Rack(rack.units(Unit.INCH), offcuts));
        if (untouched && !entry.before().equals(Optional.of(Digest.of(before))))
            throw new IllegalStateException("The rack would not be what it was before " + entry.job() + ".");
        return Optional.of(before);
    }
}
