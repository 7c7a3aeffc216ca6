package ripwright.runner.cli;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Objects;
import java.util.Optional;
import picocli.CommandLine.Option;
import ripwright.job.Job;
import ripwright.json.JobReader;
import ripwright.json.JobWriter;
import ripwright.json.Spreadsheets;
import ripwright.json.tree.WrongInputException;

/** Options of commands that read a job, whose stack or bill may be spreadsheets. */
final class SpreadsheetOptions {
    @Option(
            names = "--stack",
            paramLabel = "CSV",
            description = "The stack, as a spreadsheet saved as CSV; the job file's own is not looked at.")
    private Optional<Path> stack;

    @Option(
            names = {"--parts", "--bill"},
            paramLabel = "CSV",
            description = "The cutting bill, likewise.")
    private Optional<Path> bill;

    /** Whether there are any. */
    boolean given() {
        return stack.isPresent() || bill.isPresent();
    }

    /** What is wrong when that many jobs are read with them. */
    Optional<String> clash(int jobs) {
        return jobs > 1 && given()
                ? Optional.of("--stack and --parts stand for the lists of one job. Plan these " + jobs + " apart.")
                : Optional.empty();
    }

    /** The job of that file; what is left unused of a spreadsheet is said on {@code terminal}. */
    Job job(Path file, Terminal terminal) throws WrongInputException {
        return JobReader.read(file, new Spreadsheets(stack, bill, terminal.err()::println));
    }

    /**
     * Writes the job with what came from spreadsheets beside its plan, as in {@code lockers.whole.json}, for commands that go
     * on with the plan; nothing where the job file says it all.
     */
    Optional<Path> keep(Job job, Path file, PlanFiles files) throws IOException {
        if (!given()) return Optional.empty();
        Path whole = files.other(".whole.json");
        Path home = folder(whole);
        Optional<String> rack = JobReader.rackOf(Files.readAllBytes(file))
                .map(path -> folder(file).resolve(path).normalize())
                .map(path -> Objects.equals(path.getRoot(), home.getRoot()) ? home.relativize(path) : path)
                .map(path -> path.toString().replace(File.separatorChar, '/'));
        files.write(".whole.json", JobWriter.bytes(job, rack));
        return Optional.of(whole);
    }

    private static Path folder(Path file) {
        return Objects.requireNonNull(file.toAbsolutePath().normalize().getParent());
    }
}
