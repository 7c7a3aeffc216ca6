package ripwright.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import ripwright.testing.Seeds;

class LengthTest {
    @ParameterizedTest
    @CsvSource({
        "2 3/8, 60325000",
        "2-3/8, 60325000",
        "3/8, 9525000",
        "23.5, 596900000",
        "38 mm, 38000000",
        "38mm, 38000000",
        "1.5in, 38100000",
        "3/4 in, 19050000",
        "' 1  1/64 ', 25796875",
        ".5, 12700000",
        "0, 0",
        "1/3, 8466667",
        "0.0000000001, 0"
    })
    void reads_what_a_shop_writes(String text, long nanometers) {
        assertThat(Length.parse(text, Unit.INCH)).isEqualTo(new Length(nanometers));
    }

    @ParameterizedTest
    @CsvSource({
        "1 9/0, '\"1 9/0\" divides by zero; the number under the line must be at least 1.'",
        "2 9/8, '\"2 9/8\" has a whole number and a fraction of 1 or more; carry it over.'",
        "-3, 'A length cannot be negative: \"-3\".'",
        "3939 1/2, 'A length cannot be over 100 m: 100063300000 nm.'",
        "999999999999999999, 'A length cannot be over 100 m: 999999999999999999.'",
        "two, '\"two\" is not a length. Write it like \"2 3/8\", \"2-3/8\", \"23.5\", \"38 mm\" or \"3/4 in\".'"
    })
    void says_why_a_text_is_no_length(String text, String message) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Length.parse(text, Unit.INCH))
                .withMessage(message);
    }

    @Test
    void one_length_written_in_two_ways_is_one_length() {
        assertThat(Length.inches("3/8")).isEqualTo(Length.inches("0.375")).isEqualTo(Length.millimeters("9.525"));
    }

    @Test
    @Tag("locale")
    void reads_back_what_it_writes() {
        Seeds.each(500, (random, size) -> {
            Length length = new Length(random.nextLong(100_000_000_000L)
                    / (random.nextBoolean() ? 1 : 396_875)
                    * 396_875
                    % 100_000_000_000L);
            assertThat(Length.parse(length.toString(), Unit.MILLIMETER)).isEqualTo(length);
            Length any = new Length(random.nextLong(100_000_000_000L));
            assertThat(Length.parse(any.toString(), Unit.INCH)).isEqualTo(any);
        });
    }

    @Test
    void writes_fractions_where_they_are_exact_and_millimeters_else() {
        assertThat(Length.inches("2 3/8")).hasToString("2 3/8 in");
        assertThat(Length.inches("48")).hasToString("48 in");
        assertThat(Length.millimeters("38")).hasToString("38 mm");
        assertThat(Length.ZERO).hasToString("0 in");
    }

    @ParameterizedTest
    @ValueSource(longs = {-1, 100_000_000_001L})
    void refuses_what_is_negative_or_over_100_meters(long nanometers) {
        assertThatIllegalArgumentException().isThrownBy(() -> new Length(nanometers));
    }

    @Test
    void nothing_longer_comes_out_of_a_length() {
        assertThat(Length.inches("5").minus(Length.inches("2 1/2"))).isEqualTo(Length.inches("2 1/2"));
        assertThatThrownBy(() -> Length.inches("1").minus(Length.inches("1 1/64")))
                .isInstanceOf(ArithmeticException.class)
                .hasMessage("1 1/64 in does not come out of 1 in.");
    }

    @Test
    void a_product_that_overflows_is_refused() {
        assertThatThrownBy(() -> Length.LONGEST.times(Integer.MAX_VALUE)).isInstanceOf(ArithmeticException.class);
        assertThatIllegalArgumentException().isThrownBy(() -> Length.LONGEST.times(2));
    }

    @ParameterizedTest
    @CsvSource({"2 3/8, 2 3/8", "2.38, 2 3/8", "0.007, 0", "0.0079, 1/64", "11.999, 12", "0.5, 1/2"})
    void the_tape_reads_the_nearest_64th(String length, String tape) {
        assertThat(Unit.INCH.nearest(Length.inches(length))).isEqualTo(tape);
    }

    @Test
    void the_tape_reads_the_nearest_tenth_of_a_millimeter() {
        assertThat(Unit.MILLIMETER.nearest(Length.millimeters("45.65"))).isEqualTo("45.7");
        assertThat(Unit.MILLIMETER.nearest(Length.millimeters("100"))).isEqualTo("100");
    }

    @Test
    @Tag("locale")
    void a_plans_file_has_six_decimals_at_most() {
        assertThat(Unit.INCH.number(new Length(1))).isEqualTo(new BigDecimal("0"));
        assertThat(Unit.INCH.number(Length.inches("1/3"))).isEqualTo(new BigDecimal("0.333333"));
        assertThat(Unit.INCH.number(Length.inches("100"))).isEqualTo(new BigDecimal("100"));
    }
}
