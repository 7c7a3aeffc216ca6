package ripwright.internal.replay.leftovers;

import static org.assertj.core.api.Assertions.assertThat;
import static ripwright.replay.Make.IN;

import java.util.List;
import org.junit.jupiter.api.Test;
import ripwright.internal.replay.Findings;
import ripwright.internal.replay.ReplayIndex;
import ripwright.replay.OneBoard;
import ripwright.stock.Board;

public class CutDownTest {
    private static final long LENGTH = IN.length("12").nanometers();
    private static final long KERF = IN.length("1/8").nanometers();

    private static ReplayLeftover whole(Board board) {
        ReplayIndex pieces = OneBoard.pieces(board, "1/8");
        return new ReplayLeftovers(pieces).of(pieces.boards().get(0)).get(0);
    }

    private static List<String> rests(ReplayLeftover piece, int count) {
        return CutDown.all(piece, count, LENGTH, KERF).stream()
                .map(way -> way.rest()
                                .map(rest ->
                                        new Findings(IN.unit()).say(rest.along().from()) + " .. "
                                                + new Findings(IN.unit())
                                                        .say(rest.along().to()))
                                .orElse("nothing")
                        + ", cuts " + way.fewestCuts()
                        + (way.mostCuts() > way.fewestCuts() ? " or " + way.mostCuts() : ""))
                .toList();
    }

    @Test
    void one_comes_off_either_end() {
        assertThat(rests(whole(OneBoard.maple("5", "30")), 1))
                .containsExactly("0 in .. 17 7/8 in, cuts 1", "12 1/8 in .. 30 in, cuts 1");
    }

    @Test
    void two_come_off_one_end_or_both() {
        assertThat(rests(whole(OneBoard.maple("5", "30")), 2))
                .containsExactly(
                        "0 in .. 5 3/4 in, cuts 2", "12 1/8 in .. 17 7/8 in, cuts 2", "24 1/4 in .. 30 in, cuts 2");
    }

    @Test
    void behind_a_raw_end_the_trim_is_lost_with_it() {
        Board raw = OneBoard.maple("5", "30").toBuilder()
                .endTrim(IN.length("2"), IN.length("0"))
                .build();
        assertThat(rests(whole(raw), 1))
                .containsExactly(
                        "0 in .. 17 7/8 in, cuts 1", "12 1/8 in .. 30 in, cuts 1", "14 1/8 in .. 30 in, cuts 1");
    }

    @Test
    void a_whole_piece_takes_no_cut_and_the_last_of_two_none_either() {
        assertThat(rests(whole(OneBoard.maple("5", "12")), 1)).containsOnly("nothing, cuts 0");
        assertThat(rests(whole(OneBoard.maple("5", "24 1/8")), 2)).containsOnly("nothing, cuts 1");
    }

    @Test
    void less_than_a_kerf_over_still_takes_a_cut() {
        assertThat(rests(whole(OneBoard.maple("5", "12 1/16")), 1)).containsOnly("nothing, cuts 1");
    }

    @Test
    void behind_a_raw_end_the_order_can_save_a_cut() {
        Board raw = OneBoard.maple("5", "26 1/8").toBuilder()
                .endTrim(IN.length("2"), IN.length("0"))
                .build();
        assertThat(rests(whole(raw), 2)).contains("nothing, cuts 1 or 2");
    }

    @Test
    void too_short_a_piece_gives_none() {
        assertThat(rests(whole(OneBoard.maple("5", "11 15/16")), 1)).isEmpty();
        assertThat(rests(whole(OneBoard.maple("5", "24")), 2)).isEmpty();
    }

    @Test
    void from_a_tapered_piece_each_is_as_wide_as_its_own_narrow_end() {
        Board tapered = OneBoard.maple("5", "50").toBuilder()
                .width(IN.length("10"), IN.length("5"))
                .build();
        assertThat(CutDown.all(whole(tapered), 2, LENGTH, KERF).get(1).blanks())
                .extracting(CutDown.Cut::width)
                .containsExactly(IN.length("8.8").nanometers(), IN.length("5").nanometers());
    }
}
