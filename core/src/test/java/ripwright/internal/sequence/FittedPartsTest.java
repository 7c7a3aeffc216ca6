package ripwright.internal.sequence;

import static org.assertj.core.api.Assertions.assertThat;
import static ripwright.internal.sequence.Shop.bench;
import static ripwright.internal.sequence.Shop.blank;
import static ripwright.internal.sequence.Shop.cut;
import static ripwright.internal.sequence.Shop.in;
import static ripwright.internal.sequence.Shop.lines;
import static ripwright.internal.sequence.Shop.maple;
import static ripwright.internal.sequence.Shop.part;
import static ripwright.internal.sequence.Shop.planned;
import static ripwright.internal.sequence.Shop.section;
import static ripwright.internal.sequence.Shop.strip;

import java.util.List;
import org.junit.jupiter.api.Test;
import ripwright.bill.Part;
import ripwright.plan.Plan;
import ripwright.stock.Defect;
import ripwright.testing.JobBuilder;

public class FittedPartsTest {
    @Test
    void fitted_parts_come_last_in_the_order_of_the_bill_with_what_their_strip_could_spare() {
        JobBuilder shop = bench().stack(maple("m-1", "4.125", "60"))
                .parts(
                        part("drawer front", "20", "2").fitted(true),
                        part("rail", "18", "2"),
                        part("rail, short", "14", "2"),
                        part("door", "15", "2").fitted(true));
        Plan plan = planned(
                shop,
                cut(
                        0,
                        section(
                                "0",
                                "60",
                                strip("2", blank(3, "0"), blank(1, "16"), blank(2, "35")),
                                strip("2", blank(0, "2")))));

        assertThat(lines(plan))
                .containsExactly(
                        "1 breakdown m-1 -> m-1/1",
                        "2 rip m-1/1 at F1 -> S1",
                        "3 check S1 at F1",
                        "4 rip m-1/1 at F1 -> S2",
                        "5 blank S1 at stop 18 -> B2",
                        "6 blank S1 at stop 14 -> B3",
                        "7 blank S2 -> B4, m-1/A, spare 40", // 2 before it and 38 behind
                        "8 blank S1 -> B1, spare 7/8"); // to 16 less a kerf
    }

    @Test
    void a_fitted_part_can_be_no_longer_than_up_to_the_next_bad_wood() {
        List<Defect> knots = List.of(
                knot("2", "3", "1", "3", Defect.Blocks.ALL), // 2 in before it
                knot("30", "31", "0", "2", Defect.Blocks.SHOW), // 5 in behind it
                knot("26", "27", "2", "3", Defect.Blocks.ALL)); // beside the strip
        JobBuilder shop = bench().stack(maple("m-1", "4", "60").defects(knots))
                .parts(part("door", "20", "2").face(Part.Face.SHOW).fitted(true));
        Plan plan = planned(shop, cut(0, section("0", "60", strip("2", blank(0, "5")))));

        assertThat(lines(plan)).endsWith("3 blank S1 -> B1, m-1/A, spare 7");
    }

    @Test
    void sound_bad_wood_is_nothing_to_a_hidden_fitted_part() {
        JobBuilder shop = bench().stack(
                        maple("m-1", "4", "60").defects(List.of(knot("30", "31", "0", "2", Defect.Blocks.SHOW))))
                .parts(part("cleat", "20", "2").fitted(true));
        Plan plan = planned(shop, cut(0, section("0", "60", strip("2", blank(0, "5")))));

        assertThat(lines(plan)).endsWith("3 blank S1 -> B1, m-1/A, spare 40");
    }

    private static Defect knot(String from, String to, String left, String right, Defect.Blocks blocks) {
        return new Defect(in(from), in(to), in(left), in(right), "knot", blocks);
    }
}
