package ripwright.sequence;

import static org.assertj.core.api.Assertions.assertThat;
import static ripwright.sequence.Shop.blank;
import static ripwright.sequence.Shop.cut;
import static ripwright.sequence.Shop.in;
import static ripwright.sequence.Shop.labor;
import static ripwright.sequence.Shop.maple;
import static ripwright.sequence.Shop.offcut;
import static ripwright.sequence.Shop.part;
import static ripwright.sequence.Shop.section;
import static ripwright.sequence.Shop.strip;

import java.math.RoundingMode;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import ripwright.job.Job;
import ripwright.measure.Length;
import ripwright.stock.Edge;

class BoardCostTest {
    /**
     * Cut up whole, with nothing to keep, at a price of 1 each costs its board feet. B7, B8 and B13: a woodworking tips
     * page; B9: a sawmill's board-foot page; B10: a hardwood dealer; B11: a technology course's sheet.
     */
    @ParameterizedTest
    @CsvSource({
        "B7, 1, 9, 96, 6",
        "B8, 1.5, 9, 96, 9",
        "B9, 3, 8, 120, 20",
        "B10, 1, 6, 96, 4",
        "B10 at 5/4, 1.25, 6, 96, 5",
        "B11, 1, 6, 24, 1",
        "B13 under an inch, 0.75, 9, 96, 6"
    })
    void a_board_costs_its_counted_board_feet(
            String example, String thickness, String width, String length, String boardFeet) {
        Job job = new Shop()
                .stack(maple("a", thickness, width, length))
                .wants(part("all", length, width))
                .job();

        assertThat(new BoardCost(job)
                        .of(cut(0, section("0", length, strip(width, blank(0, "0")))))
                        .rounded())
                .as(example)
                .isEqualByComparingTo(boardFeet);
    }

    @Test
    void it_is_price_and_work_less_what_leftovers_are_worth() {
        Job job = new Shop()
                .pays(labor("60", "100", "1", "0.25"))
                .stack(maple("a", "6", "48").edges(0, in("0.5"), Length.ZERO))
                .wants(part("rail", "24", "2.375"))
                .job();

        // 6 x 48 / 144 = 2; two rips and a straightening 3; one crosscut along the first strip 0.25; the second strip
        // is kept, and so is the rest of the first: (48 + 23.875) x 2.375 / 144 / 2; beside them 1/2 in is waste
        assertThat(new BoardCost(job)
                        .of(cut(0, section("0", "48", Edge.LEFT, "0.5", strip("2.375", blank(0, "0")), strip("2.375"))))
                        .value()
                        .bigDecimalValue(6, RoundingMode.HALF_UP))
                .isEqualTo("4.657281");
    }

    @Test
    void an_offcut_from_the_rack_costs_its_salvage_value() {
        Job job = new Shop()
                .stack(maple("a", "1", "1"))
                .rack(offcut("k", "2", "36"))
                .wants(part("all", "36", "2"))
                .job();

        assertThat(new BoardCost(job)
                        .of(cut(1, section("0", "36", strip("2", blank(0, "0")))))
                        .rounded())
                .isEqualTo("0.25");
    }
}
