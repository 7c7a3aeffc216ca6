package ripwright.json;

import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Consumer;

/**
 * Spreadsheets, saved as CSV, whose rows stand for lists of a job file, whatever that has there.
 *
 * @param stack the boards on hand
 * @param bill the parts
 * @param remarks is told which of their columns are not used, a sentence each, on the thread that reads
 */
public record Spreadsheets(Optional<Path> stack, Optional<Path> bill, Consumer<String> remarks) {
    /** None at all. */
    public static final Spreadsheets NONE = new Spreadsheets(Optional.empty(), Optional.empty(), remark -> {});
}
