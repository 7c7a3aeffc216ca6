package ripwright.internal.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static ripwright.internal.sequence.Shop.bench;
import static ripwright.internal.sequence.Shop.blank;
import static ripwright.internal.sequence.Shop.cut;
import static ripwright.internal.sequence.Shop.in;
import static ripwright.internal.sequence.Shop.maple;
import static ripwright.internal.sequence.Shop.part;
import static ripwright.internal.sequence.Shop.section;
import static ripwright.internal.sequence.Shop.strip;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import ripwright.job.Job;
import ripwright.measure.Length;
import ripwright.measure.Unit;
import ripwright.saw.Saw;
import ripwright.stock.Board;
import ripwright.stock.Edge;

/** Worked examples K1 to K8: identities of kerf arithmetic, n pieces needing n - 1 kerfs and a rest one kerf more. */
public class LayoutLeftoversTest {
    private static final String LENGTH = "48";

    @Test
    void k1_three_strips_of_two_and_a_quarter_from_nine_and_a_quarter_leave_two_and_an_eighth() {
        assertThat(besideStrips("9.25", "2.25", 3, "0.125")).containsExactly("48 x 2 1/8");
    }

    @Test
    void k2_four_strips_that_fill_the_width_exactly_leave_nothing() {
        assertThat(besideStrips("9.375", "2.25", 4, "0.125")).isEmpty();
    }

    @Test
    void k3_a_last_eighth_is_all_sawdust() {
        assertThat(besideStrips("9.5", "2.25", 4, "0.125")).isEmpty();
    }

    @Test
    void k4_the_kerf_alone_decides_between_three_strips_and_four() {
        assertThat(besideStrips("9.3125", "2.25", 3, "0.125")).containsExactly("48 x 2 3/16");
        assertThat(besideStrips("9.3125", "2.25", 4, "0.09375")).isEmpty();
    }

    @Test
    void k5_four_strips_of_one_and_a_half_fill_six_and_three_eighths() {
        assertThat(besideStrips("6.375", "1.5", 4, "0.125")).isEmpty();
    }

    @Test
    void k6_four_times_one_and_a_half_is_not_six_at_the_saw() {
        assertThat(besideStrips("6", "1.5", 3, "0.125")).containsExactly("48 x 1 1/8");
    }

    @Test
    void k7_four_parts_of_twenty_two_and_a_half_from_ninety_six_leave_five_and_a_half() {
        assertThat(alongStrip("0", "96", "22.5", 4)).containsExactly("5 1/2 x 3");
    }

    @Test
    void k8_three_parts_of_twenty_three_and_a_half_between_the_trims_leave_twenty_three_and_an_eighth() {
        assertThat(alongStrip("1", "95", "23.5", 3)).containsExactly("23 1/8 x 3");
    }

    @Test
    void what_lies_beside_sections_ends_a_kerf_before_the_cut_and_keeps_its_raw_end() {
        Job job = bench().stack(maple("a", "6", "96"))
                .parts(part("rail", "20", "2"))
                .build();
        Layout layout = cut(0, section("20", "40", strip("2")), section("60", "80", strip("2")));

        assertThat(sizes(job, layout, Leftover.Of.BOARD)).containsExactly("19 7/8 x 6", "19 3/4 x 6", "15 7/8 x 6");
    }

    @Test
    void sections_one_kerf_apart_leave_nothing_between() {
        Job job = bench().stack(maple("a", "6", "40.125"))
                .parts(part("rail", "20", "2"))
                .build();
        Layout layout = cut(0, section("0", "20", strip("2")), section("20.125", "40.125", strip("2")));

        assertThat(sizes(job, layout, Leftover.Of.BOARD)).isEmpty();
    }

    @Test
    void between_blanks_a_gap_of_two_kerfs_leaves_nothing_and_one_of_more_the_rest() {
        Job job = bench().stack(maple("a", "2", "40"))
                .parts(part("rail", "10", "2"))
                .build();
        Layout layout = cut(0, section("0", "40", strip("2", blank(0, "0"), blank(0, "10.25"), blank(0, "21"))));

        assertThat(sizes(job, layout, Leftover.Of.STRIP)).containsExactly("1/2 x 2", "8 7/8 x 2");
    }

    @Test
    void a_strip_without_blanks_is_left_whole() {
        Job job = bench().stack(maple("a", "2", "40"))
                .parts(part("rail", "10", "2"))
                .build();

        assertThat(sizes(job, cut(0, section("0", "40", strip("2"))), Leftover.Of.STRIP))
                .containsExactly("40 x 2");
    }

