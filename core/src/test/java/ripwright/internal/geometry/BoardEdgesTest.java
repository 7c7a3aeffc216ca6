package ripwright.internal.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static ripwright.internal.sequence.Shop.in;
import static ripwright.internal.sequence.Shop.maple;
import static ripwright.internal.sequence.Shop.nm;

import org.junit.jupiter.api.Test;
import ripwright.measure.Length;
import ripwright.stock.Edge;

public class BoardEdgesTest {
    /** Crook 3/8 in over 96 in, cut in two, is 3/32 in: the height of a flat arc goes with its chord's square; derived. */
    @Test
    void k10_half_a_board_has_a_quarter_of_its_crook() {
        BoardEdges edges = new BoardEdges(
                maple("a", "6", "96").edges(1, Length.ZERO, in("0.375")).build());

        assertThat(edges.crookOver(nm("48"))).isEqualTo(nm("0.09375"));
    }

    @Test
    void crook_is_rounded_up_to_the_nanometer() {
        BoardEdges edges = new BoardEdges(
                maple("a", "6", "3").edges(1, Length.ZERO, new Length(10)).build());

        assertThat(edges.crookOver(nm("1"))).isEqualTo(2); // 10 / 9
    }

    @Test
    void straightening_takes_the_edge_loss_at_least_and_the_crook_where_that_is_more() {
        BoardEdges edges = new BoardEdges(
                maple("a", "6", "96").edges(0, in("0.125"), in("0.375")).build());

        assertThat(edges.straighteningLoss(nm("48"))).isEqualTo(nm("0.125"));
        assertThat(edges.straighteningLoss(nm("96"))).isEqualTo(nm("0.375"));
    }

    @Test
    void one_straight_edge_is_the_left_one() {
        assertThat(straight(0)).isEqualTo("false, false");
        assertThat(straight(1)).isEqualTo("true, false");
        assertThat(straight(2)).isEqualTo("true, true");
    }

    private static String straight(int straightEdges) {
        BoardEdges edges = new BoardEdges(maple("a", "6", "96")
                .edges(straightEdges, Length.ZERO, Length.ZERO)
                .build());
        return edges.straight(Edge.LEFT) + ", " + edges.straight(Edge.RIGHT);
    }
}
