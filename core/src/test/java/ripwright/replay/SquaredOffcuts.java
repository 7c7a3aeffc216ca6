package ripwright.replay;

import static ripwright.replay.LeftLong.inTurn;
import static ripwright.replay.LeftLong.job;
import static ripwright.replay.LeftLong.knot;
import static ripwright.replay.LeftLong.maple;
import static ripwright.replay.LeftLong.offcut;
import static ripwright.replay.LeftLong.part;
import static ripwright.replay.LeftLong.sample;
import static ripwright.replay.LeftLong.square;
import static ripwright.replay.Make.IN;
import static ripwright.replay.Make.cost;
import static ripwright.replay.Make.tally;

import java.util.List;
import ripwright.job.Job;
import ripwright.measure.Length;
import ripwright.plan.Offcut;
import ripwright.stock.Defect;
import ripwright.stock.Edge;

/** Plans that leave sections long, and what their offcuts say of square and of raw ends. */
final class SquaredOffcuts {
    private SquaredOffcuts() {}

    /**
     * What is left behind a blank has one square end, that of the cut, and one raw one, the board's.
     *
     * <p>By hand: 96 - 31 1/8 = 64 7/8 by 3, of which 63 7/8 x 3 / 144 x 4 = 5.32 count. Stock 96 x 4 / 144 x 8 = 21.33. 64 7/8 x
     * 3 x 3/4 / 144 = 1.0137. Crosscuts 2; minutes 6 + 1.5 + 2 = 9.5.
     */
    static Sample squareBehindABlank() {
        return longStrip(
                "1",
                offcut(
                        "S1",
                        maple("O1", "3", "64 7/8")
                                .endTrim(IN.length("0"), IN.length("1"))
                                .squareEnds(1)
                                .defects(List.of(knot("8 7/8", "10 7/8", "0", "1")))));
    }

    /** The same the other way round: as only its far end is square it is turned, and its knot with it. */
    static Sample squareBeforeABlank() {
        return longStrip(
                "65",
                offcut(
                        "S1",
                        maple("O1", "3", "64 7/8")
                                .endTrim(IN.length("0"), IN.length("1"))
                                .squareEnds(1)
                                .defects(List.of(knot("22 7/8", "24 7/8", "2", "3")))));
    }

    private static Sample longStrip(String from, Offcut offcut) {
        Job job = job("long strip")
                .stack(List.of(maple("m", "4", "96")
                        .endTrim(IN.length("1"), IN.length("1"))
                        .defects(List.of(knot("40", "42", "0", "1")))
                        .build()))
                .parts(List.of(part("rail", 1, "30", "3").build()))
                .build();
        return sample(
                job,
                cost("21.33", "5.32", "0", "16.01", "16.01", "0", true),
                tally("2.0000", "0.4688", "1.0137", "0.5175", "0.2344", "9.5"),
                List.of(IN.section(
                        "m/1",
                        "0",
                        "96",
                        Edge.LEFT,
                        "0",
                        IN.strip("S1", "0", "3", "R1", IN.blank("rail-1", "rail", from, "30")))),
                List.of(IN.setting("R1", "3")),
                inTurn(
                        IN.steps().breakdown("m", "m/1").rip("R1", "m/1", "S1").list(),
                        List.of(square("S1")),
                        IN.steps().stop("30", "S1", "rail-1", "O1").list()),
                offcut);
    }

    /**
     * A tapered board whose own ends are square: a blank may start there, and needs no squaring. Its offcuts keep the board's
     * square ends; that of which only the far end is square is turned, with both widths and the knot.
     *
     * <p>By hand: 6 wide at 0, 4 at 60; 5.15 at 25 1/2, 5.145833 at 25 5/8. Beside S1 6 - 3 1/8 = 2.875 to 2.025 are left, 25 1/2
     * long; beyond 25 5/8 34 3/8. The knot at 50 .. 52 lies 4 1/3 - 0 and 4 4/15 - 1 from the right edge at most and least. Worth
     * 25.5 x 2.45 = 62.475 and 34.375 x 4.572917 = 157.194, together 219.669 / 144 x 4 = 6.10; stock 60 x 5 / 144 x 8 = 16.67.
     * Crosscuts 2; minutes 9.5.
     */
    static Sample squareEnds() {
        Job job = job("square ends")
                .stack(List.of(maple("m", "6", "60")
                        .width(IN.length("6"), IN.length("4"))
                        .squareEnds(2)
                        .defects(List.of(knot("50", "52", "0", "1")))
                        .build()))
                .parts(List.of(part("rail", 1, "25", "3").build()))
                .build();
        Length atTheCut = job.boards().get(0).widthAt(IN.length("25 5/8"));
        Defect turned = new Defect(
                IN.length("8"),
                IN.length("10"),
                new Length(IN.length("64").nanometers() / 15 - IN.length("1").nanometers()),
                new Length(IN.length("13").nanometers() / 3),
                "knot",
                Defect.Blocks.SHOW);
        return sample(
                job,
                cost("16.67", "6.10", "0", "10.57", "10.57", "0", true),
                tally("1.5625", "0.3906", "1.1441", "0.0278", "0.2500", "9.5"),
                List.of(IN.section(
                        "m/1",
                        "0",
                        "25 1/2",
                        Edge.LEFT,
                        "0",
                        IN.strip("S1", "0", "3", "R1", IN.blank("rail-1", "rail", "0", "25")))),
                List.of(IN.setting("R1", "3")),
                IN.steps()
                        .breakdown("m", "m/1", "O1")
                        .rip("R1", "m/1", "S1", "O2")
                        .stop("25", "S1", "rail-1")
                        .list(),
                offcut(
                        "m",
                        maple("O1", "4", "34 3/8")
                                .width(IN.length("4"), atTheCut)
                                .squareEnds(1)
                                .defects(List.of(turned))),
                offcut(
                        "m/1",
                        maple("O2", "2.875", "25 1/2")
                                .width(IN.length("2.875"), IN.length("2.025"))
                                .squareEnds(1)));
    }

    /**
     * Ripped stock goes from end to end, over its trims, and is squared too.
     *
     * <p>By hand: 60 x 2 / 144 x 8 = 6.67; beyond 30 5/8 29 3/8 are left, 28 7/8 x 2 / 144 x 4 = 1.60; 29 3/8 x 2 x 3/4 / 144 =
     * 0.3060. No setting, no rip, 2 crosscuts.
     */
    static Sample ripped() {
        Job job = job("ripped")
                .stack(List.of(maple("m", "2", "60")
                        .endTrim(IN.length("1/2"), IN.length("1/2"))
                        .ripped(true)
                        .build()))
                .parts(List.of(part("rail", 1, "30", "2").build()))
                .build();
        return sample(
                job,
                cost("6.67", "1.60", "0", "5.07", "5.07", "0", true),
                tally("0.6250", "0.3125", "0.3060", "0.0065", "0.5000", "2"),
                List.of(IN.section(
                        "m/1",
                        "0",
                        "60",
                        Edge.LEFT,
                        "0",
                        IN.strip("S1", "0", "2", "", IN.blank("rail-1", "rail", "1/2", "30")))),
                List.of(),
                inTurn(
                        IN.steps().breakdown("m", "m/1", "S1").list(),
                        List.of(square("S1")),
                        IN.steps().stop("30", "S1", "rail-1", "O1").list()),
                offcut(
                        "S1",
                        maple("O1", "2", "29 3/8")
                                .endTrim(IN.length("0"), IN.length("1/2"))
                                .squareEnds(1)));
    }
}
