package ripwright.job;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import ripwright.bill.Part;
import ripwright.measure.Length;
import ripwright.saw.Labor;
import ripwright.saw.Saw;
import ripwright.stock.Board;
import ripwright.stock.Defect;
import ripwright.stock.Species;
import ripwright.testing.JobBuilder;

class RecordsTest {
    private static final Length THICK = Length.inches("3/4");

    @Test
    void a_crook_on_two_straight_edges_is_refused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() ->
                        board("a").edges(2, Length.ZERO, Length.inches("1/4")).build())
                .withMessage(
                        "1/4 in on a board with two straight edges. Set straightEdges to 1 or 0, or leave crook out.");
    }

    @Test
    void a_defect_beyond_its_board_is_refused() {
        Defect knot = new Defect(
                Length.inches("59"), Length.inches("61"), Length.ZERO, Length.inches("1"), "knot", Defect.Blocks.ALL);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> board("a").defects(List.of(knot)).build())
                .withMessage("A defect ends at 61 in, beyond the board's length of 60 in.");
    }

    @Test
    void a_board_that_mills_thicker_than_it_is_is_refused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> board("a").rough(THICK, Length.inches("1")).build())
                .withMessage("millsTo is 1 in, more than the thickness of 3/4 in.");
    }

    @Test
    void a_tapered_board_is_as_wide_as_a_straight_line_says_rounded_down() {
        Board board = board("a")
                .width(new Length(10), new Length(7))
                .length(new Length(6))
                .build();
        assertThat(board.widthAt(new Length(1))).isEqualTo(new Length(9));
        assertThat(board.widthAt(new Length(2))).isEqualTo(new Length(9));
        assertThat(board.widthAt(new Length(6))).isEqualTo(new Length(7));
    }

    @Test
    @Tag("locale")
    void species_match_without_regard_to_case_and_outer_blanks() {
        assertThat(new Species(" Hickory "))
                .isEqualTo(new Species("HICKORY"))
                .hasSameHashCodeAs(new Species("hickory"));
        assertThat(new Species("hickory")).isNotEqualTo(new Species("hick ory"));
    }

    @Test
    void a_kerf_over_an_inch_is_refused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Saw.of(Length.inches("1 1/64"), Length.ZERO))
                .withMessage("ripKerf is 1 1/64 in; a kerf is at most 1 in.");
    }

    @Test
    void everything_wrong_with_a_job_is_said_at_once() {
        assertThatThrownBy(
                        () -> job("1.5", List.of(board("a").build(), board("a").build()), List.of()))
                .isInstanceOf(WrongJobException.class)
                .hasMessage(String.join(
                        System.lineSeparator(),
                        "salvage: 1.5 is not a share from 0 to 1.",
                        "stack[1].id: \"a\" is the id of stack[0] too; ids must differ.",
                        "parts: The cutting bill is empty; list at least one part."));
    }

    @Test
    void a_job_may_come_to_a_thousand_million_and_no_more() {
        JobBuilder dear = new JobBuilder("dear")
                .stack(JobBuilder.maple("a", "12", "120")) // 10 board feet
                .parts(JobBuilder.part("rail", 60, "20", "2"));
        assertThat(dear.price(JobBuilder.MAPLE, new BigDecimal("100000000"))
                        .build()
                        .prices())
                .hasSize(1);
        Labor labor = new Labor(new BigDecimal("1e9"), BigDecimal.ONE, BigDecimal.ONE, BigDecimal.ONE);
        JobBuilder dearer =
                dear.price(JobBuilder.MAPLE, new BigDecimal("100000001")).labor(labor);
        assertThatThrownBy(dearer::build)
                .hasMessageContaining("The boards come to about 1.00E+9; a job may come to 1,000,000,000 at most.")
                .hasMessageContaining("Setting, ripping and crosscutting for every part alone comes to about 3.00E+9;");
    }

    @Test
    void what_is_no_longer_than_a_reader_can_tell_apart_is_refused() {
        JobBuilder tiny = new JobBuilder("tiny")
                .stack(JobBuilder.maple("a", "12", "0.0005"))
                .parts(JobBuilder.part("rail", 1, "20", "0.0002"));
        assertThatThrownBy(tiny::build)
                .hasMessageContaining("0.0005 in is too small to be read off a plan, which tells places apart that are"
                        + " more than 0.0005 in from one another.")
                .hasMessageContaining("0.0002 in is too small to be read off a plan");
    }

    @Test
    void ten_million_parts_are_too_many() {
        Part many = Part.of("p", Length.inches("9"), Length.inches("2"), THICK)
                .count(10_000_000)
                .build();
        assertThatThrownBy(() -> job("0", List.of(board("a").build()), List.of(many)))
                .hasMessage("parts: 10000000 parts wanted; a job has at most 100,000.");
    }

    private static Board.Builder board(String id) {
        return JobBuilder.maple(id, "6", "60");
    }

    private static Job job(String salvage, List<Board> stack, List<Part> parts) {
        return new JobBuilder("job")
                .salvage(new BigDecimal(salvage))
                .stack(stack)
                .parts(parts)
                .build();
    }
}
