package ripwright.runner.sheet.page;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * One piece of work.
 *
 * @param stage where in the work it stands, as in "Rip setting 2 of 8"; may be empty
 * @param heading what to do
 * @param notes how to do it
 * @param table to what
 * @param whole whether it stands on one page if it can, however many rows it has
 */
public record Block(String stage, String heading, List<String> notes, Optional<Table> table, boolean whole) {
    private static final int FEW_ROWS = 6;

    /** Keeps a copy of the list. */
    public Block {
        notes = List.copyOf(notes);
    }

    Block(String stage, String heading, List<String> notes, Optional<Table> table) {
        this(stage, heading, notes, table, false);
    }

    /** This, with more notes at the end. */
    Block with(List<String> more) {
        return new Block(
                stage, heading, Stream.concat(notes.stream(), more.stream()).toList(), table, whole);
    }

    /** Whether it is small enough to be kept on one page. */
    public boolean small() {
        return whole || table.map(Table::rows).orElse(0) <= FEW_ROWS;
    }
}
