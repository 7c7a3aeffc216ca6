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
import ripwright.plan.Offcut;
import ripwright.plan.Plan;
import ripwright.saw.Saw;
import ripwright.saw.TestRip;
import ripwright.stock.Board;
import ripwright.stock.Edge;
import ripwright.stock.History;
import ripwright.stock.Species;

/**
 * One clear board, three strips of one width, no test rips and no labor: seven rails and two cleats.
 *
 * <p>By hand: the strips lie at 0, 2 3/8 and 4 3/4; 9 1/4 - 7 leaves 2 1/4, less a kerf 2 1/8. Counted board feet 96 x
 * 9 1/4 / 144 = 6 1/6, at 6.00 that is 37.00. Offcuts 96 x 2 1/8 + 28 1/8 x 2 1/4 + 35 3/4 x 2 1/4 = 347.71875 sq in,
 * half of 6.00 for 2.41471 board feet is 7.24. Crosscuts 4 + 3 + 2, so 6 + 3 x 1.5 + 9 = 19.5 minutes.
 */
final class BenchRails {
    private BenchRails() {}

    static Job job() {
        return new Job(
                "bench rails",
                Unit.INCH,
                Saw.of(IN.length("1/8"), IN.length("1/8")),
                TestRip.NONE,
                new Keep(IN.length("12"), IN.length("2")),
                Map.of(new Species("maple"), new BigDecimal("6.00")),
                new BigDecimal("0.5"),
                Optional.empty(),
                List.of(Board.measured("m1", "maple", IN.length("3/4"), IN.length("9 1/4"), IN.length("96"))
                        .build()),
                List.of(),
                List.of(
                        Part.of("rail", IN.length("22 1/2"), IN.length("2 1/4"), IN.length("3/4"))
                                .count(7)
                                .face(Part.Face.SHOW)
                                .build(),
                        Part.of("cleat", IN.length("30"), IN.length("2 1/4"), IN.length("3/4"))
                                .count(2)
                                .build()),
                Limits.NONE);
    }

    static Sample sample() {
        return new Sample(
                job(),
                new Plan(
                        "bench rails",
                        Unit.INCH,
                        Plan.Status.COMPLETE,
                        cost("37.00", "7.24", "0.00", "29.76", "29.76", "0", true),
                        tally("4.6250", "2.5488", "1.8110", "0.2651", "0.5511", "19.50"),
                        boards(),
                        List.of(IN.setting("R1", "2 1/4")),
                        List.of(),
                        IN.steps()
                                .breakdown("m1", "m1/1")
                                .rip("R1", "m1/1", "S1")
                                .check("R1", "S1")
                                .rip("R1", "m1/1", "S2", "S3", "O1")
                                .stop("30", "S3", "cleat-1", "cleat-2", "O3")
                                .stop("22 1/2", "S1", "rail-1", "rail-2", "rail-3", "rail-4")
                                .stop("22 1/2", "S2", "rail-5", "rail-6", "rail-7", "O2")
                                .list(),
                        List.of(
                                offcut("O1", "m1/1", "2 1/8", "96"),
                                offcut("O2", "S2", "2 1/4", "28 1/8"),
                                offcut("O3", "S3", "2 1/4", "35 3/4")),
                        List.of(),
                        List.of()));
    }

    private static List<CutBoard> boards() {
        return List.of(new CutBoard(
                "m1",
                List.of(IN.section(
                        "m1/1",
                        "0",
                        "96",
                        Edge.LEFT,
                        "0",
                        IN.strip(
                                "S1",
                                "0",
                                "2 1/4",
                                "R1",
                                IN.blank("rail-1", "rail", "0", "22 1/2"),
                                IN.blank("rail-2", "rail", "22 5/8", "22 1/2"),
                                IN.blank("rail-3", "rail", "45 1/4", "22 1/2"),
                                IN.blank("rail-4", "rail", "67 7/8", "22 1/2")),
                        IN.strip(
                                "S2",
                                "2 3/8",
                                "2 1/4",
                                "R1",
                                IN.blank("rail-5", "rail", "0", "22 1/2"),
                                IN.blank("rail-6", "rail", "22 5/8", "22 1/2"),
                                IN.blank("rail-7", "rail", "45 1/4", "22 1/2")),
                        IN.strip(
                                "S3",
                                "4 3/4",
                                "2 1/4",
                                "R1",
                                IN.blank("cleat-1", "cleat", "0", "30"),
                                IN.blank("cleat-2", "cleat", "30 1/8", "30"))))));
    }

    private static Offcut offcut(String id, String from, String width, String length) {
        return new Offcut(
                from,
                Board.measured(id, "maple", IN.length("3/4"), IN.length(width), IN.length(length))
                        .onRack(History.UNKNOWN)
                        .build());
    }
}
