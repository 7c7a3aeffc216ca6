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
import ripwright.internal.geometry.Layout;
import ripwright.measure.Length;
import ripwright.plan.Plan;
import ripwright.stock.Board;
import ripwright.stock.Defect;
import ripwright.stock.Edge;
import ripwright.testing.JobBuilder;

/** Boards that are not straight, not milled, or ripped already. */
public class BoardConditionTest {
    /**
     * A board 96 x 6 in, both edges rough, crook 3/8 in, broken down to two sections of 47 15/16 in: each loses
     * 3/8 x (47 15/16 / 96)^2 = 0.0935... in at the reference edge, and 1/16 in at the other.
     */
    @Test
    void a_crooked_board_broken_down_is_straightened_section_by_section() {
        JobBuilder shop = bench().stack(maple("m-1", "6", "96").edges(0, in("0.0625"), in("0.375")))
                .parts(
                        part("rail", "40", "2.8").count(4),
                        part("stile", "30", "2.5").count(2));
        Layout layout = cut(
                0,
                section(
                        "0",
                        "47.9375",
                        Edge.LEFT,
                        "0.09375",
                        strip("2.8", blank(0, "0")),
                        strip("2.8", blank(0, "7.9375"))),
                section("48.0625", "96", Edge.LEFT, "0.09375", strip("2.8", blank(0, "48.0625"))));
        Plan plan = planned(shop, layout);

        assertThat(lines(plan))
                .containsExactly(
                        "1 breakdown m-1 -> m-1/1, m-1/2",
                        "2 straighten m-1/1",
                        "3 straighten m-1/2",
                        "4 rip m-1/1 at F1 -> S1",
                        "5 check S1 at F1",
                        "6 rip m-1/1 at F1 -> S2",
                        "7 rip m-1/2 at F1 -> S3, m-1/A",
                        "8 blank S1 at stop 40 -> B1",
                        "9 blank S2 at stop 40 -> B2",
                        "10 blank S3 at stop 40 -> B3");
        // 6 - 3/32 - 2.8 - 1/8 in wide, its left edge sawn, its right edge rough, a quarter of the crook or so
        Board beside = plan.offcuts().get(0).piece();
        assertThat(beside.width()).isEqualTo(in("2.98125"));
        assertThat(beside.straightEdges()).isEqualTo(1);
        assertThat(beside.edgeLoss()).isEqualTo(in("0.0625"));
        assertThat(beside.crook().nanometers()).isEqualTo(2_375_053); // 9525000 x (47.9375 / 96)^2 = 2375052.87
        // settings 1 x 6, strips 3 x 1.5, straightened 2 x 1.5, crosscuts 1 shared + 3
        assertThat(plan.tally().minutes()).isEqualTo("17.50");
    }

    @Test
    void with_only_its_right_edge_straight_an_offcut_is_turned_end_for_end() {
        Board.Builder board = maple("m-1", "6", "40")
                .edges(0, in("0.25"), Length.ZERO)
                .defects(List.of(new Defect(in("3"), in("5"), in("0.5"), in("1"), "knot", Defect.Blocks.ALL)));
        JobBuilder shop = bench().stack(board).parts(part("rail", "40", "2"));
        Board piece = planned(shop, cut(0, section("0", "40", Edge.RIGHT, "0.25", strip("2", blank(0, "0")))))
                .offcuts()
                .get(0)
                .piece();

        assertThat(piece.straightEdges()).isEqualTo(1);
        assertThat(piece.width()).isEqualTo(in("3.625")); // 6 - 1/4 - 2 - 1/8
        assertThat(piece.defects()).singleElement().satisfies(knot -> {
            assertThat(knot.from()).isEqualTo(in("35"));
            assertThat(knot.to()).isEqualTo(in("37"));
            assertThat(knot.left()).isEqualTo(in("2.625"));
            assertThat(knot.right()).isEqualTo(in("3.125"));
        });
    }

    /** 8 in wide at the marked end, 6 at the other, 40 long; cut at 20, where it is 7 in wide. */
    @Test
    void a_tapered_offcut_has_both_widths() {
        JobBuilder shop =
                bench().stack(maple("m-1", "8", "40").width(in("8"), in("6"))).parts(part("rail", "20", "3"));
        Plan plan = planned(shop, cut(0, section("0", "20", strip("3", blank(0, "0")))));

        Board beyond = plan.offcuts().get(0).piece();
        assertThat(beyond.length()).isEqualTo(in("19.875"));
        assertThat(beyond.width()).isEqualTo(in("6.99375")); // 8 - 2 x 20.125 / 40
        assertThat(beyond.widthAtFarEnd()).isEqualTo(in("6"));
        Board beside = plan.offcuts().get(1).piece();
        assertThat(beside.width()).isEqualTo(in("4.875")); // 8 - 3 - 1/8
        assertThat(beside.widthAtFarEnd()).isEqualTo(in("3.875"));
        // (19.875 x 6.496875 + 20 x 4.375) / 144 / 2 = 0.7522...
        assertThat(plan.cost().salvage()).isEqualTo("0.75");
    }

    @Test
    void rough_stock_is_milled_section_by_section_and_keeps_its_thickness_beside() {
        JobBuilder shop = bench().stack(
                        maple("m-1", "6", "60").rough(in("1.25"), in("1")).edges(1, in("0.125"), Length.ZERO))
                .parts(part("rail", "20", "2").count(2));
        Plan plan = planned(
                shop,
                cut(
                        0,
                        section("0", "20", strip("2", blank(0, "0"))),
                        section("40", "60", Edge.RIGHT, "0.125", strip("2", blank(0, "40")))));

        assertThat(lines(plan))
                .startsWith(
                        "1 breakdown m-1 -> m-1/1, m-1/2, m-1/A", "2 mill m-1/1", "3 mill m-1/2", "4 straighten m-1/2");
        assertThat(plan.offcuts())
                .extracting(one -> one.from() + " " + one.piece().thickness() + ", "
                        + one.piece().millsTo())
                .containsExactly("m-1 1 1/4 in, 1 in", "m-1/1 1 in, 1 in", "m-1/2 1 in, 1 in");
        assertThat(plan.tally().consumed()).isEqualTo("3.1250"); // 60 x 6 x 1 1/4 / 144
    }

    @Test
    void stock_ripped_before_gives_its_strip_when_broken_down_and_needs_no_setting() {
        JobBuilder shop = bench().stack(maple("m-1", "2", "60").ripped(true).endTrim(in("1"), in("1")))
                .parts(part("rail", "20", "2").count(2));
        Plan plan = planned(shop, cut(0, section("1", "59", strip("2", blank(0, "1"), blank(0, "21.125")))));

        assertThat(lines(plan))
                .containsExactly("1 breakdown m-1 -> m-1/1, S1", "2 blank S1 at stop 20 -> B1, B2, m-1/A");
        assertThat(plan.settings()).isEmpty();
        assertThat(plan.tally().minutes()).isEqualTo("4.00"); // two trims, one shared cut, one cut
    }
}
