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
import ripwright.stock.History;
import ripwright.stock.Species;

/**
 * A test blank trimmed off what is left beside a section's last strip, and one that is a whole offcut of the rack.
 *
 * <p>By hand: beside S1, 9 - 4 - 1/8 leaves 4 7/8 by 30, to be kept but for T2; then 17 7/8 are too short. Stock 80 x 9
 * / 144 x 6 = 30.00, the offcut has no price. Crosscuts 1 between the sections, 3 of blanks, 1 for T2, none for T1;
 * minutes 3 x 6 + (3 + 3) x 1.5 + 5 = 32.
 */
final class BesideStrip {
    private BesideStrip() {}

    static Sample sample() {
        Job job = new Job(
                "beside",
                Unit.INCH,
                Saw.of(IN.length("1/8"), IN.length("1/8")),
                new TestRip(IN.length("12"), 1),
                new Keep(IN.length("20"), IN.length("3")),
                Map.of(new Species("maple"), new BigDecimal("6.00")),
                new BigDecimal("0.5"),
                Optional.empty(),
                List.of(Board.measured("m6", "maple", IN.length("3/4"), IN.length("9"), IN.length("80"))
                        .build()),
                List.of(Board.measured("r1", "pine", IN.length("3/4"), IN.length("5"), IN.length("12"))
                        .onRack(History.UNKNOWN)
                        .build()),
                List.of(
                        Part.of("front", IN.length("29"), IN.length("4"), IN.length("3/4"))
                                .build(),
                        Part.of("side", IN.length("49"), IN.length("3"), IN.length("3/4"))
                                .build(),
                        Part.of("back", IN.length("49"), IN.length("2 15/16"), IN.length("3/4"))
                                .build()),
                Limits.NONE);
        return new Sample(
                job,
                new Plan(
                        "beside",
                        Unit.INCH,
                        Plan.Status.COMPLETE,
                        cost("30.00", "0", "0", "30.00", "30.00", "0", true),
                        tally("4.0625", "2.1195", "0", "1.9430", "0.5217", "32"),
                        boards(),
                        List.of(
                                IN.setting("R1", "4", "T1", Source.RACK),
                                IN.setting("R2", "3", "T1", Source.RACK),
                                IN.setting("R3", "2 15/16", "T2", Source.FRESH)),
                        List.of(
                                IN.testBlank("T1", "r1", Source.RACK, "5", "12", "3/4", "pine", "R1", "R2"),
                                IN.testBlank("T2", "m6/1", Source.FRESH, "4 7/8", "12", "3/4", "maple", "R3")),
                        IN.steps()
                                .breakdown("m6", "m6/1", "m6/2")
                                .breakdown("r1", "T1")
                                .test("R1", "T1")
                                .rip("R1", "m6/1", "S1")
                                .test("R2", "T1")
                                .rip("R2", "m6/2", "S2")
                                .trim("m6/1", "T2")
                                .test("R3", "T2")
                                .rip("R3", "m6/2", "S3")
                                .stop("49", "S2", "side-1")
                                .stop("49", "S3", "back-1")
                                .stop("29", "S1", "front-1")
                                .list(),
                        List.of(),
                        List.of(),
                        List.of()));
    }

    private static List<CutBoard> boards() {
        return List.of(
                new CutBoard(
                        "m6",
                        List.of(
                                IN.section(
                                        "m6/1",
                                        "0",
                                        "30",
                                        Edge.LEFT,
                                        "0",
                                        IN.strip("S1", "0", "4", "R1", IN.blank("front-1", "front", "0", "29"))),
                                IN.section(
                                        "m6/2",
                                        "30 1/8",
                                        "80",
                                        Edge.LEFT,
                                        "0",
                                        IN.strip("S2", "0", "3", "R2", IN.blank("side-1", "side", "30 1/8", "49")),
                                        IN.strip(
                                                "S3",
                                                "3 1/8",
                                                "2 15/16",
                                                "R3",
                                                IN.blank("back-1", "back", "30 1/8", "49"))))),
                new CutBoard("r1", List.of()));
    }
}
