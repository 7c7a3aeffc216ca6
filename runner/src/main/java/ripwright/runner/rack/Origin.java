package ripwright.runner.rack;

import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import ripwright.job.Job;
import ripwright.json.Book;
import ripwright.json.Booked;
import ripwright.json.JobReader;
import ripwright.json.tree.WrongInputException;
import ripwright.plan.CutBoard;
import ripwright.settle.Settling;
import ripwright.stock.Board;

/**
 * Where a plan's wood is from: a job, or one that was begun by another plan and resumed. {@code lockers.resumed.plan.json} is
 * known by its name; the plan it was begun by, {@code lockers.plan.json}, must lie beside it.
 *
 * @param begun the job whose stack it is
 * @param planned the job that was planned; the same, when nothing was resumed
 * @param earlier the plans that were begun before
 */
record Origin(Job begun, Job planned, List<PlanFile> earlier) {
    private static final Pattern RESUMED = Pattern.compile("(.+?)\\.resumed(?:-\\d+)?\\.plan\\.json");

    /** Of that plan; {@code named} is the job's file, of a resumed one the begun job's, where it is not beside its plan. */
    static Origin of(PlanFile plan, Optional<Path> named) throws IOException, WrongInputException, RefusedException {
        Matcher resumed = RESUMED.matcher(plan.name());
        if (!resumed.matches()) {
            Job job = job(plan, named);
            return new Origin(job, job, List.of());
        }
        Path first = plan.file().resolveSibling(resumed.group(1) + ".plan.json");
        if (Files.notExists(first))
            throw new RefusedException(
                    "There is no " + first + ", the plan that was begun. Put it back beside this one.");
        PlanFile begun = PlanFile.read(first);
        List<PlanFile> earlier = new ArrayList<>(List.of(begun));
        Path folder = Objects.requireNonNull(plan.file().toAbsolutePath().getParent());
        try (DirectoryStream<Path> all = Files.newDirectoryStream(folder)) {
            for (Path file : all) {
                Matcher other = RESUMED.matcher(String.valueOf(file.getFileName()));
                boolean same = other.matches() && other.group(1).equals(resumed.group(1));
                if (same && !String.valueOf(file.getFileName()).equals(plan.name())) earlier.add(PlanFile.read(file));
            }
        }
        return new Origin(job(begun, named), job(plan, Optional.empty()), earlier);
    }

    private static Job job(PlanFile plan, Optional<Path> named) throws WrongInputException, RefusedException {
        Path file = named.or(plan::job)
                .orElseThrow(() -> new RefusedException("There is no " + plan.beside(".job.json")
                        + ". Name the job that was planned: --job " + plan.wholeJob() + "."));
        Job job = JobReader.read(file);
        if (!job.name().equals(plan.plan().job()))
            throw new RefusedException("The plan is of \"" + plan.plan().job() + "\", but " + file + " is \""
                    + job.name() + "\". Name the job that was planned: --job " + plan.wholeJob() + ".");
        return job;
    }

    /** A job is booked once: by the plan it was begun by, or by the one that made the rest. */
    void requireUnbooked(Book book) throws RefusedException {
        for (PlanFile plan : earlier) {
            Optional<Booked> entry = book.of(plan.digest());
            if (entry.isPresent())
                throw new RefusedException("This plan makes the rest of what is booked already: "
                        + Reasons.said(entry.get()) + " as if all of it had been cut. Unsettle that first.");
        }
    }

    Settling settling(PlanFile plan, List<Board> rack) {
        if (earlier.isEmpty()) return new Settling(planned, plan.plan(), rack);
        Set<String> before = new LinkedHashSet<>();
        for (PlanFile file : earlier) for (CutBoard board : file.plan().boards()) before.add(board.board());
        Set<String> boards = new LinkedHashSet<>();
        for (Board board : begun.boards()) boards.add(board.id());
        for (CutBoard board : earlier.get(0).plan().boards()) boards.add(board.board());
        before.retainAll(boards);
        return Settling.resumed(begun, before, planned, plan.plan(), rack);
    }
}
