package ripwright.json;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import ripwright.bill.Part;
import ripwright.job.Job;
import ripwright.job.Keep;
import ripwright.job.Limits;
import ripwright.json.tree.WrongInputException;
import ripwright.measure.Length;
import ripwright.measure.Unit;
import ripwright.saw.Labor;
import ripwright.saw.Saw;
import ripwright.saw.TestRip;
import ripwright.stock.Board;
import ripwright.stock.Defect;
import ripwright.stock.EndTrim;
import ripwright.stock.History;
import ripwright.stock.Species;

class JobReaderTest {
    private static Length in(String inches) {
        return Length.inches(inches);
    }

    @Test
    void a_job_with_only_what_it_must_have() throws WrongInputException, IOException {
        Job job = JobText.cabinet().with(", \"endTrim\": 1", "").job();
        assertThat(job.name()).isEqualTo("Cabinet");
        assertThat(job.units()).isEqualTo(Unit.INCH);
        assertThat(job.saw()).isEqualTo(Saw.of(in("1/8"), in("1/8")));
        assertThat(job.testRip()).isEqualTo(new TestRip(in("12"), 1));
        assertThat(job.keep()).isEqualTo(new Keep(in("12"), in("2")));
        assertThat(job.prices()).containsExactly(java.util.Map.entry(new Species("Ash"), new BigDecimal("6")));
        assertThat(job.salvage()).isEqualTo(new BigDecimal("0.5"));
        assertThat(job.labor()).isEmpty();
        assertThat(job.limits()).isEqualTo(Limits.NONE);
        assertThat(job.rack()).isEmpty();
        assertThat(job.stack())
                .containsExactly(Board.measured("ash-1", "ash", in("3/4"), in("6"), in("72"))
                        .build());
        assertThat(job.parts())
                .containsExactly(Part.of("door", in("24"), in("2 1/4"), in("3/4"))
                        .count(2)
                        .species(Set.of(new Species("ash")))
                        .face(Part.Face.SHOW)
                        .build());
    }

    @Test
    void a_board_with_all_it_can_have() throws WrongInputException, IOException {
        Job job = JobText.cabinet()
                .with("\"straightEdges\": 2", "\"straightEdges\": 1")
                .board("""
                        , "widthAtFarEnd": 5, "millsTo": "11/16", "crook": "1/4", "edgeLoss": "1/8", "price": 7.25,
                        "endTrim": { "near": 1, "far": "2 in" }, "defects": [
                          { "from": 3, "to": 4, "left": 1, "right": 2, "kind": "knot", "blocks": "show" } ]""")
                .job();
        assertThat(job.stack())
                .containsExactly(Board.measured("ash-1", "ash", in("3/4"), in("6"), in("72"))
                        .rough(in("3/4"), in("11/16"))
                        .width(in("6"), in("5"))
                        .edges(1, in("1/8"), in("1/4"))
                        .endTrim(in("1"), in("2"))
                        .price(new BigDecimal("7.25"))
                        .defects(List.of(new Defect(in("3"), in("4"), in("1"), in("2"), "knot", Defect.Blocks.SHOW)))
                        .build());
    }

    @Test
    void a_ripped_board() throws WrongInputException, IOException {
        assertThat(JobText.cabinet()
                        .board(", \"ripped\": true")
                        .job()
                        .stack()
                        .get(0)
                        .ripped())
                .isTrue();
    }

    @Test
    void a_part_with_all_it_can_have() throws WrongInputException, IOException {
        Part part = JobText.cabinet()
                .with("\"species\": \"ash\", \"face\"", "\"species\": [\"ash\", \"oak\"], \"face\"")
                .part(", \"sneakUp\": \"1/16\", \"edgeAllowance\": \"1/32\", \"fitted\": true, \"together\": \"doors\"")
                .job()
                .parts()
                .get(0);
        assertThat(part.species()).isEqualTo(Set.of(new Species("ash"), new Species("oak")));
        assertThat(part.sneakUp()).isEqualTo(in("1/16"));
        assertThat(part.edgeAllowance()).isEqualTo(in("1/32"));
        assertThat(part.fitted()).isTrue();
        assertThat(part.together()).contains("doors");
    }

    @Test
    void any_wood_is_no_wood_in_particular() throws WrongInputException, IOException {
        JobText any = JobText.cabinet().with("\"species\": \"ash\", \"face\"", "\"species\": \"Any\", \"face\"");
        JobText absent = JobText.cabinet().with("\"species\": \"ash\", \"face\"", "\"face\"");
        assertThat(any.job().parts().get(0).species()).isEmpty();
        assertThat(absent.job()).isEqualTo(any.job());
    }

    @Test
    void labor_limits_and_saw_limits() throws WrongInputException, IOException {
        Job job = JobText.cabinet()
                .with("\"crosscutKerf\": \"1/8\"", """
                        "crosscutKerf": "1/8", "longestRip": 96, "shortestRip": 12, "narrowestRip": "3/4",
                        "shortestCrosscut": 6""")
                .with("\"salvage\": 0.5", """
                        "salvage": 0.5,
                        "labor": { "perHour": 30, "settingMinutes": 5, "ripMinutes": 1.25, "crosscutMinutes": 0 },
                        "limits": { "seconds": 2.5, "seed": -7, "threads": 2 }""")
                .job();
        assertThat(job.labor())
                .contains(
                        new Labor(new BigDecimal("30"), new BigDecimal("5"), new BigDecimal("1.25"), BigDecimal.ZERO));
        assertThat(job.limits().seconds()).contains(new BigDecimal("2.5"));
        assertThat(job.limits().seed()).hasValue(-7);
        assertThat(job.limits().threads()).hasValue(2);
        assertThat(job.saw().longestRip()).contains(in("96"));
        assertThat(job.saw().shortestRip()).contains(in("12"));
        assertThat(job.saw().narrowestRip()).contains(in("3/4"));
        assertThat(job.saw().shortestCrosscut()).contains(in("6"));
    }

