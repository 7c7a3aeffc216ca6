package ripwright.runner.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import ripwright.json.JobText;
import ripwright.json.Plans;
import ripwright.json.tree.WrongInputException;
import ripwright.measure.Length;
import ripwright.plan.Blank;
import ripwright.plan.CutBoard;
import ripwright.plan.Plan;
import ripwright.plan.Section;
import ripwright.plan.Strip;
import ripwright.stock.Edge;

/** The board is 72 in long, the kerf 1/8 in. */
class CutCountTest {
    private static Length in(String inches) {
        return Length.inches(inches);
    }

    private static Section section(String from, String to, Blank... blanks) {
        Strip strip = new Strip("t", in("0"), in("2"), Optional.of("r1"), List.of(blanks));
        return new Section("s", in(from), in(to), Edge.LEFT, in("0"), List.of(strip));
    }

    private static Blank blank(String from, String length) {
        return new Blank("b", "door", in(from), in(length));
    }

    private static CutCount count(Section... sections) throws WrongInputException, IOException {
        Plan plan = Plans.cabinet();
        Plan cut = new Plan(
                plan.job(),
                plan.units(),
                plan.status(),
                plan.cost(),
                plan.tally(),
                List.of(new CutBoard("ash-1", List.of(sections))),
                plan.settings(),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                List.of());
        return new CutCount(JobText.cabinet().job(), cut);
    }

    @Test
    void the_cuts_of_the_plan_reckoned_by_hand() throws WrongInputException, IOException {
        CutCount count = new CutCount(JobText.cabinet().job(), Plans.cabinet());
        assertThat(count.rips()).isEqualTo(2); // the strip and the test
        assertThat(count.crosscuts()).isEqualTo(4); // two ends, one between the blanks, the test blank
    }

    @Test
    void raw_ends_are_not_cut() throws WrongInputException, IOException {
        assertThat(count(section("0", "72")).crosscuts()).isZero();
        assertThat(count(section("1", "72")).crosscuts()).isEqualTo(1);
        assertThat(count(section("1", "71")).crosscuts()).isEqualTo(2);
    }

    @Test
    void what_no_reader_of_a_plan_tells_apart_is_not_cut() throws WrongInputException, IOException {
        assertThat(count(section("0.0005", "71.9995")).crosscuts()).isZero();
        assertThat(count(section("0.0006", "71.9994")).crosscuts()).isEqualTo(2);
        assertThat(count(section("0", "72", blank("0.0003", "71.9995"))).crosscuts())
                .isZero();
    }

    @Test
    void sections_a_kerf_apart_share_a_cut() throws WrongInputException, IOException {
        assertThat(count(section("0", "30"), section("30 1/8", "72")).crosscuts())
                .isEqualTo(1);
        assertThat(count(section("0", "30"), section("30 1/4", "72")).crosscuts())
                .isEqualTo(2);
    }

    @Test
    void blanks_share_cuts_with_their_neighbors_and_ends_with_their_strip() throws WrongInputException, IOException {
        assertThat(count(section("0", "72", blank("0", "72"))).crosscuts()).isZero();
        assertThat(count(section("0", "72", blank("0", "24"), blank("24 1/8", "24")))
                        .crosscuts())
                .isEqualTo(2);
        assertThat(count(section("0", "72", blank("0", "24"), blank("25", "24")))
                        .crosscuts())
                .isEqualTo(3);
    }
}
