package ripwright.internal.replay.figures;

import static org.assertj.core.api.Assertions.assertThat;
import static ripwright.replay.Make.IN;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import ripwright.internal.replay.BoardFrame;
import ripwright.internal.replay.CrosscutLine;
import ripwright.internal.replay.Findings;
import ripwright.internal.replay.ReplayIndex;
import ripwright.internal.replay.layout.BlankRules;
import ripwright.internal.replay.layout.StripRules;
import ripwright.internal.replay.leftovers.ReplayLeftover;
import ripwright.internal.replay.leftovers.ReplayLeftovers;
import ripwright.replay.Make;
import ripwright.replay.OneBoard;
import ripwright.stock.Board;

/** Kerf arithmetic that every shop knows. Identities: each can be summed up by hand. */
public class KerfTest {
    private static boolean stripsFit(String boardWidth, String kerf, int count, String width) {
        Findings findings = new Findings(Make.IN.unit());
        new StripRules(OneBoard.ripped(OneBoard.maple(boardWidth, "48"), kerf, count, width), findings).check();
        return findings.faults().stream().noneMatch(fault -> fault.what().contains("strips reach"));
    }

    private static Optional<Long> besideStrips(String boardWidth, String kerf, int count, String width) {
        ReplayIndex pieces = OneBoard.ripped(OneBoard.maple(boardWidth, "48"), kerf, count, width);
        return new ReplayLeftovers(pieces).of(pieces.sections().get(0)).map(ReplayLeftover::narrow);
    }

    private static Optional<Long> nanometers(String inches) {
        return inches.equals("0")
                ? Optional.empty()
                : Optional.of(IN.length(inches).nanometers());
    }

    @ParameterizedTest
    @CsvSource({
        "9 1/4, 1/8, 2 1/4, 3, 2 1/8", // 9.25 - 3 x 2.375
        "9 3/8, 1/8, 2 1/4, 4, 0", // 4 x 2.25 + 3 x 0.125 fill it: the last strip needs no kerf
        "9 1/2, 1/8, 2 1/4, 4, 0", // the last 1/8 is sawdust
        "9 5/16, 1/8, 2 1/4, 3, 2 3/16",
        "9 5/16, 3/32, 2 1/4, 4, 0", // a thinner kerf alone gives one strip more
        "6 3/8, 1/8, 1 1/2, 4, 0",
        "6, 1/8, 1 1/2, 3, 1 1/8" // 4 x 1.5 = 6 forgets three kerfs
    })
    void so_many_strips_fit_and_so_much_is_left_beside_them(
            String boardWidth, String kerf, String width, int count, String left) {
        assertThat(stripsFit(boardWidth, kerf, count, width)).isTrue();
        assertThat(stripsFit(boardWidth, kerf, count + 1, width)).isFalse();
        assertThat(besideStrips(boardWidth, kerf, count, width)).isEqualTo(nanometers(left));
    }

    private static boolean blanksFit(Board board, int count, String length) {
        Findings findings = new Findings(Make.IN.unit());
        new BlankRules(OneBoard.crosscut(board, "1/8", count, length), findings).check();
        return findings.faults().stream().noneMatch(fault -> fault.what().startsWith("it ends at"));
    }

    private static List<Long> besideBlanks(Board board, int count, String length) {
        ReplayIndex pieces = OneBoard.crosscut(board, "1/8", count, length);
        return new ReplayLeftovers(pieces)
                .of(pieces.strips().get(0)).stream().map(ReplayLeftover::length).toList();
    }

    @Test
    void four_parts_of_22_1_2_leave_5_1_2_of_96_after_four_kerfs() {
        Board board = OneBoard.maple("4", "96");
        assertThat(blanksFit(board, 4, "22 1/2")).isTrue();
        assertThat(blanksFit(board, 5, "22 1/2")).isFalse();
        assertThat(besideBlanks(board, 4, "22 1/2"))
                .containsExactly(IN.length("5 1/2").nanometers());
    }

    @Test
    void three_parts_of_23_1_2_leave_23_1_8_of_96_less_an_inch_at_each_end() {
        Board board = OneBoard.maple("4", "96").toBuilder()
                .endTrim(IN.length("1"), IN.length("1"))
                .build();
        assertThat(blanksFit(board, 3, "23 1/2")).isTrue();
        assertThat(blanksFit(board, 4, "23 1/2")).isFalse();
        assertThat(besideBlanks(board, 3, "23 1/2"))
                .containsExactly(IN.length("23 1/8").nanometers());
    }

    @Test
    void half_of_a_board_that_bows_3_8_bows_3_32() {
        BoardFrame crooked = new BoardFrame(OneBoard.maple("8", "96").toBuilder()
                .edges(0, IN.length("0"), IN.length("3/8"))
                .build());
        assertThat(crooked.crookOver(IN.length("48").nanometers()))
                .isEqualTo(IN.length("3/32").nanometers());
    }

    @Test
    void a_loss_from_crook_is_rounded_up_to_the_nanometer() {
        BoardFrame crooked = new BoardFrame(OneBoard.maple("8", "96").toBuilder()
                .edges(0, IN.length("0"), IN.length("3/8"))
                .build());
        // 9 525 000 nm x (32/96)^2 = 1 058 333 1/3
        assertThat(crooked.crookOver(IN.length("32").nanometers())).isEqualTo(1_058_334);
    }

    @Test
    void a_width_from_taper_is_rounded_down_to_the_nanometer() {
        BoardFrame narrowing = new BoardFrame(OneBoard.maple("8", "96").toBuilder()
                .width(IN.length("8"), IN.length("7"))
                .build());
        BoardFrame widening = new BoardFrame(OneBoard.maple("8", "96").toBuilder()
                .width(IN.length("7"), IN.length("8"))
                .build());
        // 25 400 000 x 7/96 = 1 852 083 1/3 of the inch that is lost or gained
        assertThat(narrowing.widthAt(IN.length("7").nanometers())).isEqualTo(203_200_000 - 1_852_084);
        assertThat(widening.widthAt(IN.length("7").nanometers())).isEqualTo(177_800_000 + 1_852_083);
    }

    @Test
    void neighbors_exactly_a_kerf_apart_share_a_cut_and_raw_ends_need_none() {
        CrosscutLine line = new CrosscutLine(
                0,
                10_000_000,
                List.of(
                        new CrosscutLine.Span(0, 2_000_000),
                        new CrosscutLine.Span(2_300_000, 4_000_000),
                        new CrosscutLine.Span(6_000_000, 10_000_000)),
                300_000);
        assertThat(line.fewestCuts()).isEqualTo(3);
        assertThat(line.mostCuts()).isEqualTo(3);
        assertThat(line.free()).containsExactly(new CrosscutLine.Span(4_300_000, 5_700_000));
    }

    @Test
    void a_gap_of_two_kerfs_leaves_nothing() {
        assertThat(new CrosscutLine(0, 100, List.of(new CrosscutLine.Span(0, 40), new CrosscutLine.Span(46, 100)), 3)
                        .free())
                .isEmpty();
        assertThat(new CrosscutLine(0, 100, List.of(new CrosscutLine.Span(3, 97)), 3).free())
                .isEmpty();
        assertThat(new CrosscutLine(0, 100, List.of(), 3).free()).containsExactly(new CrosscutLine.Span(0, 100));
    }
}
