package ripwright.runner.sheet;

import static ripwright.runner.sheet.PlanBuilder.row;

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
import ripwright.plan.Plan;
import ripwright.plan.Shortage;
import ripwright.plan.Tally;
import ripwright.plan.TestBlank;
import ripwright.saw.Saw;
import ripwright.saw.TestRip;
import ripwright.stock.Board;
import ripwright.stock.Defect;
import ripwright.stock.Edge;
import ripwright.stock.History;
import ripwright.stock.Species;

/**
 * A small job laid out by hand, with one of everything: a tapered rough board, one with crook, one broken down for half its
 * length, an offcut of another wood for test blanks, defects, fitted parts, a part that cannot be made.
 */
final class WindowSeat {
    private static final Length THICK = Length.inches("3/4");
    private static final Species OAK = new Species("white oak");

    private WindowSeat() {}

    static Job job() {
        return job("Window seat");
    }

    static Job job(String name) {
        return new Job(
                name,
                Unit.INCH,
                Saw.of(Length.inches("1/8"), Length.inches("1/8")),
                new TestRip(Length.inches("12"), 1),
                new Keep(Length.inches("12"), Length.inches("2")),
                Map.of(OAK, new BigDecimal("9.50")),
                new BigDecimal("0.5"),
                Optional.empty(),
                List.of(tapered(), crooked(), straight()),
                List.of(poplar()),
                List.of(
                        shown("apron", "30", "3 1/2", 2),
                        shown("seat rail", "30", "2 1/4", 4),
                        new Part(
                                "stile",
                                4,
                                Length.inches("16 1/2"),
                                Length.inches("2 1/4"),
                                THICK,
                                Set.of(OAK),
                                Part.Face.SHOW,
                                Length.inches("1/16"),
                                Length.ZERO,
                                false,
                                Optional.empty(),
                                Set.of()),
                        shown("shelf lip", "28", "1 1/2", 3),
                        Part.of("cleat", Length.inches("14"), Length.inches("1 1/2"), THICK)
                                .count(4)
                                .build(),
                        shown("bead", "22", "3/4", 2),
                        Part.of("scribe", Length.inches("18"), Length.inches("1 1/2"), THICK)
                                .count(2)
                                .sneakUp(Length.inches("1/4"))
                                .fitted(true)
                                .build(),
                        shown("lid", "50", "9", 1)),
                Limits.NONE);
    }

    private static Part shown(String name, String length, String width, int count) {
        return Part.of(name, Length.inches(length), Length.inches(width), THICK)
                .count(count)
                .species(Set.of(OAK))
                .face(Part.Face.SHOW)
                .build();
    }

    static Board tapered() {
        return Board.measured("oak-1", "white oak", THICK, Length.inches("8"), Length.inches("96"))
                .width(Length.inches("8"), Length.inches("7 1/4"))
                .rough(Length.inches("1"), THICK)
                .edges(1, Length.inches("1/8"), Length.ZERO)
                .endTrim(Length.inches("1"), Length.inches("1"))
                .defects(List.of(
                        defect("40", "42 1/2", "3", "4 1/4", "knot", Defect.Blocks.ALL),
                        defect("74", "76", "1", "1 3/4", "pin knots", Defect.Blocks.SHOW)))
                .build();
    }

    private static Board crooked() {
        return Board.measured("oak-2", "white oak", THICK, Length.inches("6 3/4"), Length.inches("84"))
                .edges(0, Length.inches("1/8"), Length.inches("1/4"))
                .endTrim(Length.inches("1/2"), Length.inches("1/2"))
                .build();
    }

    private static Board straight() {
        return Board.measured("oak-3", "white oak", THICK, Length.inches("7 1/2"), Length.inches("60"))
                .endTrim(Length.inches("1"), Length.inches("1"))
                .defects(List.of(defect("52", "58", "5", "5 1/8", "check", Defect.Blocks.ALL)))
                .build();
    }

