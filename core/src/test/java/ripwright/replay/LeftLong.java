package ripwright.replay;

import static ripwright.replay.Make.IN;
import static ripwright.replay.Make.cost;
import static ripwright.replay.Make.tally;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import ripwright.bill.Part;
import ripwright.job.Breakdown;
import ripwright.job.Job;
import ripwright.job.Keep;
import ripwright.measure.Length;
import ripwright.plan.Blank;
import ripwright.plan.Cost;
import ripwright.plan.CutBoard;
import ripwright.plan.Offcut;
import ripwright.plan.Plan;
import ripwright.plan.Section;
import ripwright.plan.Setting;
import ripwright.plan.Step;
import ripwright.plan.Strip;
import ripwright.plan.Tally;
import ripwright.saw.Saw;
import ripwright.saw.TestRip;
import ripwright.stock.Board;
import ripwright.stock.Defect;
import ripwright.stock.Edge;
import ripwright.stock.History;
import ripwright.stock.Species;

/** Plans whose sections are left 1/2 in long at their ends and squared once they are ripped; kerfs of 1/8 in. */
final class LeftLong {
    private LeftLong() {}

    /** Of maple at 8.00, offcuts from 12 by 2 at half of that. */
    static Job.Builder job(String name) {
        return Job.builder(name, Saw.of(IN.length("1/8"), IN.length("1/8")), new Keep(IN.length("12"), IN.length("2")))
                .breakdown(new Breakdown(IN.length("1/2")))
                .testRip(TestRip.NONE)
                .price(new Species("maple"), new BigDecimal("8"))
                .salvage(new BigDecimal("0.5"));
    }

    static Board.Builder maple(String id, String width, String length) {
        return Board.measured(id, "maple", IN.length("3/4"), IN.length(width), IN.length(length));
    }

    static Part.Builder part(String name, int count, String length, String width) {
        return Part.of(name, IN.length(length), IN.length(width), IN.length("3/4"))
                .count(count);
    }

    static Offcut offcut(String from, Board.Builder piece) {
        return new Offcut(from, piece.onRack(History.UNKNOWN).build());
    }

    static Step square(String strip) {
        return step(Optional.of(Step.Saw.CROSSCUT), Step.Does.SQUARE, strip, List.of(), Optional.empty());
    }

    /** A blank as long as its strip, which is not cut. */
    static Step uncut(String strip, String blank) {
        return step(Optional.empty(), Step.Does.BLANK, strip, List.of(blank), Optional.empty());
    }

    /** The same of a fitted part. */
    static Step uncutFitted(String strip, String blank) {
        return step(Optional.empty(), Step.Does.BLANK, strip, List.of(blank), Optional.of(Length.ZERO));
    }

    private static Step step(
            Optional<Step.Saw> saw, Step.Does does, String piece, List<String> makes, Optional<Length> spare) {
        return new Step(1, saw, does, Optional.empty(), Optional.empty(), piece, makes, spare);
    }

    /** One after the other, numbered anew. */
    @SafeVarargs
    static List<Step> inTurn(List<Step>... parts) {
        List<Step> steps = new ArrayList<>();
        for (List<Step> part : parts)
            for (Step s : part)
                steps.add(new Step(
                        steps.size() + 1, s.saw(), s.does(), s.setting(), s.stop(), s.piece(), s.makes(), s.spare()));
        return steps;
    }

    static Sample sample(
            Job job,
            Cost cost,
            Tally tally,
            List<Section> sections,
            List<Setting> settings,
            List<Step> steps,
            Offcut... offcuts) {
        String board = job.boards().get(0).id();
        return new Sample(
                job,
                new Plan(
                        job.name(),
                        job.units(),
                        Plan.Status.COMPLETE,
                        cost,
                        tally,
                        List.of(new CutBoard(board, sections)),
                        settings,
                        List.of(),
                        steps,
                        List.of(offcuts),
                        List.of(),
                        List.of()));
    }

