package ripwright.replay;

import static ripwright.replay.Make.IN;
import static ripwright.replay.Make.cost;
import static ripwright.replay.Make.tally;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import ripwright.bill.Part;
import ripwright.job.Job;
import ripwright.job.Keep;
import ripwright.job.Limits;
import ripwright.measure.Length;
import ripwright.measure.Unit;
import ripwright.plan.Caution;
import ripwright.plan.CutBoard;
import ripwright.plan.Offcut;
import ripwright.plan.Plan;
import ripwright.plan.Step;
import ripwright.plan.TestBlank;
import ripwright.plan.TestBlank.Source;
import ripwright.saw.Labor;
import ripwright.saw.Saw;
import ripwright.saw.TestRip;
import ripwright.stock.Board;
import ripwright.stock.Defect;
import ripwright.stock.Defect.Blocks;
import ripwright.stock.Edge;
import ripwright.stock.History;
import ripwright.stock.Species;

/**
 * All at once: a tapered rough board, a crooked one broken down, ripped stock, a rack offcut for test wood, two
 * settings closer than a kerf, every limit of the saw, parts together, fitted, sneaked up on, and labor.
 *
 * <p>By hand:
 *
 * <ul>
 *   <li>ash-1 is 8 - x/100 wide at x. Its section 1 .. 51 is 7.49 wide, its other edge loses 1/8; strips 4 and 3 reach
 *       7 1/8. T4 is cut from the near end of what is left, 51 1/8 .. 63 1/8; O1 is 63 1/4 .. 100, 7.3675 to 7 wide.
 *   <li>ash-2 bows 1/2 over 96. Over 48 it bows 1/8, over 30 less than its edge loss of 1/16. Beside S3, 7 - 1/8 - 4
 *       less a kerf is 2 3/4 (O2). Beside S5, on the right, 7 - 1/16 - 3 15/16 less a kerf is 2 7/8; only its right
 *       edge is straight, so O3 is turned: its crook 1/2 x (30/96)^2 = 0.048828125, the knot at 78 1/8 - 62 = 16 1/8
 *       and 2 7/8 - 2 = 7/8. The far end from 78 1/4 is 17 3/4, less the trim of 2 under the 16 that are kept:
 *       waste, and T3.
 *   <li>stock 750/144 x 8 + 672/144 x 8 + 120/144 x 8 + 150/144 x 6 x 0.4 = 88.17; salvage 36 1/4 x 7.18375/144 x 3.2 +
 *       48 x 2 3/4/144 x 3.2 + (30 x 2 7/8 - 2)/144 x 3.2 = 10.59.
 *   <li>crosscuts: sections 2 + 2 + 2, blanks 3 + 2 + 2 + 2 + 2 + 4, test blanks 4: 25. Minutes 4 x 6 + (5 strips + 2
 *       straightened + 4 tested) x 1.5 + 25 = 65.5, at 30.00 an hour 32.75.
 * </ul>
 */
final class HallBench {
    private HallBench() {}

    static Job job() {
        return new Job(
                "hall bench",
                Unit.INCH,
                new Saw(
                        IN.length("1/8"),
                        IN.length("1/8"),
                        Optional.of(IN.length("60")),
                        Optional.of(IN.length("12")),
                        Optional.of(IN.length("1")),
                        Optional.of(IN.length("8"))),
                new TestRip(IN.length("12"), 2),
                new Keep(IN.length("16"), IN.length("2 1/2")),
                Map.of(new Species("ash"), new BigDecimal("8.00"), new Species("maple"), new BigDecimal("6.00")),
                new BigDecimal("0.4"),
                Optional.of(new Labor(
                        new BigDecimal("30"), new BigDecimal("6"), new BigDecimal("1.5"), new BigDecimal("1"))),
                stack(),
                List.of(Board.measured("mpl-1", "maple", IN.length("3/4"), IN.length("5"), IN.length("30"))
                        .onRack(History.UNKNOWN)
                        .build()),
                bill(),
                Limits.NONE);
    }

