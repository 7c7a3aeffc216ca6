package ripwright.json;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import ripwright.measure.Length;
import ripwright.measure.Unit;
import ripwright.plan.Blank;
import ripwright.plan.Caution;
import ripwright.plan.Cost;
import ripwright.plan.CutBoard;
import ripwright.plan.Offcut;
import ripwright.plan.Plan;
import ripwright.plan.Section;
import ripwright.plan.Setting;
import ripwright.plan.Shortage;
import ripwright.plan.Step;
import ripwright.plan.Strip;
import ripwright.plan.Tally;
import ripwright.plan.TestBlank;
import ripwright.stock.Board;
import ripwright.stock.Defect;
import ripwright.stock.Edge;
import ripwright.stock.History;
import ripwright.stock.Species;

/** Plans reckoned by hand. */
public final class Plans {
    private Plans() {}

    private static Length in(String inches) {
        return Length.inches(inches);
    }

    private static Length mm(String millimeters) {
        return Length.millimeters(millimeters);
    }

    private static BigDecimal number(String digits) {
        return new BigDecimal(digits);
    }

    /**
     * Of {@link JobText#CABINET}. Stock: 72 x 6 / 144 x 6 = 18.00. The offcut beside the strip: 48 1/8 x 3 5/8 / 144 x 6 x
     * 0.5 = 3.63. Crosscuts: both ends of the section, one between the blanks, one for the test blank. Minutes: 6 for the
     * setting, 1.5 for the strip, 1.5 for the test, 4 for the crosscuts.
     */
    public static Plan cabinet() {
        Strip strip = new Strip(
                "t1",
                in("0"),
                in("2 1/4"),
                Optional.of("r1"),
                List.of(new Blank("b1", "door", in("1"), in("24")), new Blank("b2", "door", in("25 1/8"), in("24"))));
        Section section = new Section("s1", in("1"), in("49 1/8"), Edge.LEFT, in("0"), List.of(strip));
        Board offcut = Board.measured("o1", "ash", in("3/4"), in("3 5/8"), in("48 1/8"))
                .onRack(new History(Optional.of("A"), Optional.empty(), Optional.of("Cabinet"), Optional.of("ash-1")))
                .build();
        return new Plan(
                "Cabinet",
                Unit.INCH,
                Plan.Status.COMPLETE,
                new Cost(
                        number("18.00"),
                        number("3.63"),
                        number("0.00"),
                        number("14.37"),
                        number("10.80"),
                        number("0.2485"),
                        false),
                new Tally(
                        number("2.2500"),
                        number("0.5625"),
                        number("0.9086"),
                        number("0.7789"),
                        number("0.2500"),
                        number("13.00")),
                List.of(new CutBoard("ash-1", List.of(section))),
                List.of(new Setting("r1", in("2 1/4"), Optional.of(new Setting.Test("x1", TestBlank.Source.FRESH)))),
                List.of(new TestBlank(
                        "x1",
                        "ash-1",
                        TestBlank.Source.FRESH,
                        in("6"),
                        in("12"),
                        in("3/4"),
                        new Species("ash"),
                        List.of("r1"))),
                List.of(
                        step(1, Step.Saw.CROSSCUT, Step.Does.BREAKDOWN, "ash-1", "s1", "x1"),
                        new Step(
                                2,
                                Optional.of(Step.Saw.RIP),
                                Step.Does.TEST,
                                Optional.of("r1"),
                                Optional.empty(),
                                "x1",
                                List.of(),
                                Optional.empty()),
                        new Step(
                                3,
                                Optional.of(Step.Saw.RIP),
                                Step.Does.RIP,
                                Optional.of("r1"),
                                Optional.empty(),
                                "s1",
                                List.of("t1", "o1"),
                                Optional.empty()),
                        new Step(
                                4,
                                Optional.of(Step.Saw.CROSSCUT),
                                Step.Does.BLANK,
                                Optional.empty(),
                                Optional.of(in("24")),
                                "t1",
                                List.of("b1", "b2"),
                                Optional.empty())),
                List.of(new Offcut("s1", offcut)),
                List.of(),
                List.of(
                        new Caution(List.of(), "Read the saw's manual."),
                        new Caution(List.of(2, 3), "Use a push stick.")));
    }

    private static Step step(int n, Step.Saw saw, Step.Does does, String piece, String... makes) {
        return new Step(
                n, Optional.of(saw), does, Optional.empty(), Optional.empty(), piece, List.of(makes), Optional.empty());
    }

    /** A plan that uses every field there is, in millimeters, with names that need care; no saw could make it. */
    public static Plan strange() {
        Strip ripped = new Strip("t\"1\"", mm("0"), mm("32"), Optional.empty(), List.of());
        Section section = new Section("s1", mm("30.000001"), mm("500"), Edge.RIGHT, mm("4.083334"), List.of(ripped));
        Board tapered = Board.measured("o1", "Ahorn \u00e4\u00f6\u00fc", mm("27"), mm("120"), mm("800"))
                .rough(mm("27"), mm("20"))
                .width(mm("120"), mm("111.111111"))
                .edges(0, mm("4"), mm("0.5"))
                .endTrim(mm("0"), mm("30"))
                .defects(
                        List.of(new Defect(mm("1"), mm("2"), mm("3"), mm("4"), "knot \uD83E\uDEB5", Defect.Blocks.ALL)))
                .price(number("7.125"))
                .onRack(new History(
                        Optional.of("<b>&\\"), Optional.empty(), Optional.of("Chest </script>"), Optional.of("b#2")))
                .build();
        Shortage.Buy any = new Shortage.Buy(number("0.1000"), List.of(), mm("20"), mm("400"), mm("40"));
        Shortage.Buy either = new Shortage.Buy(
                number("12.5000"), List.of(new Species("beech"), new Species("oak")), mm("20"), mm("400"), mm("40"));
        return new Plan(
                "Chest </script>",
                Unit.MILLIMETER,
                Plan.Status.SHORT,
                new Cost(
                        number("0.10"),
                        number("5.00"),
                        number("1.00"),
                        number("-3.90"),
                        number("-3.90"),
                        number("0.0000"),
                        true),
                new Tally(number("0"), number("0"), number("0"), number("0"), number("0"), number("0")),
                List.of(new CutBoard("b#1", List.of()), new CutBoard("b#2", List.of(section))),
                List.of(new Setting("r1", mm("62"), Optional.empty())),
                List.of(),
                List.of(new Step(
                        1,
                        Optional.empty(),
                        Step.Does.MILL,
                        Optional.empty(),
                        Optional.empty(),
                        "s1",
                        List.of(),
                        Optional.of(mm("0.25")))),
                List.of(new Offcut("s1", tapered)),
                List.of(new Shortage("lid", 2, any), new Shortage("leg", 1, either)),
                List.of());
    }
}
