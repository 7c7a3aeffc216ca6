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
 * One strip off a tapered board, exactly as long as its one blank; what is left is tapered, too.
 *
 * <p>By hand: 10 - 4 - 1/8 = 5 7/8 at the marked end, 8 - 4 - 1/8 = 3 7/8 at the other, 4 7/8 in the mean. Stock 60 x 9
 * / 144 x 6 = 22.50; salvage 60 x 4 7/8 / 144 x 3 = 6.09; one setting and one rip are 7.5 minutes.
 */
final class TaperedLeg {
    private TaperedLeg() {}

    static Job job() {
        return new Job(
                "leg",
                Unit.INCH,
                Saw.of(IN.length("1/8"), IN.length("1/8")),
                TestRip.NONE,
                new Keep(IN.length("12"), IN.length("2")),
                Map.of(new Species("maple"), new BigDecimal("6")),
                new BigDecimal("0.5"),
                Optional.empty(),
                List.of(Board.measured("m3", "maple", IN.length("3/4"), IN.length("10"), IN.length("60"))
                        .width(IN.length("10"), IN.length("8"))
                        .build()),
                List.of(),
                List.of(Part.of("leg", IN.length("60"), IN.length("4"), IN.length("3/4"))
                        .build()),
                Limits.NONE);
    }

    static Sample sample() {
        return new Sample(
                job(),
                new Plan(
                        "leg",
                        Unit.INCH,
                        Plan.Status.COMPLETE,
                        cost("22.50", "6.09", "0", "16.41", "16.41", "0", true),
                        tally("2.8125", "1.25", "1.5234", "0.0391", "0.4444", "7.5"),
                        List.of(new CutBoard(
                                "m3",
                                List.of(IN.section(
                                        "m3/1",
                                        "0",
                                        "60",
                                        Edge.LEFT,
                                        "0",
                                        IN.strip("S1", "0", "4", "R1", IN.blank("leg-1", "leg", "0", "60")))))),
                        List.of(IN.setting("R1", "4")),
                        List.of(),
                        IN.steps()
                                .breakdown("m3", "m3/1")
                                .rip("R1", "m3/1", "S1", "O1")
                                .stop("60", "S1", "leg-1")
                                .list(),
                        List.of(new Offcut(
                                "m3/1",
                                Board.measured("O1", "maple", IN.length("3/4"), IN.length("5 7/8"), IN.length("60"))
                                        .width(IN.length("5 7/8"), IN.length("3 7/8"))
                                        .onRack(History.UNKNOWN)
                                        .build())),
                        List.of(),
                        List.of()));
    }
}
