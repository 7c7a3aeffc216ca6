package ripwright.replay;

import static ripwright.replay.Make.IN;
import static ripwright.replay.Make.cost;
import static ripwright.replay.Make.tally;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import ripwright.bill.Part;
import ripwright.job.Job;
import ripwright.job.Keep;
import ripwright.job.Limits;
import ripwright.measure.Unit;
import ripwright.plan.CutBoard;
import ripwright.plan.Plan;
import ripwright.plan.TestBlank.Source;
import ripwright.saw.Saw;
import ripwright.saw.TestRip;
import ripwright.stock.Board;
import ripwright.stock.Edge;
import ripwright.stock.Species;

/**
 * Two settings closer than a kerf, and the test blank for the second is trimmed off a strip ripped before: the order at
 * the two saws goes back and forth.
 *
 * <p>By hand: strips of 4, 3 and 2 15/16 reach 10 3/16 of 11 1/4, 15/16 is left beside them. From the far end 13 7/8
 * are left, and 13 7/8 of S1: both too short to be kept, both long enough for a test blank of 12. Stock 66 x 11 1/4 /
 * 144 x 6 = 30.94; minutes 3 x 6 + (3 + 3) x 1.5 + (1 + 3 + 2) = 33.
 */
final class DrawerBox {
    private DrawerBox() {}

    static Job job() {
        return new Job(
                "drawer box",
                Unit.INCH,
                Saw.of(IN.length("1/8"), IN.length("1/8")),
                new TestRip(IN.length("12"), 1),
                new Keep(IN.length("20"), IN.length("3")),
                Map.of(new Species("maple"), new BigDecimal("6.00")),
                new BigDecimal("0.5"),
                Optional.empty(),
                List.of(Board.measured("m2", "maple", IN.length("3/4"), IN.length("11 1/4"), IN.length("66"))
                        .build()),
                List.of(),
                List.of(
                        Part.of("front", IN.length("38"), IN.length("4"), IN.length("3/4"))
                                .build(),
                        Part.of("side", IN.length("50"), IN.length("3"), IN.length("3/4"))
                                .build(),
                        Part.of("back", IN.length("50"), IN.length("2 15/16"), IN.length("3/4"))
                                .build()),
                Limits.NONE);
    }

    static Sample sample() {
        return new Sample(
                job(),
                new Plan(
                        "drawer box",
                        Unit.INCH,
                        Plan.Status.COMPLETE,
                        cost("30.94", "0.00", "0.00", "30.94", "25.00", "0.1920", false),
                        tally("3.8672", "2.3379", "0", "1.5293", "0.6045", "33.00"),
                        List.of(new CutBoard(
                                "m2",
                                List.of(IN.section(
                                        "m2/1",
                                        "0",
                                        "52",
                                        Edge.LEFT,
                                        "0",
                                        IN.strip("S1", "0", "4", "R1", IN.blank("front-1", "front", "0", "38")),
                                        IN.strip("S2", "4 1/8", "3", "R2", IN.blank("side-1", "side", "0", "50")),
                                        IN.strip(
                                                "S3",
                                                "7 1/4",
                                                "2 15/16",
                                                "R3",
                                                IN.blank("back-1", "back", "0", "50")))))),
                        List.of(
                                IN.setting("R1", "4", "T1", Source.WASTE),
                                IN.setting("R2", "3", "T1", Source.WASTE),
                                IN.setting("R3", "2 15/16", "T2", Source.WASTE)),
                        List.of(
                                IN.testBlank("T1", "m2", Source.WASTE, "11 1/4", "12", "3/4", "maple", "R1", "R2"),
                                IN.testBlank("T2", "S1", Source.WASTE, "4", "12", "3/4", "maple", "R3")),
                        IN.steps()
                                .breakdown("m2", "m2/1", "T1")
                                .test("R1", "T1")
                                .rip("R1", "m2/1", "S1")
                                .test("R2", "T1")
                                .rip("R2", "m2/1", "S2")
                                .trim("S1", "T2")
                                .test("R3", "T2")
                                .rip("R3", "m2/1", "S3")
                                .stop("50", "S2", "side-1")
                                .stop("50", "S3", "back-1")
                                .stop("38", "S1", "front-1")
                                .list(),
                        List.of(),
                        List.of(),
                        List.of()));
    }
}
