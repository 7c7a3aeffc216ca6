package ripwright.replay;

import static ripwright.replay.Make.MM;
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
import ripwright.plan.CutBoard;
import ripwright.plan.Offcut;
import ripwright.plan.Plan;
import ripwright.plan.Shortage;
import ripwright.plan.Shortage.Buy;
import ripwright.plan.Step;
import ripwright.plan.TestBlank.Source;
import ripwright.saw.Saw;
import ripwright.saw.TestRip;
import ripwright.stock.Board;
import ripwright.stock.Defect;
import ripwright.stock.Defect.Blocks;
import ripwright.stock.Edge;
import ripwright.stock.History;
import ripwright.stock.Species;

/**
 * In millimeters, and short: one board for five shelves, of which it makes four, two trays, and two posts as thick as
 * no board here. A section gives up 15 mm of a straight edge to pass bark, a strip carries no blank, and the piece
 * between the sections is exactly one test blank.
 *
 * <p>By hand: 15 + 90 + 3 + 90 = 198 of 200 are used; 598 + 4 + 598 = 1200 fill a strip. Counted board feet 2000 x 200
 * / 645.16 / 144 = 4.30556, at 5.00 that is 21.53; the bare strip 472 x 60 at half of it 0.76. Crosscuts 4 + 1 + 1 + 1
 * + 1, the test blank none; minutes 2 x 6 + (5 + 1 + 2) x 1.5 + 8 = 32.
 */
final class ShortShelves {
    private ShortShelves() {}

    static Job job() {
        return new Job(
                "shelves",
                Unit.MILLIMETER,
                Saw.of(MM.length("3"), MM.length("4")),
                new TestRip(MM.length("300"), 1),
                new Keep(MM.length("300"), MM.length("60")),
                Map.of(new Species("oak"), new BigDecimal("5")),
                new BigDecimal("0.5"),
                Optional.empty(),
                List.of(Board.measured("oak-1", "oak", MM.length("20"), MM.length("200"), MM.length("2000"))
                        .endTrim(MM.length("10"), MM.length("10"))
                        .defects(List.of(new Defect(
                                MM.length("100"), MM.length("400"), Length.ZERO, MM.length("15"), "bark", Blocks.ALL)))
                        .build()),
                List.of(),
                List.of(
                        Part.of("shelf", MM.length("598"), MM.length("90"), MM.length("20"))
                                .count(5)
                                .species(Set.of(new Species("oak"), new Species("ash")))
                                .face(Part.Face.SHOW)
                                .build(),
                        Part.of("tray", MM.length("468"), MM.length("60"), MM.length("20"))
                                .count(2)
                                .build(),
                        Part.of("post", MM.length("600"), MM.length("60"), MM.length("60"))
                                .count(2)
                                .build()),
                Limits.NONE);
    }

    static Sample sample() {
        return new Sample(
                job(),
                new Plan(
                        "shelves",
                        Unit.MILLIMETER,
                        Plan.Status.SHORT,
                        cost("21.53", "0.76", "0.00", "20.77", "18.50", "0.1093", false),
                        tally("3.3902", "2.3006", "0.2400", "0.8496", "0.6786", "32.00"),
                        boards(),
                        List.of(MM.setting("R1", "90", "T1", Source.FRESH), MM.setting("R2", "60", "T1", Source.FRESH)),
                        List.of(MM.testBlank("T1", "oak-1", Source.FRESH, "200", "300", "20", "oak", "R1", "R2")),
                        steps(),
                        List.of(new Offcut(
                                "S5",
                                Board.measured("O1", "oak", MM.length("20"), MM.length("60"), MM.length("472"))
                                        .onRack(History.UNKNOWN)
                                        .build())),
                        List.of(
                                shortage("shelf", 1, "0.6", List.of("oak"), "20", "600", "92"),
                                shortage("post", 2, "2.5", List.of(), "60", "600", "60")),
                        List.of()));
    }

    static Shortage shortage(
            String part,
            int count,
            String boardFeet,
            List<String> species,
            String thickness,
            String shortest,
            String narrowest) {
        return new Shortage(
                part,
                count,
                new Buy(
                        new BigDecimal(boardFeet),
                        species.stream().map(Species::new).toList(),
                        MM.length(thickness),
                        MM.length(shortest),
                        MM.length(narrowest)));
    }

    private static List<CutBoard> boards() {
        return List.of(new CutBoard(
                "oak-1",
                List.of(
                        MM.section(
                                "oak-1/1",
                                "10",
                                "1210",
                                Edge.LEFT,
                                "15",
                                MM.strip(
                                        "S1",
                                        "0",
                                        "90",
                                        "R1",
                                        MM.blank("shelf-1", "shelf", "10", "598"),
                                        MM.blank("shelf-2", "shelf", "612", "598")),
                                MM.strip(
                                        "S2",
                                        "93",
                                        "90",
                                        "R1",
                                        MM.blank("shelf-3", "shelf", "10", "598"),
                                        MM.blank("shelf-4", "shelf", "612", "598"))),
                        MM.section(
                                "oak-1/2",
                                "1518",
                                "1990",
                                Edge.LEFT,
                                "0",
                                MM.strip("S3", "0", "60", "R2", MM.blank("tray-1", "tray", "1518", "468")),
                                MM.strip("S4", "63", "60", "R2", MM.blank("tray-2", "tray", "1518", "468")),
                                MM.strip("S5", "126", "60", "R2")))));
    }

    private static List<Step> steps() {
        return MM.steps()
                .breakdown("oak-1", "oak-1/1", "oak-1/2", "T1")
                .straighten("oak-1/1")
                .test("R1", "T1")
                .rip("R1", "oak-1/1", "S1")
                .check("R1", "S1")
                .rip("R1", "oak-1/1", "S2")
                .test("R2", "T1")
                .rip("R2", "oak-1/2", "S3")
                .check("R2", "S3")
                .rip("R2", "oak-1/2", "S4", "S5", "O1")
                .stop("598", "S1", "shelf-1", "shelf-2")
                .stop("598", "S2", "shelf-3", "shelf-4")
                .stop("468", "S3", "tray-1")
                .stop("468", "S4", "tray-2")
                .list();
    }
}
