package ripwright.replay;

import static ripwright.replay.Make.IN;
import static ripwright.replay.Make.cost;
import static ripwright.replay.Make.tally;

import java.math.BigDecimal;
import java.util.List;
import ripwright.bill.Part;
import ripwright.bill.Tenon;
import ripwright.job.Breakdown;
import ripwright.job.Job;
import ripwright.plan.CutBoard;
import ripwright.plan.Plan;
import ripwright.plan.TestBlank.Source;
import ripwright.saw.TestRip;
import ripwright.stock.Board;
import ripwright.stock.Edge;
import ripwright.stock.History;

/**
 * A width that must be proved, on scrap kept for that alone, and one that need not be; the rail has two tenons of 1 in.
 *
 * <p>By hand: the scrap costs nothing, though its wood has a price; T1 leaves 20 - 6 1/8 = 13 7/8 by 4, smaller than what is kept
 * of other wood. Stock 40 x 5.25 / 144 x 8 = 11.67. Consumed (210 + 80) x 3/4 / 144 = 1.5104, parts 30 x 5 x 3/4 / 144 = 0.78125,
 * offcut 55.5 x 3/4 / 144 = 0.2891; the printed figures leave 0.4400. Crosscuts 2 + 1; minutes 2 x 6 + (2 + 1) x 1.5 + 3 =
 * 19.5.
 */
final class TestScrap {
    private TestScrap() {}

    static Job job() {
        return LeftLong.job("scrap")
                .breakdown(Breakdown.EXACT)
                .testRip(new TestRip(IN.length("6"), 1))
                .stack(List.of(LeftLong.maple("m", "5 1/4", "40").build()))
                .rack(List.of(scrap().onRack(History.UNKNOWN).build()))
                .parts(List.of(
                        LeftLong.part("rail", 1, "28", "3")
                                .tenon(Tenon.both(IN.length("1")))
                                .build(),
                        cleat().tested(false).build()))
                .build();
    }

    static Part.Builder cleat() {
        return LeftLong.part("cleat", 1, "30", "2");
    }

    static Board.Builder scrap() {
        return LeftLong.maple("s1", "4", "20").price(new BigDecimal("10")).testOnly(true);
    }

    static Sample sample() {
        return new Sample(
                job(),
                new Plan(
                        "scrap",
                        IN.unit(),
                        Plan.Status.COMPLETE,
                        cost("11.67", "0", "0", "11.67", "11.67", "0", true),
                        tally("1.5104", "0.7813", "0.2891", "0.4400", "0.5172", "19.5"),
                        List.of(
                                new CutBoard(
                                        "m",
                                        List.of(IN.section(
                                                "m/1",
                                                "0",
                                                "40",
                                                Edge.LEFT,
                                                "0",
                                                IN.strip("S1", "0", "3", "R1", IN.blank("rail-1", "rail", "0", "30")),
                                                IN.strip(
                                                        "S2",
                                                        "3 1/8",
                                                        "2",
                                                        "R2",
                                                        IN.blank("cleat-1", "cleat", "0", "30"))))),
                                new CutBoard("s1", List.of())),
                        List.of(IN.setting("R1", "3", "T1", Source.RACK), IN.setting("R2", "2")),
                        List.of(IN.testBlank("T1", "s1", Source.RACK, "4", "6", "3/4", "maple", "R1")),
                        IN.steps()
                                .breakdown("m", "m/1")
                                .breakdown("s1", "T1", "O1")
                                .test("R1", "T1")
                                .rip("R1", "m/1", "S1")
                                .rip("R2", "m/1", "S2")
                                .stop("30", "S1", "rail-1")
                                .stop("30", "S2", "cleat-1")
                                .list(),
                        List.of(LeftLong.offcut(
                                "s1", LeftLong.maple("O1", "4", "13 7/8").testOnly(true))),
                        List.of(),
                        List.of()));
    }
}
