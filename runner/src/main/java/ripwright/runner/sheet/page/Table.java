package ripwright.runner.sheet.page;

import java.util.List;

/**
 * A table.
 *
 * @param caption what it lists
 * @param columns the heads of its columns
 * @param groups its rows, in groups that stay together
 */
public record Table(String caption, List<Column> columns, List<Group> groups) {
    /** Keeps copies of the lists. */
    public Table {
        columns = List.copyOf(columns);
        groups = List.copyOf(groups);
    }

    /** How many rows it has. */
    public int rows() {
        return groups.stream().mapToInt(group -> group.rows().size()).sum();
    }

    /**
     * The head of a column.
     *
     * @param name what stands below it
     * @param kind how it is written
     */
    public record Column(String name, Cell.Kind kind) {}

    /**
     * Rows that belong together.
     *
     * @param rows cells, row by row
     */
    public record Group(List<List<Cell>> rows) {
        /** Keeps copies of the lists. */
        public Group {
            rows = rows.stream().map(List::copyOf).toList();
        }

        static Group of(List<Cell> row) {
            return new Group(List.of(row));
        }
    }

    static Column tick() {
        return new Column("Done", Cell.Kind.TICK);
    }

    static Column step() {
        return new Column("Step", Cell.Kind.STEP);
    }

    static Column ticks(String name) {
        return new Column(name, Cell.Kind.TICKS);
    }

    static Column text(String name) {
        return new Column(name, Cell.Kind.TEXT);
    }

    static Column number(String name) {
        return new Column(name, Cell.Kind.NUMBER);
    }
}
