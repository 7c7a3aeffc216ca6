package ripwright.json.tree;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** A row or cell of a spreadsheet, as its users call it; fields that have no column are called by their name. */
final class TablePlace implements Place {
    static final String WHOLE = "table";

    private final String text;
    private final Map<String, TablePlace> fields = new HashMap<>();
    private final List<TablePlace> items = new ArrayList<>();

    private TablePlace(String text) {
        this.text = text;
    }

    static TablePlace whole() {
        return new TablePlace(WHOLE);
    }

    /** As in {@code row 5}. */
    static TablePlace row(int row) {
        return new TablePlace("row " + row);
    }

    /** As in {@code row 5, column D (Width)}. */
    static TablePlace cell(int row, int column, String head) {
        String name = head.isBlank() ? "" : " (" + head.strip() + ")";
        return new TablePlace("row " + row + ", column " + letters(column) + name);
    }

    /** What spreadsheets call the column with that number, from 0: A to Z, AA and so on. */
    static String letters(int column) {
        String last = String.valueOf((char) ('A' + column % 26));
        return column < 26 ? last : letters(column / 26 - 1) + last;
    }

    void put(String field, TablePlace place) {
        fields.put(field, place);
    }

    void add(TablePlace item) {
        items.add(item);
    }

    @Override
    public TablePlace field(String name) {
        TablePlace known = fields.get(name);
        return known == null ? new TablePlace(text + ", " + name) : known;
    }

    @Override
    public TablePlace item(int index) {
        return index < items.size() ? items.get(index) : this;
    }

    @Override
    public String toString() {
        return text;
    }
}
