package ripwright.json.csv;

import com.fasterxml.jackson.dataformat.csv.CsvFactory;
import com.fasterxml.jackson.dataformat.csv.CsvGenerator;
import com.fasterxml.jackson.dataformat.csv.CsvSchema;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

/**
 * Writes one table for spreadsheets, always the same bytes for the same values: UTF-8 with a byte-order mark, by which they
 * know it, and lines that end as RFC 4180 has them. For the thread that called {@link #bytes}, until that returns.
 */
public final class CsvOut {
    /** How a table is written down. */
    public enum Style {
        /** Commas between cells, decimal points. */
        COMMAS(',', '.'),
        /** Semicolons between cells, decimal commas. */
        SEMICOLONS(';', ',');

        private final char separator;
        private final char decimal;

        Style(char separator, char decimal) {
            this.separator = separator;
            this.decimal = decimal;
        }
    }

    private static final String FORMULA_STARTS = "=+-@\t\r"; // what makes a spreadsheet reckon instead of show

    private final CsvGenerator csv;
    private final Style style;

    private CsvOut(CsvGenerator csv, Style style) {
        this.csv = csv;
        this.style = style;
    }

    /** The table with those column heads and rows. */
    public static byte[] bytes(Style style, List<String> heads, Consumer<CsvOut> rows) {
        StringWriter text = new StringWriter();
        text.write('\uFEFF');
        CsvFactory factory = CsvFactory.builder()
                .enable(CsvGenerator.Feature.STRICT_CHECK_FOR_QUOTING)
                .build();
        try (CsvGenerator csv = factory.createGenerator(text)) {
            csv.setSchema(
                    CsvSchema.emptySchema().withColumnSeparator(style.separator).withLineSeparator("\r\n"));
            CsvOut out = new CsvOut(csv, style);
            out.row(heads.toArray());
            rows.accept(out);
        } catch (IOException e) {
            throw new UncheckedIOException("Writing to memory failed.", e);
        }
        return text.toString().getBytes(StandardCharsets.UTF_8);
    }

    /** A row of texts, numbers, flags, and optional values of these; an absent one is a blank cell. */
    public void row(Object... cells) {
        try {
            csv.writeStartArray();
            for (Object cell : cells) csv.writeString(text(cell));
            csv.writeEndArray();
        } catch (IOException e) {
            throw new UncheckedIOException("Writing to memory failed.", e);
        }
    }

    private String text(Object cell) {
        if (cell instanceof Optional<?> optional)
            return optional.map(value -> text((Object) value)).orElse("");
        if (cell instanceof BigDecimal number) return number.toPlainString().replace('.', style.decimal);
        if (cell instanceof Boolean flag) return flag ? "yes" : "no";
        if (cell instanceof Integer number) return number.toString();
        return harmless(cell.toString());
    }

    /** A name is shown as it is, not taken for a formula: with an apostrophe before it, which {@code tree} takes off. */
    private static String harmless(String text) {
        boolean formula = !text.isEmpty() && FORMULA_STARTS.indexOf(text.charAt(0)) >= 0;
        return formula ? "'" + text : text;
    }
}
