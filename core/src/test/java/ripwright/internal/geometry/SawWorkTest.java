package ripwright.internal.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static ripwright.internal.sequence.Shop.bench;
import static ripwright.internal.sequence.Shop.blank;
import static ripwright.internal.sequence.Shop.cut;
import static ripwright.internal.sequence.Shop.maple;
import static ripwright.internal.sequence.Shop.part;
import static ripwright.internal.sequence.Shop.section;
import static ripwright.internal.sequence.Shop.strip;

import org.junit.jupiter.api.Test;
import ripwright.measure.Length;
import ripwright.stock.Board;
import ripwright.stock.Edge;

public class SawWorkTest {
    private static final Board.Builder SAWN = maple("a", "6", "60");

    @Test
    void a_section_from_raw_end_to_raw_end_takes_no_crosscut() {
        assertThat(work(SAWN, section("0", "60", strip("2"))).crosscuts()).isZero();
    }

    @Test
    void trimming_an_end_takes_one() {
        assertThat(work(SAWN, section("1", "60", strip("2"))).crosscuts()).isEqualTo(1);
        assertThat(work(SAWN, section("1", "59", strip("2"))).crosscuts()).isEqualTo(2);
    }

    @Test
    void sections_one_kerf_apart_share_a_cut() {
        assertThat(work(SAWN, section("0", "30", strip("2")), section("30.125", "60", strip("2")))
                        .crosscuts())
                .isEqualTo(1);
    }

    @Test
    void sections_further_apart_take_two() {
        assertThat(work(SAWN, section("0", "30", strip("2")), section("30.1875", "60", strip("2")))
                        .crosscuts())
                .isEqualTo(2);
    }

    @Test
    void blanks_one_kerf_apart_share_a_cut_and_a_strips_ends_are_cut_already() {
        assertThat(work(SAWN, section("0", "60", strip("2", blank(0, "0"), blank(0, "20.125"))))
                        .crosscuts())
                .isEqualTo(2);
        assertThat(work(SAWN, section("0", "60", strip("2", blank(0, "0"), blank(0, "40"))))
                        .crosscuts())
                .isEqualTo(2);
    }

    @Test
    void strips_are_rips_and_of_ripped_stock_none() {
        assertThat(work(SAWN, section("0", "60", strip("2"), strip("2"))).strips())
                .isEqualTo(2);
        assertThat(work(maple("a", "2", "60").ripped(true), section("0", "60", strip("2")))
                        .strips())
                .isZero();
    }

    @Test
    void a_section_is_straightened_when_its_edge_is_not_straight_or_it_gives_up_wood() {
        Board.Builder oneEdge = maple("a", "6", "60").edges(1, Length.ZERO, Length.ZERO);

        assertThat(work(oneEdge, section("0", "60", Edge.LEFT, "0", strip("2"))).straightened())
                .isZero();
        assertThat(work(oneEdge, section("0", "60", Edge.RIGHT, "0", strip("2")))
                        .straightened())
                .isEqualTo(1);
        assertThat(work(oneEdge, section("0", "60", Edge.LEFT, "0.5", strip("2")))
                        .straightened())
                .isEqualTo(1);
    }

    private static SawWork work(Board.Builder board, Layout.Section... sections) {
        return SawWork.of(bench().stack(board).parts(part("rail", "20", "2")).build(), cut(0, sections));
    }
}