    private static List<Board> stack() {
        return List.of(
                Board.measured("ash-1", "ash", IN.length("1"), IN.length("8"), IN.length("100"))
                        .rough(IN.length("1"), IN.length("3/4"))
                        .width(IN.length("8"), IN.length("7"))
                        .edges(1, IN.length("1/8"), Length.ZERO)
                        .endTrim(IN.length("1"), IN.length("1/2"))
                        .defects(List.of(knot("20", "22", "1", "2", Blocks.SHOW)))
                        .build(),
                Board.measured("ash-2", "Ash", IN.length("3/4"), IN.length("7"), IN.length("96"))
                        .edges(0, IN.length("1/16"), IN.length("1/2"))
                        .endTrim(Length.ZERO, IN.length("2"))
                        .defects(List.of(knot("60", "62", "1", "2", Blocks.ALL)))
                        .build(),
                Board.measured("ash-3", "ash", IN.length("3/4"), IN.length("2"), IN.length("60"))
                        .endTrim(IN.length("1/2"), IN.length("1/2"))
                        .defects(List.of(knot("33", "34", "0", "1", Blocks.ALL)))
                        .ripped(true)
                        .build());
    }

    private static Defect knot(String from, String to, String left, String right, Blocks blocks) {
        return new Defect(IN.length(from), IN.length(to), IN.length(left), IN.length(right), "knot", blocks);
    }

    private static Part.Builder ashPart(String name, String length, String width) {
        return Part.of(name, IN.length(length), IN.length(width), IN.length("3/4"))
                .species(Set.of(new Species("ash")));
    }

    private static List<Part> bill() {
        return List.of(
                ashPart("apron", "25 1/2", "3 7/8")
                        .count(2)
                        .face(Part.Face.SHOW)
                        .sneakUp(IN.length("1/2"))
                        .edgeAllowance(IN.length("1/8"))
                        .build(),
                ashPart("block", "20", "4").count(2).build(),
                ashPart("rail", "24", "3")
                        .count(2)
                        .face(Part.Face.SHOW)
                        .together("rails")
                        .build(),
                ashPart("slat", "14", "2 15/16").count(2).build(),
                ashPart("bead", "20", "7/8").build(),
                ashPart("plug", "4", "7/8").build(),
                ashPart("filler", "10", "2").build(),
                ashPart("lip", "20", "2").fitted(true).build(),
                ashPart("tongue", "20", "2").fitted(true).build());
    }

    static Sample sample() {
        return new Sample(
                job(),
                new Plan(
                        "hall bench",
                        Unit.INCH,
                        Plan.Status.COMPLETE,
                        cost("88.17", "10.59", "32.75", "110.33", "100.00", "0.0937", false),
                        tally("10.1146", "3.6712", "2.9701", "3.4733", "0.3630", "65.50"),
                        boards(),
                        List.of(
                                IN.setting("R1", "4", "T1", Source.RACK),
                                IN.setting("R2", "3", "T2", Source.RACK),
                                IN.setting("R3", "2 15/16", "T3", Source.WASTE),
                                IN.setting("R4", "7/8", "T1", Source.RACK)),
                        testBlanks(),
                        steps(),
                        offcuts(),
                        List.of(),
                        List.of(
                                new Caution(List.of(18), "S5 is narrow: push stick and featherboard."),
                                new Caution(List.of(27), "The plug is short: clamp a stop, keep hands off."),
                                new Caution(List.of(), "Straight edge to the fence."))));
    }

    private static List<CutBoard> boards() {
        return List.of(
                new CutBoard(
                        "ash-1",
                        List.of(IN.section(
                                "ash-1/1",
                                "1",
                                "51",
                                Edge.LEFT,
                                "0",
                                IN.strip(
                                        "S1",
                                        "0",
                                        "4",
                                        "R1",
                                        IN.blank("block-1", "block", "1", "20"),
                                        IN.blank("apron-1", "apron", "22", "26")),
                                IN.strip(
                                        "S2",
                                        "4 1/8",
                                        "3",
                                        "R2",
                                        IN.blank("rail-1", "rail", "1", "24"),
                                        IN.blank("rail-2", "rail", "25 1/8", "24"))))),
                new CutBoard(
                        "ash-2",
                        List.of(
                                IN.section(
                                        "ash-2/1",
                                        "0",
                                        "48",
                                        Edge.LEFT,
                                        "1/8",
                                        IN.strip(
                                                "S3",
                                                "0",
                                                "4",
                                                "R1",
                                                IN.blank("apron-2", "apron", "0", "26"),
                                                IN.blank("block-2", "block", "26 1/8", "20"))),
                                IN.section(
                                        "ash-2/2",
                                        "48 1/8",
                                        "78 1/8",
                                        Edge.RIGHT,
                                        "1/16",
                                        IN.strip(
                                                "S4",
                                                "0",
                                                "2 15/16",
                                                "R3",
                                                IN.blank("slat-1", "slat", "48 1/8", "14"),
                                                IN.blank("slat-2", "slat", "62 1/4", "14")),
                                        IN.strip(
                                                "S5",
                                                "3 1/16",
                                                "7/8",
                                                "R4",
                                                IN.blank("bead-1", "bead", "48 1/8", "20"),
                                                IN.blank("plug-1", "plug", "68 1/4", "4"))))),
                new CutBoard(
                        "ash-3",
                        List.of(IN.section(
                                "ash-3/1",
                                "1/2",
                                "59 1/2",
                                Edge.LEFT,
                                "0",
                                IN.strip(
                                        "S6",
                                        "0",
                                        "2",
                                        "",
                                        IN.blank("filler-1", "filler", "1/2", "10"),
                                        IN.blank("lip-1", "lip", "10 5/8", "20"),
                                        IN.blank("tongue-1", "tongue", "35", "20"))))),
                new CutBoard("mpl-1", List.of()));
    }

