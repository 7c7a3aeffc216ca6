package ripwright.replay;

import static ripwright.replay.Make.IN;
import static ripwright.replay.Make.cost;
import static ripwright.replay.Make.tally;

import java.util.List;
import ripwright.job.Breakdown;
import ripwright.job.Job;
import ripwright.stock.Edge;

/**
 * Two blanks as long as their strips, one of a fitted part: neither is cut; between them one at a stop.
 *
 * <p>By hand: 40 x 6.875 / 144 x 8 = 15.28; consumed 1.4323, parts (120 + 80 + 45) x 3/4 / 144 = 1.2760. One crosscut; minutes 3 x
 * 6 + 3 x 1.5 + 1 = 23.5.
 */
final class WholeStrips {
    private WholeStrips() {}

    static Sample sample() {
        Job job = LeftLong.job("whole strips")
                .breakdown(Breakdown.EXACT)
                .stack(List.of(LeftLong.maple("m", "6 7/8", "40").build()))
                .parts(List.of(
                        LeftLong.part("rail", 1, "40", "3").build(),
                        LeftLong.part("cleat", 1, "40", "2").fitted(true).build(),
                        LeftLong.part("peg", 1, "30", "1 1/2").build()))
                .build();
        return LeftLong.sample(
                job,
                cost("15.28", "0", "0", "15.28", "15.28", "0", true),
                tally("1.4323", "1.2760", "0", "0.1563", "0.8909", "23.5"),
                List.of(IN.section(
                        "m/1",
                        "0",
                        "40",
                        Edge.LEFT,
                        "0",
                        IN.strip("S1", "0", "3", "R1", IN.blank("rail-1", "rail", "0", "40")),
                        IN.strip("S2", "3 1/8", "2", "R2", IN.blank("cleat-1", "cleat", "0", "40")),
                        IN.strip("S3", "5 1/4", "1 1/2", "R3", IN.blank("peg-1", "peg", "0", "30")))),
                List.of(IN.setting("R1", "3"), IN.setting("R2", "2"), IN.setting("R3", "1 1/2")),
                LeftLong.inTurn(
                        IN.steps()
                                .breakdown("m", "m/1")
                                .rip("R1", "m/1", "S1")
                                .rip("R2", "m/1", "S2")
                                .rip("R3", "m/1", "S3")
                                .list(),
                        List.of(LeftLong.uncut("S1", "rail-1")),
                        IN.steps().stop("30", "S3", "peg-1").list(),
                        List.of(LeftLong.uncutFitted("S2", "cleat-1"))));
    }

    /** The same with something left over at the ends of sections: here they are the board's own, and square. */
    static Sample ofASquareBoard() {
        Sample whole = sample();
        Job job = whole.job().toBuilder()
                .breakdown(new Breakdown(IN.length("1/2")))
                .stack(List.of(LeftLong.maple("m", "6 7/8", "40").squareEnds(2).build()))
                .build();
        return new Sample(job, whole.plan());
    }
}
