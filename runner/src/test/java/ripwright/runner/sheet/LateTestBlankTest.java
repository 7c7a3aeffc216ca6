package ripwright.runner.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static ripwright.runner.sheet.PlanBuilder.row;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import ripwright.bill.Part;
import ripwright.job.Job;
import ripwright.job.Keep;
import ripwright.job.Limits;
import ripwright.measure.Length;
import ripwright.measure.Unit;
import ripwright.plan.Plan;
import ripwright.plan.Tally;
import ripwright.plan.TestBlank;
import ripwright.saw.Saw;
import ripwright.saw.TestRip;
import ripwright.stock.Board;
import ripwright.stock.Edge;
import ripwright.stock.History;
import ripwright.stock.Species;

/** An offcut that comes off at one rip, and is crosscut for the test blank of the next setting. */
class LateTestBlankTest {
    private static final Length THICK = in("3/4");

    private final List<String> texts = Markups.texts(Markups.parsed(new Sheet(job(), plan()).html()), "bdi");

    private static Length in(String inches) {
        return Length.inches(inches);
    }

    private static Job job() {
        return new Job(
                "Bench",
                Unit.INCH,
                Saw.of(in("1/8"), in("1/8")),
                new TestRip(in("12"), 1),
                new Keep(in("12"), in("2")),
                Map.of(new Species("ash"), BigDecimal.TEN),
                new BigDecimal("0.5"),
                Optional.empty(),
                List.of(ash("A", "10").build(), ash("B", "2").build()),
                List.of(),
                List.of(
                        Part.of("seat", in("40"), in("4"), THICK).build(),
                        Part.of("rail", in("40"), in("2"), THICK).build()),
                Limits.NONE);
    }

    private static Board.Builder ash(String id, String width) {
        return Board.measured(id, "ash", THICK, in(width), in("40"));
    }

    private static Plan plan() {
        Board beside = ash("A/A", "5 7/8")
                .length(in("27 7/8"))
                .onRack(new History(Optional.of("A/A"), Optional.empty(), Optional.empty(), Optional.empty()))
                .build();
        return new PlanBuilder(job())
                .section("A", "0", "40", Edge.LEFT, "0", row("4", "seat"))
                .section("B", "0", "40", Edge.LEFT, "0", row("2", "rail"))
                .test(new TestBlank(
                        "T1",
                        "A/1",
                        TestBlank.Source.FRESH,
                        in("5 7/8"),
                        in("12"),
                        THICK,
                        new Species("ash"),
                        List.of("R2")))
                .offcut("A/1", beside)
                .build(
                        PlanBuilder.cost("10.00", "0.00", "10.00", "10.00", "0"),
                        new Tally(
                                BigDecimal.ONE,
                                BigDecimal.ONE,
                                BigDecimal.ZERO,
                                BigDecimal.ZERO,
                                BigDecimal.ONE,
                                BigDecimal.ONE));
    }

    @Test
    void where_it_is_ripped_it_is_said_that_it_is_not_racked_yet() {
        assertThat(texts).contains("A/A, 5 7/8 wide, when T1 is off it: step 4");
    }

    @Test
    void where_the_test_blank_is_cut_it_is_said_what_stays_and_is_chalked() {
        assertThat(texts)
                .contains("Crosscut A/1: makes T1, 12 in long. What stays is A/A, 27 7/8 in long: chalk it now.");
    }
}
