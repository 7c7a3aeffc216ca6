package ripwright.json.csv;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

class CsvOutTest {
    private static String table(CsvOut.Style style, Object... cells) {
        byte[] bytes = CsvOut.bytes(style, List.of("part", "width (in)"), out -> out.row(cells));
        return new String(bytes, StandardCharsets.UTF_8);
    }

    @Test
    @Tag("locale")
    void a_table_begins_with_a_mark_and_its_lines_end_as_the_standard_has_it() {
        assertThat(table(CsvOut.Style.COMMAS, "rail", new BigDecimal("2.25")))
                .isEqualTo("\uFEFFpart,width (in)\r\nrail,2.25\r\n");
    }

    @Test
    void cells_are_quoted_where_they_must_be() {
        assertThat(table(CsvOut.Style.COMMAS, "maple, \"hard\"", "two\nlines", "plain"))
                .endsWith("\r\n\"maple, \"\"hard\"\"\",\"two\nlines\",plain\r\n");
    }

    @Test
    @Tag("locale")
    void semicolons_go_with_decimal_commas() {
        assertThat(table(CsvOut.Style.SEMICOLONS, "a;b", new BigDecimal("1250.5"), 3))
                .isEqualTo("\uFEFFpart;width (in)\r\n\"a;b\";1250,5;3\r\n");
    }

    @Test
    void flags_and_absent_values_have_words_of_their_own() {
        assertThat(table(CsvOut.Style.COMMAS, true, false, Optional.empty(), Optional.of(new BigDecimal("1.0"))))
                .endsWith("\r\nyes,no,,1.0\r\n");
    }

    @Test
    void a_name_is_not_taken_for_a_formula_and_a_number_keeps_its_sign() {
        assertThat(table(CsvOut.Style.COMMAS, "=1+1", "@a", "+b", "-c", new BigDecimal("-4.20")))
                .endsWith("\r\n'=1+1,'@a,'+b,'-c,-4.20\r\n");
    }
}
