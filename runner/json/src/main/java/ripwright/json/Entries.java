package ripwright.json;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import ripwright.json.tree.Column;
import ripwright.json.tree.Fields;
import ripwright.json.tree.Kind;
import ripwright.json.tree.Problems;
import ripwright.json.tree.TableFile;
import ripwright.json.tree.Value;

/**
 * A list of a job file, or the spreadsheet that stands for it.
 *
 * @param <T> what it is read as
 */
final class Entries<T> {
    private final String field;
    private final Kind<T> kind;
    private final Optional<Path> spreadsheet;
    private Optional<Value> rows = Optional.empty(); // of the spreadsheet
    private boolean good;

    /** The list in that field, or in {@code spreadsheet} where there is one. */
    Entries(String field, Kind<T> kind, Optional<Path> spreadsheet) {
        this.field = field;
        this.kind = kind;
        this.spreadsheet = spreadsheet;
    }

    T read(Fields job, List<Column> columns, Problems problems, Consumer<String> remarks) {
        if (spreadsheet.isEmpty()) {
            T read = job.required(field, kind);
            good = job.good(field);
            return read;
        }
        job.value(field); // may be there, and does not count
        long before = problems.count();
        rows = new TableFile(columns, problems, remarks).value(spreadsheet.get());
        T read = rows.map(kind::read).orElseGet(kind::standIn);
        good = rows.isPresent() && problems.count() == before;
        return read;
    }

    /** Whether it was read and nothing was wrong with it. */
    boolean good() {
        return good;
    }

    /** Notes what is wrong with it as a whole. */
    void wrong(Fields job, String what) {
        rows.ifPresentOrElse(list -> list.wrong(what), () -> job.wrong(field, what));
    }
}