    @Test
    void a_count_stands_for_numbered_boards() throws WrongInputException, IOException {
        assertThat(JobText.cabinet().board(", \"count\": 3").job().stack())
                .extracting(Board::id)
                .containsExactly("ash-1#1", "ash-1#2", "ash-1#3");
        assertThat(JobText.cabinet().board(", \"count\": 1").job().stack())
                .extracting(Board::id)
                .containsExactly("ash-1");
    }

    @Test
    void every_way_to_write_a_length_is_the_same_length() throws WrongInputException, IOException {
        for (String written : List.of(
                "2.375", "2375e-3", "\"2 3/8\"", "\"2-3/8\"", "\"2.375\"", "\"19/8\"", "\"2 3/8 in\"", "\"60.325 mm\""))
            assertThat(JobText.cabinet()
                            .with("\"2 1/4\"", written)
                            .job()
                            .parts()
                            .get(0)
                            .width())
                    .as(written)
                    .isEqualTo(new Length(60_325_000));
    }

    @Test
    void numbers_are_in_the_units_of_the_job() throws WrongInputException, IOException {
        Job job = JobText.cabinet().with("\"in\"", "\"mm\"").job();
        assertThat(job.stack().get(0).width()).isEqualTo(new Length(6_000_000));
        assertThat(job.parts().get(0).width()).isEqualTo(new Length(2_250_000));
    }

    @Test
    void a_third_of_an_inch_is_rounded_once_to_the_nearest_nanometer() throws WrongInputException, IOException {
        assertThat(JobText.cabinet()
                        .with("\"2 1/4\"", "\"1/3\"")
                        .job()
                        .parts()
                        .get(0)
                        .width())
                .isEqualTo(new Length(8_466_667)); // 25 400 000 / 3 = 8 466 666.67
    }

    @Test
    void a_byte_order_mark_is_skipped() throws WrongInputException, IOException {
        assertThat(new JobText("\uFEFF" + JobText.CABINET).job())
                .isEqualTo(JobText.cabinet().job());
    }

    @Test
    void names_may_be_in_any_language() throws WrongInputException, IOException {
        String name = "\u0634\u0628\u0627\u0643 \uD83E\uDEB5 <b>&\"'";
        String escaped = name.replace("\"", "\\\"");
        assertThat(JobText.cabinet()
                        .with("\"door\"", "\"" + escaped + "\"")
                        .job()
                        .parts()
                        .get(0)
                        .name())
                .isEqualTo(name);
    }

    @Test
    @Tag("locale")
    void species_match_without_regard_to_case_in_every_language() throws WrongInputException, IOException {
        Job job = JobText.cabinet()
                .with("{ \"ash\": 6 }", "{ \"HICKORY\": 6 }")
                .with(
                        "\"species\": \"ash\", \"thickness\": \"3/4\", \"width\": 6",
                        "\"species\": \" hickory\", \"thickness\": 1, \"width\": 6")
                .job();
        assertThat(job.price(job.stack().get(0))).isEqualTo(new BigDecimal("6"));
    }

    @Test
    void the_rack_is_found_beside_the_job_and_read_in_its_own_units(@TempDir Path folder)
            throws WrongInputException, IOException {
        Path file = Files.createDirectory(folder.resolve("jobs")).resolve("cabinet.job.json");
        Files.writeString(
                file,
                JobText.CABINET.replace("\"stack\"", "\"rack\": \"../rack.json\", \"stack\""),
                StandardCharsets.UTF_8);
        Files.writeString(folder.resolve("rack.json"), """
                { "format": 1, "units": "mm", "offcuts": [
                  { "id": "R1", "species": "oak", "thickness": 20, "width": 60, "length": 400, "straightEdges": 2 },
                  { "id": "R2", "species": "oak", "thickness": 20, "width": 60, "length": 400, "straightEdges": 2, "endTrim": 5,
                    "mark": "7", "since": "May", "cameFrom": { "job": "Stool", "board": "oak-3" } } ] }
                """);
        Board plain = Board.measured(
                        "R1", "oak", new Length(20_000_000), new Length(60_000_000), new Length(400_000_000))
                .onRack(History.UNKNOWN)
                .build();
        History history = new History(Optional.of("7"), Optional.of("May"), Optional.of("Stool"), Optional.of("oak-3"));
        EndTrim trim = new EndTrim(new Length(5_000_000), new Length(5_000_000));
        assertThat(JobReader.read(file).rack())
                .containsExactly(
                        plain,
                        plain.toBuilder()
                                .id("R2")
                                .endTrim(trim.near(), trim.far())
                                .onRack(history)
                                .build());
        assertThat(RackReader.read(folder.resolve("rack.json")))
                .isEqualTo(new Rack(Unit.MILLIMETER, JobReader.read(file).rack()));
    }

    @Test
    void a_job_of_a_hundred_thousand_lines_is_read() throws WrongInputException, IOException {
        StringBuilder parts = new StringBuilder();
        for (int i = 0; i < 100_000; i++)
            parts.append(i == 0 ? "" : ",\n")
                    .append("{ \"name\": \"part ")
                    .append(i)
                    .append(
                            "\", \"count\": 1, \"length\": 24, \"width\": \"2 1/4\", \"thickness\": \"3/4\", \"face\": \"show\" }");
        String text = JobText.CABINET.replaceFirst("(?s)\"parts\": \\[.*]", "\"parts\": [" + parts + "]");
        assertThat(new JobText(text).job().parts()).hasSize(100_000);
    }
}
