package ripwright.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.math.BigDecimal;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Worked examples of published tallies; B numbers are those of the trade facts. */
class BoardFeetTest {
    /**
     * B7, B8: woodworkingtips.com, E-tips 4. B9: westcoastlands.net, board feet. B10: Powers Hardwoods, lumber info (5/4
     * computed). B11: TED 126 course sheet. B12: veryfocus.online, which truncates to 32.88.
     */
    @ParameterizedTest
    @CsvSource({
        "B7, 1, 9, 96, 6",
        "B8, 1 1/2, 9, 96, 9",
        "B9, 3, 8, 120, 20",
        "B10, 1, 6, 96, 4",
        "B10, 1 1/4, 6, 96, 5",
        "B11, 1, 6, 24, 1",
        "B12, 4, 8, 148, 32.8889"
    })
    void true_volume(String example, String thickness, String width, String length, BigDecimal feet) {
        BoardFeet exact = BoardFeet.of(Length.inches(length), Length.inches(width), Length.inches(thickness));
        assertThat(exact.rounded()).as(example).isEqualByComparingTo(feet);
    }

    /** B13: woodworkingtips.com, E-tips 4: 3/4 in counts as 1 in; the true volume is computed. */
    @Test
    void stock_under_an_inch_counts_as_an_inch_in_pricing() {
        Area face = Area.of(Length.inches("96"), Length.inches("9"));
        assertThat(BoardFeet.counted(face, Length.inches("3/4")).rounded()).isEqualByComparingTo("6");
        assertThat(BoardFeet.of(face, Length.inches("3/4")).rounded()).isEqualByComparingTo("4.5");
        assertThat(BoardFeet.counted(face, Length.inches("1 1/2")).rounded()).isEqualByComparingTo("9");
    }

    @Test
    void a_tapered_face_counts_at_its_mean_width() {
        assertThat(Area.trapezoid(Length.inches("10"), Length.inches("3"), Length.inches("4")))
                .isEqualTo(Area.of(Length.inches("10"), Length.inches("3 1/2")));
    }

    @Test
    void areas_and_money_keep_fractions_until_printed() {
        Money third = BoardFeet.of(Length.inches("144"), Length.inches("1"), Length.inches("1/3"))
                .at(new BigDecimal("1"));
        assertThat(third.plus(third).plus(third).rounded()).isEqualTo(new BigDecimal("1.00"));
        assertThat(Money.of(new BigDecimal("0.005")).rounded()).isEqualTo(new BigDecimal("0.01"));
        assertThat(Money.of(new BigDecimal("0.019")).roundedDown()).isEqualTo(new BigDecimal("0.01"));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Area.ZERO.minus(Area.of(Length.inches("1"), Length.inches("1"))));
    }
}
