package ripwright.json.tree;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A spreadsheet saved as CSV: reads its rows as a list of objects, as a JSON file would have them, so that the same kinds read
 * both. With commas, semicolons or tabs between the cells, whichever brings most of the columns to light.
 */
public final class TableFile {
    private static final char[] SEPARATORS = {',', ';', '\t'};
    private static final Pattern SEPARATOR_LINE = Pattern.compile("(?i)\"?sep=(.)\"?\\r?\\n"); // for spreadsheets
    private static final int MOST_ABOVE_HEADS = 20; // rows, for titles and dates

    private final List<Column> columns;
    private final Problems problems;
    private final Consumer<String> remarks;

    /** With some of those columns. What is wrong goes to {@code problems}, what is not used to {@code remarks}. */
    public TableFile(List<Column> columns, Problems problems, Consumer<String> remarks) {
        this.columns = List.copyOf(columns);
        this.problems = problems;
        this.remarks = remarks;
    }

    /** The rows of that file; empty when it has none that can be read, which goes to the problems. */
    public Optional<Value> value(Path file) {
        String noHeads = "no column heads found; there must be a row with " + required() + ", in any order.";
        return new TextFile(problems, TablePlace.WHOLE, this::hasHeads, noHeads)
                .source(file)
                .flatMap(this::value);
    }

    private boolean hasHeads(Source source) {
        return source.text().isBlank() || heads(rows(source).first(MOST_ABOVE_HEADS)) >= 0;
    }

    private CsvRows rows(Source source) {
        Matcher line = SEPARATOR_LINE.matcher(source.text());
        int from = line.lookingAt() ? line.end() : 0;
        return new CsvRows(source, from, from > 0 ? line.group(1).charAt(0) : separator(source));
    }

    private Optional<Value> value(Source source) {
        if (source.text().isBlank()) {
            problems.add(source.name(), TablePlace.WHOLE, "the file is empty; it must hold a row of column heads.");
            return Optional.empty();
        }
        CsvRows table = rows(source);
        List<List<CsvRows.Cell>> rows = table.all(problems);
        int heads = heads(rows);
        long before = problems.count();
        TableHeads known = new TableHeads(source, heads + 1, rows.get(heads), columns, problems);
        if (problems.count() > before) return Optional.empty(); // the same would be wrong in every row
        known.remark(rows.get(heads), remarks);
        return Optional.of(list(source, rows, heads, known, new CellText(table.separator() == ';')));
    }

    private char separator(Source source) {
        char best = SEPARATORS[0];
        long most = -1;
        for (char separator : SEPARATORS) {
            List<List<CsvRows.Cell>> rows = new CsvRows(source, 0, separator).first(MOST_ABOVE_HEADS);
            long matches = rows.stream()
                    .mapToLong(row -> TableHeads.matches(row, columns))
                    .max()
                    .orElse(0);
            if (matches <= most) continue;
            best = separator;
            most = matches;
        }
        return best;
    }

    /** The first of the rows in which most columns are named; -1 when none is. */
    private int heads(List<List<CsvRows.Cell>> rows) {
        int best = -1;
        long most = 0;
        for (int i = 0; i < Math.min(MOST_ABOVE_HEADS, rows.size()); i++) {
            long matches = TableHeads.matches(rows.get(i), columns);
            if (matches <= most) continue;
            best = i;
            most = matches;
        }
        return best;
    }

    private String required() {
        return columns.stream()
                .filter(Column::required)
                .map(column -> column.names().get(0))
                .reduce((all, next) -> all + ", " + next)
                .orElse("");
    }

    private Value list(Source source, List<List<CsvRows.Cell>> rows, int heads, TableHeads known, CellText cells) {
        TablePlace whole = TablePlace.whole();
        List<TableRow> read = new ArrayList<>();
        for (int i = heads + 1; i < rows.size(); i++) {
            TableRow one = new TableRow(known, cells, i + 1, rows.get(i));
            if (one.blank()) continue;
            if (!one.continues()) read.add(one);
            else if (!read.isEmpty()) read.get(read.size() - 1).add(one);
            else
                problems.add(
                        source,
                        "row " + (i + 1),
                        rows.get(i).get(0).at(),
                        "goes on with an entry above, but there is none.");
        }
        List<JsonNode> items = new ArrayList<>();
        for (TableRow row : read) {
            whole.add(row.place());
            items.add(row.object(source, problems));
        }
        return new Value(source, problems, whole, new JsonNode.JsonArray(0, items));
    }
}
