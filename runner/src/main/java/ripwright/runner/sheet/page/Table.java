package ripwright.runner.sheet.page;

import java.util.ArrayList;
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

    /** The name of the column each cell of a group stands in, row by row; rows below a cell that spans some lack it. */
    public List<List<String>> heads(Group group) {
        int[] taken = new int[columns.size()]; // how many more rows a cell above reaches down into
        List<List<String>> heads = new ArrayList<>();
        for (List<Cell> row : group.rows()) {
            List<String> names = new ArrayList<>();
            int column = 0;
            for (Cell cell : row) {
                while (column < taken.length && taken[column] > 0) taken[column++]--;
                names.add(column < taken.length ? columns.get(column).name() : "");
                for (int i = 0; i < cell.columns() && column < taken.length; i++) taken[column++] = cell.rows() - 1;
            }
            while (column < taken.length) if (taken[column++] > 0) taken[column - 1]--;
            heads.add(names);
        }
        return heads;
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

    static Column words(String name) {
        return new Column(name, Cell.Kind.WORDS);
    }

    static Column number(String name) {
        return new Column(name, Cell.Kind.NUMBER);
    }
}