    private static List<TestBlank> testBlanks() {
        return List.of(
                IN.testBlank("T1", "mpl-1", Source.RACK, "5", "12", "3/4", "maple", "R1", "R2", "R4"),
                IN.testBlank("T2", "mpl-1", Source.RACK, "5", "12", "3/4", "maple", "R1", "R2"),
                IN.testBlank("T3", "ash-2", Source.WASTE, "7", "12", "3/4", "ash", "R3", "R4"),
                IN.testBlank("T4", "ash-1", Source.FRESH, "7", "12", "3/4", "ash", "R3"));
    }

    private static List<Step> steps() {
        return IN.steps()
                .breakdown("ash-1", "ash-1/1", "T4", "O1")
                .breakdown("ash-2", "ash-2/1", "ash-2/2", "T3")
                .breakdown("ash-3", "ash-3/1", "S6")
                .breakdown("mpl-1", "T1", "T2")
                .mill("ash-1/1")
                .mill("T4")
                .straighten("ash-2/1")
                .straighten("ash-2/2")
                .test("R1", "T1")
                .rip("R1", "ash-1/1", "S1")
                .check("R1", "S1")
                .rip("R1", "ash-2/1", "S3", "O2")
                .test("R2", "T2")
                .rip("R2", "ash-1/1", "S2")
                .test("R3", "T3")
                .rip("R3", "ash-2/2", "S4")
                .test("R4", "T1")
                .rip("R4", "ash-2/2", "S5", "O3")
                .stop("26", "S1", "apron-1")
                .stop("26", "S3", "apron-2")
                .stop("24", "S2", "rail-1", "rail-2")
                .stop("20", "S1", "block-1")
                .stop("20", "S3", "block-2")
                .stop("20", "S5", "bead-1")
                .stop("14", "S4", "slat-1", "slat-2")
                .stop("10", "S6", "filler-1")
                .stop("4", "S5", "plug-1")
                .fitted("2 3/8", "S6", "lip-1")
                .fitted("5 1/2", "S6", "tongue-1")
                .list();
    }

    private static List<Offcut> offcuts() {
        return List.of(
                new Offcut(
                        "ash-1",
                        Board.measured("O1", "ash", IN.length("1"), IN.length("7"), IN.length("36 3/4"))
                                .rough(IN.length("1"), IN.length("3/4"))
                                .width(IN.length("7.3675"), IN.length("7"))
                                .edges(1, IN.length("1/8"), Length.ZERO)
                                .endTrim(Length.ZERO, IN.length("1/2"))
                                .onRack(History.UNKNOWN)
                                .build()),
                new Offcut(
                        "ash-2/1",
                        Board.measured("O2", "ash", IN.length("3/4"), IN.length("2 3/4"), IN.length("48"))
                                .edges(1, IN.length("1/16"), IN.length("1/8"))
                                .onRack(History.UNKNOWN)
                                .build()),
                new Offcut(
                        "ash-2/2",
                        Board.measured("O3", "ash", IN.length("3/4"), IN.length("2 7/8"), IN.length("30"))
                                .edges(1, IN.length("1/16"), new Length(1_240_235))
                                .defects(List.of(knot("16 1/8", "18 1/8", "7/8", "1 7/8", Blocks.ALL)))
                                .onRack(History.UNKNOWN)
                                .build()));
    }
}
