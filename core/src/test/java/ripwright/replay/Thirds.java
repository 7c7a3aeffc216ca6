package ripwright.replay;

import static ripwright.replay.Make.IN;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import ripwright.bill.Part;
import ripwright.job.Job;
import ripwright.job.Keep;
import ripwright.job.Limits;
import ripwright.measure.Length;
import ripwright.measure.Unit;
import ripwright.plan.Blank;
import ripwright.plan.CutBoard;
import ripwright.plan.Offcut;
import ripwright.plan.Plan;
import ripwright.plan.Section;
import ripwright.plan.Strip;
import ripwright.saw.Saw;
import ripwright.saw.TestRip;
import ripwright.stock.Board;
import ripwright.stock.Edge;
import ripwright.stock.History;
import ripwright.stock.Species;

/**
 * Lengths that are no whole number of 64ths, nor of the millionths of an inch a file has: thirds of an inch and kerfs
 * of 2.4 mm, on a board that bows.
 *
 * <p>By hand, in nanometers: 7 1/3 in is 186 266 667, 2 1/3 in 59 266 667, the kerf 2 400 000. The board bows 0.3 in =
 * 7 620 000 over 50 in; its section of 40 in loses 7 620 000 x 0.64 = 4 876 800. The strips lie at 0, 61 666 667 and
 * 123 333 334 and end at 182 600 001, 187 476 801 from the raw edge; of 220 000 000 less a kerf 30 123 199 are left
 * beside them. Along the grain blanks start at 0, 188 666 667 and 377 333 334. Strips and what is beside them are too
 * narrow to be kept; the full-width end of 10 in less a kerf is kept, and bows 7 620 000 x (251.6 / 1270)^2 = 299
 * 067.2, so 299 068.
 */
final class Thirds {
    private Thirds() {}

    private static Length nm(long nanometers) {
        return new Length(nanometers);
    }

    static Job job() {
        return new Job(
                "thirds",
                Unit.INCH,
                Saw.of(IN.length("2.4 mm"), IN.length("2.4 mm")),
                TestRip.NONE,
                new Keep(IN.length("9"), IN.length("2 1/2")),
                Map.of(new Species("pear"), new BigDecimal("12.35")),
                new BigDecimal("0.3"),
                Optional.empty(),
                List.of(Board.measured("p1", "pear", IN.length("20 mm"), IN.length("220 mm"), IN.length("50"))
                        .edges(0, IN.length("0.1"), IN.length("0.3"))
                        .build()),
                List.of(),
                List.of(Part.of("tile", IN.length("7 1/3"), IN.length("2 1/3"), IN.length("20 mm"))
                        .count(9)
                        .build()),
                Limits.NONE);
    }

    static Sample sample() {
        long offset = 61_666_667;
        long from = 188_666_667;
        Strip[] strips = new Strip[3];
        for (int i = 0; i < 3; i++) {
            Blank[] blanks = new Blank[3];
            for (int j = 0; j < 3; j++) blanks[j] = new Blank("t" + i + j, "tile", nm(from * j), IN.length("7 1/3"));
            strips[i] = new Strip("S" + i, nm(offset * i), IN.length("2 1/3"), Optional.of("R1"), List.of(blanks));
        }
        return new Sample(
                job(),
                new Plan(
                        "thirds",
                        Unit.INCH,
                        Plan.Status.COMPLETE,
                        Make.cost("37.14", "2.21", "0", "34.93", "30.00", "0.1412", false),
                        Make.tally("2.3681", "0.8421", "0.4691", "1.0568", "0.3556", "22.00"),
                        List.of(new CutBoard(
                                "p1",
                                List.of(new Section(
                                        "p1/1",
                                        Length.ZERO,
                                        IN.length("40"),
                                        Edge.RIGHT,
                                        nm(4_876_800),
                                        List.of(strips))))),
                        List.of(IN.setting("R1", "2 1/3")),
                        List.of(),
                        IN.steps()
                                .breakdown("p1", "p1/1", "O1")
                                .straighten("p1/1")
                                .rip("R1", "p1/1", "S0")
                                .check("R1", "S0")
                                .rip("R1", "p1/1", "S1", "S2")
                                .stop("7 1/3", "S0", "t00", "t01", "t02")
                                .stop("7 1/3", "S1", "t10", "t11", "t12")
                                .stop("7 1/3", "S2", "t20", "t21", "t22")
                                .list(),
                        List.of(new Offcut(
                                "p1",
                                Board.measured("O1", "pear", IN.length("20 mm"), IN.length("220 mm"), nm(251_600_000))
                                        .edges(0, IN.length("0.1"), nm(299_068))
                                        .onRack(History.UNKNOWN)
                                        .build())),
                        List.of(),
                        List.of()));
    }
}