    private static Board poplar() {
        return Board.measured("rack-7", "poplar", THICK, Length.inches("5"), Length.inches("30"))
                .onRack(new History(
                        Optional.of("P7"), Optional.of("2025-03-02"), Optional.of("paint closet"), Optional.empty()))
                .build();
    }

    private static Defect defect(String from, String to, String left, String right, String kind, Defect.Blocks blocks) {
        return new Defect(
                Length.inches(from), Length.inches(to), Length.inches(left), Length.inches(right), kind, blocks);
    }

    static Plan plan() {
        return plan(job());
    }

    static Plan plan(Job job) {
        return new PlanBuilder(job)
                .section(
                        "oak-1",
                        "1",
                        "39",
                        Edge.LEFT,
                        "0",
                        row("2 1/4", "seat rail"),
                        row("2 1/4", "stile", "stile"),
                        row("1 1/2", "shelf lip"))
                .section(
                        "oak-1",
                        "43",
                        "95",
                        Edge.LEFT,
                        "0",
                        row("2 1/4", "seat rail", "2 7/8", "stile"),
                        row("2 1/4", "seat rail", "stile"),
                        row("1 1/2", "shelf lip", "scribe"))
                .section(
                        "oak-2",
                        "1/2",
                        "36 1/2",
                        Edge.RIGHT,
                        "1/8",
                        row("2 1/4", "seat rail"),
                        row("1 1/2", "shelf lip"),
                        row("1 1/2", "cleat", "cleat"),
                        row("3/4", "bead"))
                .section(
                        "oak-2",
                        "36 5/8",
                        "83 1/2",
                        Edge.LEFT,
                        "1/8",
                        row("1 1/2", "cleat", "cleat", "scribe"),
                        row("3/4", "bead"))
                .section("oak-3", "1", "33", Edge.LEFT, "0", row("3 1/2", "apron"), row("3 1/2", "apron"))
                .opened("rack-7")
                .test(test("T1", "rack-7", TestBlank.Source.RACK, "5", "poplar", "R1", "R2", "R3"))
                .test(test("T2", "oak-1/1", TestBlank.Source.WASTE, "1 5/16", "white oak", "R4"))
                .offcut("oak-2/2", leftover("O1", "white oak", "4 1/8", "46 7/8"))
                .offcut("rack-7", leftover("O2", "poplar", "5", "17 7/8"))
                .offcut("oak-3", oakOffcut())
                .shortage(new Shortage(
                        "lid",
                        1,
                        new Shortage.Buy(
                                new BigDecimal("4.1250"),
                                List.of(OAK),
                                THICK,
                                Length.inches("52"),
                                Length.inches("9 1/4"))))
                .caution("Strips of 3/4 in are narrower than the saw's narrowest rip: use a push block.", 27, 29)
                .build(
                        PlanBuilder.cost("171.20", "29.85", "141.35", "139.40", "0.0138"),
                        new Tally(
                                new BigDecimal("15.8229"),
                                new BigDecimal("6.9297"),
                                new BigDecimal("3.0957"),
                                new BigDecimal("5.7975"),
                                new BigDecimal("0.4380"),
                                new BigDecimal("84.50")));
    }

    private static Board oakOffcut() {
        return leftover("O3", "white oak", "7 1/2", "26 7/8").toBuilder()
                .endTrim(Length.ZERO, Length.inches("1"))
                .defects(List.of(defect("18 7/8", "24 7/8", "5", "5 1/8", "check", Defect.Blocks.ALL)))
                .build();
    }

    private static Board leftover(String id, String species, String width, String length) {
        return Board.measured(id, species, THICK, Length.inches(width), Length.inches(length))
                .onRack(new History(
                        Optional.of("WS-" + id), Optional.empty(), Optional.of("Window seat"), Optional.empty()))
                .build();
    }

    private static TestBlank test(
            String id, String from, TestBlank.Source source, String width, String species, String... proves) {
        return new TestBlank(
                id,
                from,
                source,
                Length.inches(width),
                Length.inches("12"),
                THICK,
                new Species(species),
                List.of(proves));
    }
}
