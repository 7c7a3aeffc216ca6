package ripwright.json.tree;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The row of a spreadsheet that names its columns: which of them is which. */
final class TableHeads {
    private static final Set<String> REMARKS = Set.of("note", "remark", "comment");
    private static final Pattern IN_BRACKETS = Pattern.compile("[(\\[{]\\s*(.*?)\\s*[)\\]}]|,\\s*(.*)$");
    private static final Map<String, String> UNITS = Map.ofEntries(
            Map.entry("in", "in"),
            Map.entry("in.", "in"),
            Map.entry("inch", "in"),
            Map.entry("inches", "in"),
            Map.entry("\"", "in"),
            Map.entry("mm", "mm"),
            Map.entry("millimeter", "mm"),
            Map.entry("millimeters", "mm"),
            Map.entry("millimetres", "mm"));
    private static final Set<String> OTHER_UNITS =
            Set.of("cm", "m", "ft", "ft.", "feet", "foot", "'", "centimeters", "meters", "yd");
    private static final int SHORTEST_MISTYPED = 4; // letters: a shorter head may well be another word

    private final Source source;
    private final int row;
    private final List<Column> columns;
    private final Map<Column, Integer> places = new LinkedHashMap<>(); // in the order of the columns asked for
    private final Map<Column, String> heads = new LinkedHashMap<>();
    private final Map<Column, String> units = new LinkedHashMap<>();
    private final List<Integer> unused = new ArrayList<>();

    /** Of {@code cells}, which stand in that row, from 1. */
    TableHeads(Source source, int row, List<CsvRows.Cell> cells, List<Column> columns, Problems problems) {
        this.source = source;
        this.row = row;
        this.columns = List.copyOf(columns);
        for (int i = 0; i < cells.size(); i++) {
            CsvRows.Cell cell = cells.get(i);
            Optional<Column> known = known(cell.text(), columns);
            if (known.isPresent()) use(known.get(), i, cell, problems);
            else if (!cell.text().isBlank()) unused.add(i);
        }
        for (int i : List.copyOf(unused)) suspect(i, cells.get(i), problems);
        for (Column column : columns)
            if (column.required() && !places.containsKey(column) && !isMistyped(column, cells))
                problems.add(
                        source,
                        "row " + row,
                        cells.get(0).at(),
                        "There is no column \"" + column.names().get(0)
                                + "\". Write that name above the column that it is, " + "or add one.");
    }

    /** How many of those cells name a column: the more, the likelier this is the row that does. */
    static long matches(List<CsvRows.Cell> cells, List<Column> columns) {
        return cells.stream()
                .filter(cell -> known(cell.text(), columns).isPresent())
                .count();
    }

    private static Optional<Column> known(String head, List<Column> columns) {
        return columns.stream().filter(column -> column.isCalled(head)).findFirst();
    }

    private void use(Column column, int place, CsvRows.Cell cell, Problems problems) {
        Integer first = places.putIfAbsent(column, place);
        if (first != null) {
            problems.add(
                    source,
                    TablePlace.cell(row, place, cell.text()).toString(),
                    cell.at(),
                    "stands for " + column.names().get(0) + ", as column " + TablePlace.letters(first)
                            + " does. Keep one, or call the other something else.");
            return;
        }
        heads.put(column, cell.text());
        units.put(column, column.holds() == Column.Holds.LENGTH ? unit(place, cell, problems) : "");
    }

    /** The unit that stands beside a name, as in "Width (mm)"; empty when none does. */
    private String unit(int place, CsvRows.Cell cell, Problems problems) {
        Matcher brackets = IN_BRACKETS.matcher(cell.text());
        if (!brackets.find()) return "";
        String inside = brackets.group(1) == null ? brackets.group(2) : brackets.group(1);
        String unit = inside.strip().toLowerCase(Locale.ROOT);
        if (OTHER_UNITS.contains(unit))
            problems.add(
                    source,
                    TablePlace.cell(row, place, cell.text()).toString(),
                    cell.at(),
                    "lengths in " + unit + " are not read; write them in in or mm.");
        return UNITS.getOrDefault(unit, "");
    }

    /** Notes a head that is likely meant to be that of a column which is not there. */
    private void suspect(int place, CsvRows.Cell cell, Problems problems) {
        mistyped(cell.text()).ifPresent(column -> {
            unused.remove((Integer) place);
            problems.add(
                    source,
                    TablePlace.cell(row, place, cell.text()).toString(),
                    cell.at(),
                    "no such column. Did you mean \"" + column.names().get(0) + "\"?");
        });
    }

    private Optional<Column> mistyped(String head) {
        String plain = Column.plain(head);
        if (plain.length() < SHORTEST_MISTYPED) return Optional.empty();
        return columns.stream()
                .filter(column -> !places.containsKey(column))
                .filter(column -> new Nearest(plain, plainNames(column)).near())
                .findFirst();
    }

    private static List<String> plainNames(Column column) {
        return column.names().stream().map(Column::plain).toList();
    }

    private boolean isMistyped(Column column, List<CsvRows.Cell> cells) {
        return cells.stream()
                .anyMatch(cell -> known(cell.text(), columns).isEmpty()
                        && mistyped(cell.text()).filter(column::equals).isPresent());
    }

    /** The columns that may be there. */
    List<Column> all() {
        return columns;
    }

    /** The columns that are there. */
    List<Column> present() {
        return List.copyOf(places.keySet());
    }

    /** The cell of that column in {@code cells}; empty when it is blank. */
    Optional<CsvRows.Cell> cell(Column column, List<CsvRows.Cell> cells) {
        return place(column, cells).filter(cell -> !cell.text().isBlank());
    }

    /** The same, blank or not; empty when the row ends before it. */
    Optional<CsvRows.Cell> place(Column column, List<CsvRows.Cell> cells) {
        int place = places.getOrDefault(column, Integer.MAX_VALUE);
        return place < cells.size() ? Optional.of(cells.get(place)) : Optional.empty();
    }

    /** Where the cell of that column in that row stands, as its users call it. */
    TablePlace place(Column column, int row) {
        return TablePlace.cell(row, places.getOrDefault(column, 0), heads.getOrDefault(column, ""));
    }

    /** What its head says its lengths are in; empty when it says nothing. */
    String unit(Column column) {
        return units.getOrDefault(column, "");
    }

    /** Says which columns are not used, unless they are remarks. */
    void remark(List<CsvRows.Cell> cells, Consumer<String> remarks) {
        List<String> names = new ArrayList<>();
        for (int i : unused) {
            String head = cells.get(i).text();
            if (!REMARKS.contains(Column.plain(head))) names.add(TablePlace.letters(i) + " (" + head + ")");
        }
        if (names.isEmpty()) return;
        String what = names.size() == 1 ? ": column " : ": columns ";
        remarks.accept(Source.clean(
                source.name() + what + String.join(", ", names) + (names.size() == 1 ? " is" : " are") + " not used."));
    }
}
