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
 */
public record Block(String stage, String heading, List<String> notes, Optional<Table> table) {
    private static final int FEW_ROWS = 12;

    /** Keeps a copy of the list. */
    public Block {
        notes = List.copyOf(notes);
    }

    /** This, with more notes at the end. */
    Block with(List<String> more) {
        return new Block(
                stage, heading, Stream.concat(notes.stream(), more.stream()).toList(), table);
    }

    /** Whether it is small enough to be kept on one page. */
    public boolean small() {
        return table.map(Table::rows).orElse(0) <= FEW_ROWS;
    }
}