    /**
     * A board 61 5/8 long, trims 1 and 1, four strips of two blanks 28 9/16; those of the last one are fitted.
     *
     * <p>By hand: no cut at break-down; four squarings and eight ends of blanks are 12 crosscuts; minutes 6 + 4 x 1.5 + 12
     * = 24. Beyond the blanks 61 5/8 - 58 3/8 = 3 1/4 are waste, and so is the rip kerf beside S4. Stock 61.625 x 8.5 / 144 x
     * 8 = 29.10; parts 8 x 28.5625 x 2 x 3/4 / 144 = 2.3802. The first of two fitted ones: 59.625 - 28.5625 - 28.6875 =
     * 2.375 to spare at most, as the other may move along; none where it may not. The second 30.9375 - 28.5625 = 2.375.
     */
    static Sample fourStrips() {
        Job job = job("four strips")
                .stack(List.of(maple("m", "8 1/2", "61 5/8")
                        .endTrim(IN.length("1"), IN.length("1"))
                        .build()))
                .parts(List.of(
                        part("rail", 6, "28 9/16", "2").build(),
                        part("lip", 2, "28 9/16", "2").fitted(true).build()))
                .build();
        Section section = IN.section(
                "m/1",
                "0",
                "61 5/8",
                Edge.LEFT,
                "0",
                twoBlanks("S1", "0", "rail", 1),
                twoBlanks("S2", "2 1/8", "rail", 3),
                twoBlanks("S3", "4 1/4", "rail", 5),
                twoBlanks("S4", "6 3/8", "lip", 1));
        return sample(
                job,
                cost("29.10", "0", "0", "29.10", "29.10", "0", true),
                tally("2.7282", "2.3802", "0", "0.3480", "0.8724", "24"),
                List.of(section),
                List.of(IN.setting("R1", "2")),
                inTurn(
                        IN.steps()
                                .breakdown("m", "m/1")
                                .rip("R1", "m/1", "S1")
                                .check("R1", "S1")
                                .rip("R1", "m/1", "S2", "S3", "S4")
                                .list(),
                        List.of(square("S1"), square("S2"), square("S3"), square("S4")),
                        IN.steps()
                                .stop("28 9/16", "S1", "rail-1", "rail-2")
                                .stop("28 9/16", "S2", "rail-3", "rail-4")
                                .stop("28 9/16", "S3", "rail-5", "rail-6")
                                .fitted("2 3/8", "S4", "lip-1")
                                .fitted("2 3/8", "S4", "lip-2")
                                .list()));
    }

    private static Strip twoBlanks(String id, String offset, String part, int first) {
        Blank one = IN.blank(part + "-" + first, part, "1", "28 9/16");
        Blank other = IN.blank(part + "-" + (first + 1), part, "29 11/16", "28 9/16");
        return IN.strip(id, offset, "2", "R1", one, other);
    }

    /**
     * A board 52 long, trims 1 and 1, with one blank 25 9/16: 1 + 25 9/16 + 1/2 = 27 1/16, up to the next eighth, so the section
     * ends at 27 1/8 and the offcut is 27 1/4 .. 52.
     *
     * <p>By hand: crosscuts 1 at break-down and 2 of the blank, minutes 6 + 1.5 + 3 = 10.5. Stock 52 x 4 / 144 x 8 = 11.56; the
     * offcut 23 3/4 x 4 / 144 x 8 / 2 = 2.64; 24 3/4 x 4 x 3/4 / 144 = 0.5156 board feet; the part 25.5625 x 3 x 3/4 / 144 =
     * 0.3994.
     */
    static Sample toTheNextEighth() {
        Job job = job("next eighth")
                .stack(List.of(maple("m", "4", "52")
                        .endTrim(IN.length("1"), IN.length("1"))
                        .build()))
                .parts(List.of(part("rail", 1, "25 9/16", "3").build()))
                .build();
        return sample(
                job,
                cost("11.56", "2.64", "0", "8.92", "8.92", "0", true),
                tally("1.0833", "0.3994", "0.5156", "0.1683", "0.3687", "10.5"),
                List.of(IN.section(
                        "m/1",
                        "0",
                        "27 1/8",
                        Edge.LEFT,
                        "0",
                        IN.strip("S1", "0", "3", "R1", IN.blank("rail-1", "rail", "1", "25 9/16")))),
                List.of(IN.setting("R1", "3")),
                inTurn(
                        IN.steps()
                                .breakdown("m", "m/1", "O1")
                                .rip("R1", "m/1", "S1")
                                .list(),
                        List.of(square("S1")),
                        IN.steps().stop("25 9/16", "S1", "rail-1").list()),
                offcut("m", maple("O1", "4", "24 3/4").endTrim(IN.length("0"), IN.length("1"))));
    }

