package ripwright.json.tree;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** One row, and those below that go on with it. */
final class TableRow {
    private final TableHeads heads;
    private final CellText cells;
    private final int number;
    private final List<CsvRows.Cell> row;
    private final List<TableRow> more = new ArrayList<>();
    private final TablePlace place;

    TableRow(TableHeads heads, CellText cells, int number, List<CsvRows.Cell> row) {
        this.heads = heads;
        this.cells = cells;
        this.number = number;
        this.row = row;
        this.place = TablePlace.row(number);
    }

    /** Whether it says nothing, but perhaps in columns that are not used. */
    boolean blank() {
        return heads.present().stream()
                .allMatch(column -> heads.cell(column, row).isEmpty());
    }

    /** Whether it only has cells of objects in a list. */
    boolean continues() {
        return heads.present().stream()
                .allMatch(column -> column.listed() || heads.cell(column, row).isEmpty());
    }

    /** Adds a row that goes on with this one. */
    void add(TableRow next) {
        more.add(next);
    }

    /** Where it stands. */
    TablePlace place() {
        return place;
    }

    private int at() {
        return row.get(0).at();
    }

    /** What it says. */
    JsonNode object(Source source, Problems problems) {
        Map<String, JsonNode.Member> members = new LinkedHashMap<>();
        Map<String, Integer> blanks = new HashMap<>();
        Map<String, List<Column>> within = new LinkedHashMap<>();
        for (Column column : heads.present()) {
            if (column.inner().isEmpty()) member(column, column.field(), members, blanks, place);
            else
                within.computeIfAbsent(column.outer(), outer -> new ArrayList<>())
                        .add(column);
        }
        within.forEach((outer, columns) -> {
            boolean here =
                    columns.stream().anyMatch(column -> heads.cell(column, row).isPresent());
            if (columns.get(0).listed()) list(outer, columns, members);
            else if (here && members.containsKey(outer))
                problems.add(
                        source,
                        place.field(outer).toString(),
                        members.get(outer).at(),
                        "said twice: here, and in the columns for each part of it. Leave one of the two blank.");
            else if (here) members.put(outer, inner(columns, placed(outer)));
        });
        for (Column column : heads.all())
            if (!column.otherwise().isEmpty()) members.putIfAbsent(column.field(), otherwise(column));
        return new JsonNode.JsonObject(at(), members, blanks);
    }

    private JsonNode.Member otherwise(Column column) {
        return new JsonNode.Member(at(), new JsonNode.JsonScalar(at(), JsonNode.Type.TEXT, column.otherwise()));
    }

    private TablePlace placed(String outer) {
        TablePlace inside = TablePlace.row(number);
        place.put(outer, inside);
        return inside;
    }

    /** The list of objects that this row and those below have in those columns. */
    private void list(String outer, List<Column> columns, Map<String, JsonNode.Member> members) {
        List<JsonNode> items = new ArrayList<>();
        TablePlace inside = placed(outer);
        List<TableRow> all = new ArrayList<>(more);
        all.add(0, this);
        for (TableRow one : all) {
            if (columns.stream().allMatch(column -> heads.cell(column, one.row).isEmpty())) continue;
            TablePlace item = TablePlace.row(one.number);
            inside.add(item);
            items.add(one.inner(columns, item).value());
        }
        if (!items.isEmpty())
            members.put(outer, new JsonNode.Member(items.get(0).at(), new JsonNode.JsonArray(at(), items)));
    }

    private JsonNode.Member inner(List<Column> columns, TablePlace inside) {
        Map<String, JsonNode.Member> members = new LinkedHashMap<>();
        Map<String, Integer> blanks = new HashMap<>();
        for (Column column : columns) member(column, column.inner(), members, blanks, inside);
        int first = members.values().stream()
                .mapToInt(JsonNode.Member::at)
                .findFirst()
                .orElse(at());
        return new JsonNode.Member(first, new JsonNode.JsonObject(first, members, blanks));
    }

    private void member(
            Column column,
            String name,
            Map<String, JsonNode.Member> members,
            Map<String, Integer> blanks,
            TablePlace inside) {
        inside.put(name, heads.place(column, number));
        heads.place(column, row).ifPresent(cell -> blanks.put(name, cell.at()));
        heads.cell(column, row).ifPresent(cell -> {
            JsonNode node = cells.node(column, heads.unit(column), cell);
            members.put(name, new JsonNode.Member(cell.at(), node));
        });
    }
}
