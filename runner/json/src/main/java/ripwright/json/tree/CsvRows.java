package ripwright.json.tree;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.dataformat.csv.CsvFactory;
import com.fasterxml.jackson.dataformat.csv.CsvParser;
import com.fasterxml.jackson.dataformat.csv.CsvSchema;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;

/** The rows of a text with that character between its cells, as RFC 4180 has them, blank ones too. */
final class CsvRows {
    /**
     * A cell.
     *
     * @param at the offset of its first character in the text
     * @param text what it holds, without outer blanks
     */
    record Cell(int at, String text) {}

    private final Source source;
    private final int from;
    private final char separator;

    /** Those after the first {@code from} characters. */
    CsvRows(Source source, int from, char separator) {
        this.source = source;
        this.from = from;
        this.separator = separator;
    }

    char separator() {
        return separator;
    }

    /** The first rows, as far as they can be read. */
    List<List<Cell>> first(int most) {
        return read(most, new Problems());
    }

    /** All of them; what cannot be read is noted, and nothing after it is read. */
    List<List<Cell>> all(Problems problems) {
        return read(Integer.MAX_VALUE, problems);
    }

    private List<List<Cell>> read(int most, Problems problems) {
        List<List<Cell>> rows = new ArrayList<>();
        try (CsvParser parser = parser()) {
            try {
                parser.nextToken(); // the list of all rows
                while (rows.size() < most && parser.nextToken() == JsonToken.START_ARRAY) rows.add(cells(parser));
            } catch (JsonProcessingException e) {
                int end = (int) Math.max(0, parser.currentTokenLocation().getCharOffset());
                int at = Math.min(source.text().length(), from + end);
                problems.add(source, TablePlace.row(rows.size() + 1).toString(), at, mistake(e));
            }
        } catch (IOException e) {
            throw new UncheckedIOException("Reading from memory failed.", e);
        }
        return rows;
    }

    private static String mistake(JsonProcessingException e) {
        return e.getOriginalMessage().contains("closing quote")
                ? "a double quote opens a cell after here and none closes it; close it, or take it out."
                : "a cell in double quotes goes on behind its closing quote after here; write a double quote within it twice.";
    }

    private List<Cell> cells(CsvParser parser) throws IOException {
        List<Cell> cells = new ArrayList<>();
        while (parser.nextToken() != JsonToken.END_ARRAY) {
            int at = from + (int) parser.currentTokenLocation().getCharOffset();
            cells.add(new Cell(
                    Math.min(at, source.text().length()), parser.getText().strip()));
        }
        return cells;
    }

    private CsvParser parser() throws IOException {
        CsvFactory factory = CsvFactory.builder()
                .enable(CsvParser.Feature.WRAP_AS_ARRAY)
                .streamReadConstraints(StreamReadConstraints.builder()
                        .maxStringLength(Integer.MAX_VALUE)
                        .build())
                .build();
        CsvParser parser = factory.createParser(source.text().substring(from));
        parser.setSchema(CsvSchema.emptySchema().withColumnSeparator(separator));
        return parser;
    }
}
