package ripwright.replay;

import static ripwright.replay.Make.IN;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import ripwright.bill.Part;
import ripwright.job.Job;
import ripwright.job.Keep;
import ripwright.job.Limits;
import ripwright.measure.Unit;
import ripwright.plan.Blank;
import ripwright.plan.CutBoard;
import ripwright.plan.Plan;
import ripwright.plan.Strip;
import ripwright.saw.Saw;
import ripwright.saw.TestRip;
import ripwright.stock.Board;
import ripwright.stock.Edge;
import ripwright.stock.Species;

/**
 * 310 boards alike, 8 slats from each: 2,480 in all.
 *
 * <p>By hand, for one board: 37.00, 8 crosscuts, 2 rips, 4.625 board feet for 8 slats of 15/32 each. 5 1/2 of each
 * strip and 1 beside them are waste.
 */
final class ManyBoards {
    private static final int BOARDS = 310;

    private ManyBoards() {}

    static Sample sample() {
        Job job = new Job(
                "many boards",
                Unit.INCH,
                Saw.of(IN.length("1/8"), IN.length("1/8")),
                TestRip.NONE,
                new Keep(IN.length("12"), IN.length("2")),
                Map.of(new Species("maple"), new BigDecimal("6.00")),
                new BigDecimal("0.5"),
                Optional.empty(),
                IntStream.range(0, BOARDS)
                        .mapToObj(i -> Board.measured(
                                        "m#" + i, "maple", IN.length("3/4"), IN.length("9 1/4"), IN.length("96"))
                                .build())
                        .toList(),
                List.of(),
                List.of(Part.of("slat", IN.length("22 1/2"), IN.length("4"), IN.length("3/4"))
                        .count(BOARDS * 8)
                        .build()),
                Limits.NONE);
        List<CutBoard> boards = new ArrayList<>();
        Make.Steps steps = IN.steps();
        for (int i = 0; i < BOARDS; i++) {
            boards.add(new CutBoard(
                    "m#" + i,
                    List.of(IN.section(
                            "m#" + i + "/1",
                            "0",
                            "96",
                            Edge.LEFT,
                            "0",
                            strip(2 * i, "0"),
                            strip(2 * i + 1, "4 1/8")))));
            steps.breakdown("m#" + i, "m#" + i + "/1");
        }
        steps.rip("R1", "m#0/1", "S0").check("R1", "S0").rip("R1", "m#0/1", "S1");
        for (int i = 1; i < BOARDS; i++) steps.rip("R1", "m#" + i + "/1", "S" + 2 * i, "S" + (2 * i + 1));
        for (int i = 0; i < 2 * BOARDS; i++) {
            int first = 4 * i;
            steps.stop("22 1/2", "S" + i, "b" + first, "b" + (first + 1), "b" + (first + 2), "b" + (first + 3));
        }
        return new Sample(
                job,
                new Plan(
                        "many boards",
                        Unit.INCH,
                        Plan.Status.COMPLETE,
                        Make.cost("11470.00", "0.00", "0.00", "11470.00", "11000.00", "0.0410", false),
                        Make.tally("1433.7500", "1162.5000", "0.0000", "271.2500", "0.8108", "3416.00"),
                        boards,
                        List.of(IN.setting("R1", "4")),
                        List.of(),
                        steps.list(),
                        List.of(),
                        List.of(),
                        List.of()));
    }

    private static Strip strip(int number, String offset) {
        int first = 4 * number;
        return IN.strip(
                "S" + number,
                offset,
                "4",
                "R1",
                blank(first, "0"),
                blank(first + 1, "22 5/8"),
                blank(first + 2, "45 1/4"),
                blank(first + 3, "67 7/8"));
    }

    private static Blank blank(int number, String from) {
        return IN.blank("b" + number, "slat", from, "22 1/2");
    }
}