    @Test
    void beside_the_strips_of_a_tapered_board_the_taper_is_left() {
        Job job = bench().stack(maple("a", "8", "40").width(in("8"), in("6")))
                .parts(part("rail", "10", "2"))
                .build();
        Piece beside = only(job, cut(0, section("0", "20", strip("2"))), Leftover.Of.SECTION);

        assertThat(beside.widthAt(beside.from())).isEqualTo(in("5.875").nanometers());
        assertThat(beside.widthAt(beside.to())).isEqualTo(in("4.875").nanometers());
    }

    @Test
    void a_wedge_that_comes_to_nothing_at_its_narrow_end_is_no_leftover() {
        Job job = bench().stack(maple("a", "8", "40").width(in("8"), in("6")))
                .parts(part("rail", "10", "2"))
                .build();

        assertThat(sizes(job, cut(0, section("0", "40", strip("6"))), Leftover.Of.SECTION))
                .isEmpty();
    }

    @Test
    void from_the_right_edge_the_rest_lies_at_the_left() {
        Board.Builder board = maple("a", "6", "40").edges(1, in("0.25"), Length.ZERO);
        Job job = bench().stack(board).parts(part("rail", "10", "2")).build();
        Layout layout = cut(0, section("0", "40", Edge.RIGHT, "0.25", strip("2")));
        Piece beside = only(job, layout, Leftover.Of.SECTION);

        assertThat(beside.left()).isZero();
        assertThat(beside.narrowWidth()).isEqualTo(in("3.625").nanometers()); // 6 - 1/4 - 2 - 1/8
        assertThat(beside.leftStraight()).isTrue();
        assertThat(beside.rightStraight()).isTrue();
        assertThat(only(job, layout, Leftover.Of.STRIP).left())
                .isEqualTo(in("3.75").nanometers());
    }

    @Test
    void what_is_left_of_a_milled_section_is_as_thick_as_it_was_milled_to() {
        Job job = bench().stack(maple("a", "6", "40").rough(in("1.125"), in("1")))
                .parts(part("rail", "10", "2"))
                .build();
        Layout layout = cut(0, section("20", "40", strip("2")));

        assertThat(only(job, layout, Leftover.Of.BOARD).thickness()).isEqualTo(in("1.125"));
        assertThat(only(job, layout, Leftover.Of.SECTION).thickness()).isEqualTo(in("1"));
    }

    /** Beside {@code count} strips in a board of that width. */
    private static List<String> besideStrips(String width, String strip, int count, String ripKerf) {
        Job job = bench().saw(Saw.of(in(ripKerf), in("0.125")))
                .stack(maple("a", width, LENGTH))
                .parts(part("rail", "10", strip))
                .build();
        Layout.Strip[] strips = new Layout.Strip[count];
        for (int i = 0; i < count; i++) strips[i] = strip(strip);
        return sizes(job, cut(0, section("0", LENGTH, strips)), Leftover.Of.SECTION);
    }

    /** Beside {@code count} blanks end to end in a strip 3 in wide. */
    private static List<String> alongStrip(String from, String to, String length, int count) {
        Job job = bench().stack(maple("a", "3", "96").endTrim(in(from), in("96").minus(in(to))))
                .parts(part("rail", length, "3"))
                .build();
        List<Layout.Blank> blanks = new ArrayList<>();
        Length start = in(from);
        for (int i = 0; i < count; i++) {
            blanks.add(new Layout.Blank(0, start.nanometers()));
            start = start.plus(in(length)).plus(in("0.125"));
        }
        Layout.Strip strip = new Layout.Strip(in("3").nanometers(), blanks);
        return sizes(job, cut(0, section(from, to, strip)), Leftover.Of.STRIP);
    }

    private static Piece only(Job job, Layout layout, Leftover.Of of) {
        List<Piece> pieces = pieces(job, layout, of);
        assertThat(pieces).hasSize(1);
        return pieces.get(0);
    }

    private static List<Piece> pieces(Job job, Layout layout, Leftover.Of of) {
        return new LayoutLeftovers(job, layout)
                .all().stream()
                        .filter(leftover -> leftover.of() == of)
                        .map(Leftover::piece)
                        .toList();
    }

    private static List<String> sizes(Job job, Layout layout, Leftover.Of of) {
        return pieces(job, layout, of).stream()
                .map(piece -> write(piece.length()) + " x " + write(piece.narrowWidth()))
                .toList();
    }

    private static String write(long nanometers) {
        return Unit.INCH.exact(new Length(nanometers));
    }
}