    static Defect knot(String from, String to, String left, String right) {
        return new Defect(
                IN.length(from), IN.length(to), IN.length(left), IN.length(right), "knot", Defect.Blocks.SHOW);
    }

    /**
     * A section in the middle of its board, behind a knot: cut at 2 and 28, on either side a leftover.
     *
     * <p>By hand: 2 + 1/2 + 25 = 27 1/2, and 1/2 again is 28. Stock 51 x 4 / 144 x 8 = 11.33. Before it 1 7/8 are waste, beyond
     * 28 1/8 22 7/8 are left, 21 7/8 x 4 / 144 x 4 = 2.43; 22 7/8 x 4 x 3/4 / 144 = 0.4766. Crosscuts 2 + 2, minutes 11.5.
     */
    static Sample behindADefect() {
        Job job = job("behind a defect")
                .stack(List.of(maple("m", "4", "51")
                        .endTrim(IN.length("1"), IN.length("1"))
                        .defects(List.of(knot("0", "2", "0", "4")))
                        .build()))
                .parts(List.of(part("rail", 1, "25", "3").face(Part.Face.SHOW).build()))
                .build();
        return sample(
                job,
                cost("11.33", "2.43", "0", "8.90", "8.90", "0", true),
                tally("1.0625", "0.3906", "0.4766", "0.1953", "0.3676", "11.5"),
                List.of(IN.section(
                        "m/1",
                        "2",
                        "28",
                        Edge.LEFT,
                        "0",
                        IN.strip("S1", "0", "3", "R1", IN.blank("rail-1", "rail", "2 1/2", "25")))),
                List.of(IN.setting("R1", "3")),
                inTurn(
                        IN.steps()
                                .breakdown("m", "m/1", "O2")
                                .rip("R1", "m/1", "S1")
                                .list(),
                        List.of(square("S1")),
                        IN.steps().stop("25", "S1", "rail-1").list()),
                offcut("m", maple("O2", "4", "22 7/8").endTrim(IN.length("0"), IN.length("1"))));
    }

    /**
     * In millimeters a reading is whole 5 mm: 20 + 600 + 12 = 632, so the section ends at 635.
     *
     * <p>By hand: 800 x 100 / 92903.04 square feet x 8 = 6.89; beyond 638 162 are too short to be kept. Parts 600 x 60 x 20 /
     * 2359737.216 = 0.3051, consumed 800 x 100 x 20 / 2359737.216 = 0.6780. Crosscuts 1 + 2, minutes 10.5.
     */
    static Sample millimeters() {
        Make mm = Make.MM;
        Job job = Job.builder(
                        "millimeters",
                        Saw.of(mm.length("3"), mm.length("3")),
                        new Keep(mm.length("300"), mm.length("50")))
                .units(mm.unit())
                .breakdown(new Breakdown(mm.length("12")))
                .testRip(TestRip.NONE)
                .price(new Species("maple"), new BigDecimal("8"))
                .stack(List.of(Board.measured("m", "maple", mm.length("20"), mm.length("100"), mm.length("800"))
                        .endTrim(mm.length("20"), mm.length("20"))
                        .build()))
                .parts(List.of(Part.of("rail", mm.length("600"), mm.length("60"), mm.length("20"))
                        .build()))
                .build();
        return sample(
                job,
                cost("6.89", "0", "0", "6.89", "6.89", "0", true),
                tally("0.6780", "0.3051", "0", "0.3729", "0.4500", "10.5"),
                List.of(mm.section(
                        "m/1",
                        "0",
                        "635",
                        Edge.LEFT,
                        "0",
                        mm.strip("S1", "0", "60", "R1", mm.blank("rail-1", "rail", "20", "600")))),
                List.of(mm.setting("R1", "60")),
                inTurn(
                        mm.steps().breakdown("m", "m/1").rip("R1", "m/1", "S1").list(),
                        List.of(square("S1")),
                        mm.steps().stop("600", "S1", "rail-1").list()));
    }
}
