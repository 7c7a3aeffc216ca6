package ripwright.internal.replay.leftovers;

import static org.assertj.core.api.Assertions.assertThat;
import static ripwright.replay.Make.IN;

import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;
import ripwright.internal.replay.ReplayIndex;
import ripwright.replay.OneBoard;
import ripwright.stock.Board;
import ripwright.stock.Defect;
import ripwright.stock.Defect.Blocks;

public class UsableAreaTest {
    private static Defect defect(String from, String to, String left, String right, Blocks blocks) {
        return new Defect(IN.length(from), IN.length(to), IN.length(left), IN.length(right), "knot", blocks);
    }

    /** A board opened and not cut, so that it is left whole. */
    private static UsableArea whole(Board board) {
        ReplayIndex pieces = OneBoard.pieces(board, "1/8");
        return new UsableArea(
                new ReplayLeftovers(pieces).of(pieces.boards().get(0)).get(0));
    }

    /** In square inches. */
    private static BigFraction inches(long numerator, long denominator) {
        return BigFraction.of(numerator, denominator)
                .multiply(BigFraction.of(IN.unit().nanometers()).pow(2));
    }

    @Test
    void a_clear_board_counts_without_its_end_trims() {
        Board board = OneBoard.maple("8", "50").toBuilder()
                .endTrim(IN.length("1"), IN.length("2"))
                .build();
        assertThat(whole(board).trueToShape()).isEqualTo(inches(47 * 8, 1));
    }

    @Test
    void defects_that_block_all_count_off_once_and_others_not_at_all() {
        Board board = OneBoard.maple("8", "50").toBuilder()
                .defects(List.of(
                        defect("10", "14", "1", "4", Blocks.ALL), // 12, of which 2 x 1 twice
                        defect("12", "16", "3", "5", Blocks.ALL), // 8
                        defect("30", "40", "0", "8", Blocks.SHOW)))
                .build();
        assertThat(whole(board).trueToShape()).isEqualTo(inches(400 - 18, 1));
    }

    @Test
    void a_defect_in_the_end_trim_counts_off_only_behind_it() {
        Board board = OneBoard.maple("8", "50").toBuilder()
                .endTrim(IN.length("2"), IN.length("0"))
                .defects(List.of(defect("0", "3", "0", "8", Blocks.ALL)))
                .build();
        assertThat(whole(board).trueToShape()).isEqualTo(inches(47 * 8, 1));
    }

    @Test
    void a_trimmed_tapered_board_is_as_wide_as_it_is_or_as_its_mean() {
        Board board = OneBoard.maple("8", "50").toBuilder()
                .width(IN.length("10"), IN.length("5"))
                .endTrim(IN.length("10"), IN.length("0"))
                .build();
        assertThat(whole(board).trueToShape()).isEqualTo(inches(40 * 7, 1)); // 9 to 5
        assertThat(whole(board).byMeanWidth()).isEqualTo(inches(40 * 15, 2));
    }

    @Test
    void a_defect_counts_off_only_as_far_as_a_tapered_edge_lets_it() {
        Board board = OneBoard.maple("8", "40").toBuilder()
                .width(IN.length("8"), IN.length("4"))
                .defects(List.of(defect("20", "40", "3", "6", Blocks.ALL)))
                .build();
        // 6 wide at 20 and 4 at 40: the defect covers 3 to 1 of its 3, in the mean 2, over 20
        assertThat(whole(board).trueToShape()).isEqualTo(inches(40 * 6 - 40, 1));
    }

    @Test
    void a_tapered_edge_that_crosses_a_defect_cuts_its_corner_off() {
        Board board = OneBoard.maple("8", "40").toBuilder()
                .width(IN.length("8"), IN.length("4"))
                .defects(List.of(defect("10", "30", "3", "6", Blocks.ALL)))
                .build();
        // up to 20 all 3 across, from 20 to 30 the edge comes in from 6 to 5: 30 + 25
        assertThat(whole(board).trueToShape()).isEqualTo(inches(40 * 6 - 55, 1));
    }
}
