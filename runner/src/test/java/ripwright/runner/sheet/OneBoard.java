package ripwright.runner.sheet;

import static ripwright.runner.sheet.PlanBuilder.row;

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
import ripwright.plan.Plan;
import ripwright.plan.Shortage;
import ripwright.plan.Tally;
import ripwright.saw.Saw;
import ripwright.saw.TestRip;
import ripwright.stock.Board;
import ripwright.stock.Defect;
import ripwright.stock.Edge;
import ripwright.stock.History;
import ripwright.stock.Species;

/** The least job there is, in millimeters, with every name in it made of one text. */
final class OneBoard {
    private static final Length THICK = Length.millimeters("20");

    private final String name;

    OneBoard(String name) {
        this.name = name;
    }

    private Species wood() {
        return new Species(name);
    }

    /** The name and an ending, 300 characters at most. */
    private String with(String ending) {
        int most = 300 - ending.length();
        return (name.length() > most ? name.substring(0, most) : name) + ending;
    }

    Job job() {
        Defect defect = new Defect(
                Length.millimeters("700"),
                Length.millimeters("730"),
                Length.millimeters("20"),
                Length.millimeters("40"),
                name,
                Defect.Blocks.ALL);
        Board board = Board.measured(name, name, THICK, Length.millimeters("120"), Length.millimeters("1500"))
                .endTrim(Length.millimeters("15"), Length.millimeters("15"))
                .defects(List.of(defect))
                .build();
        Part part = Part.of(name, Length.millimeters("300"), Length.millimeters("50"), THICK)
                .count(5)
                .build();
        return new Job(
                name,
                Unit.MILLIMETER,
                Saw.of(Length.millimeters("3.2"), Length.millimeters("3.2")),
                TestRip.NONE,
                new Keep(Length.millimeters("300"), Length.millimeters("50")),
                Map.of(wood(), BigDecimal.TEN),
                new BigDecimal("0.5"),
                Optional.empty(),
                List.of(board),
                List.of(),
                List.of(part),
                Limits.NONE);
    }

    Plan plan() {
        Board offcut = Board.measured(with(" O1"), name, THICK, Length.millimeters("120"), Length.millimeters("836.8"))
                .endTrim(Length.ZERO, Length.millimeters("15"))
                .onRack(new History(Optional.of(with(" mark")), Optional.empty(), Optional.of(name), Optional.empty()))
                .build();
        return new PlanBuilder(job())
                .section(name, "15 mm", "660 mm", Edge.LEFT, "0", row("50 mm", name, name), row("50 mm", name, name))
                .offcut(name, withDefect(offcut))
                .shortage(new Shortage(
                        name,
                        1,
                        new Shortage.Buy(
                                new BigDecimal("0.2000"),
                                List.of(wood()),
                                THICK,
                                Length.millimeters("330"),
                                Length.millimeters("50"))))
                .caution("Mind " + name + ".", 3)
                .build(
                        PlanBuilder.cost("15.26", "3.80", "11.46", "11.46", "0"),
                        new Tally(
                                new BigDecimal("1.5256"),
                                new BigDecimal("0.5085"),
                                new BigDecimal("0.7595"),
                                new BigDecimal("0.2576"),
                                new BigDecimal("0.3333"),
                                new BigDecimal("15.00")));
    }

    private Board withDefect(Board offcut) {
        return offcut.toBuilder()
                .defects(List.of(new Defect(
                        Length.millimeters("36.8"),
                        Length.millimeters("66.8"),
                        Length.millimeters("20"),
                        Length.millimeters("40"),
                        name,
                        Defect.Blocks.ALL)))
                .build();
    }

    String html() {
        return new Sheet(job(), plan()).html();
    }
}
