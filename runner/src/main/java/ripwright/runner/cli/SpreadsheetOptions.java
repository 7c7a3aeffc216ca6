package ripwright.runner.cli;

import java.nio.file.Path;
import java.util.Optional;
import picocli.CommandLine.Option;
import ripwright.job.Job;
import ripwright.runner.json.JobReader;
import ripwright.runner.json.Spreadsheets;
import ripwright.runner.tree.WrongInputException;

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

    /** Whether there is any. */
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
}
