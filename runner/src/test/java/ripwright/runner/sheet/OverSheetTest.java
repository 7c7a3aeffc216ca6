package ripwright.runner.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import ripwright.bill.Part;
import ripwright.job.Breakdown;
import ripwright.job.Job;
import ripwright.job.Keep;
import ripwright.measure.Length;
import ripwright.plan.Plan;
import ripwright.plan.Tally;
import ripwright.saw.Saw;
import ripwright.stock.Board;
import ripwright.stock.Defect;
import ripwright.stock.Edge;
import ripwright.stock.Species;

/** A section that is left long: blanks before and behind a knot and behind a piece set aside, parts fitted to openings. */
class OverSheetTest {
    private static final Length THICK = in("3/4");

    private final Document page = Markups.parsed(new Sheet(job(), plan()).html());

    private static Length in(String inches) {
        return Length.inches(inches);
    }

    private static Job job() {
        Defect knot = new Defect(in("30"), in("31"), in("1"), in("1 1/2"), "knot", Defect.Blocks.ALL);
        return Job.builder("Over", Saw.of(in("1/8"), in("1/8")), new Keep(in("12"), in("2")))
                .breakdown(new Breakdown(in("1/2")))
                .prices(Map.of(new Species("ash"), BigDecimal.TEN))
                .stack(List.of(Board.measured("A", "ash", THICK, in("2 1/8"), in("102"))
                        .defects(List.of(knot))
                        .build()))
                .parts(List.of(
                        Part.of("rung", in("12"), in("2"), THICK).count(4).build(),
                        Part.of("rail", in("16"), in("2"), THICK)
                                .count(2)
                                .fitted(true)
                                .build()))
                .build();
    }

    /** Two rungs, the knot, a rung; 16 for a rail, then a rung and a rail. */
    private static Plan plan() {
        return new PlanBuilder(job())
                .section(
                        "A",
                        "0",
                        "102",
                        Edge.LEFT,
                        "0",
                        PlanBuilder.row("2", "1/2", "rung", "rung", "6 1/2", "rung", "rail", "rung", "rail"))
                .build(
                        PlanBuilder.cost("10.00", "0.00", "10.00", "10.00", "0"),
                        new Tally(
                                BigDecimal.ONE,
                                BigDecimal.ONE,
                                BigDecimal.ZERO,
                                BigDecimal.ZERO,
                                BigDecimal.ZERO,
                                BigDecimal.ONE));
    }

    @Test
    void crosscuts_are_told_from_the_end_that_is_there() {
        assertThat(Markups.texts(page, "bdi"))
                .contains(
                        "from the squared end, 2 at the stop, pass the knot between the 2nd and the 3rd, 1 at the stop,"
                                + " set 16 in aside for B4 between the 3rd and the 4th, 1 at the stop");
    }

    @Test
    void a_fitted_blank_starts_where_the_one_before_it_ended() {
        assertThat(Markups.texts(page, "bdi")).contains("where B3 ended", "where B5 ended");
    }

    @Test
    void the_end_to_be_squared_is_told_and_how_much_falls() {
        assertThat(Markups.texts(page, "h2")).anyMatch(text -> text.startsWith("Square one end of each strip"));
        assertThat(Markups.texts(page, "bdi")).contains("1/2");
    }

    @Test
    void nothing_is_said_of_exact_sections_and_a_whole_board_is_not_cut() {
        assertThat(Markups.texts(page, "p")).noneMatch(text -> text.startsWith("This job leaves nothing over"));
        assertThat(Markups.texts(page, "bdi")).contains("section, left edge; no cut, the whole board");
    }
}
