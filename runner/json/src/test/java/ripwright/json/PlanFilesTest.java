package ripwright.json;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Objects;
import java.util.Optional;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import ripwright.json.tree.WrongInputException;
import ripwright.measure.Length;
import ripwright.plan.CutBoard;
import ripwright.plan.Offcut;
import ripwright.plan.Plan;
import ripwright.plan.Section;
import ripwright.stock.Board;
import ripwright.stock.Edge;

class PlanFilesTest {
    @TempDir
    private Path folder;

    private static String golden(String name) throws IOException {
        try (InputStream in = Objects.requireNonNull(PlanFilesTest.class.getResourceAsStream(name))) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
    }

    private static String written(Plan plan) {
        return new String(PlanWriter.bytes(plan), StandardCharsets.UTF_8);
    }

    private Plan read(String text) throws IOException, WrongInputException {
        return PlanReader.read(Files.writeString(folder.resolve("cabinet.plan.json"), text));
    }

    private String mistakes(String text) throws IOException {
        try {
            return "no mistake: " + read(text);
        } catch (WrongInputException e) {
            return e.text("nothing was replayed").replace(folder.toString(), "FOLDER");
        }
    }

    @Test
    @Tag("locale")
    void a_plan_is_written_as_it_always_was() throws IOException {
        assertThat(written(Plans.cabinet())).isEqualTo(golden("cabinet.plan.json"));
    }

    @Test
    @Tag("locale")
    void a_strange_plan_is_written_as_it_always_was() throws IOException {
        assertThat(written(Plans.strange())).isEqualTo(golden("strange.plan.json"));
    }

    @Test
    @Tag("locale")
    void what_is_written_is_read_back() throws IOException, WrongInputException {
        assertThat(read(written(Plans.cabinet()))).isEqualTo(Plans.cabinet());
        assertThat(read(written(Plans.strange()))).isEqualTo(Plans.strange());
    }

    @Test
    void a_length_finer_than_six_decimals_of_an_inch_comes_back_within_them() throws IOException, WrongInputException {
        Length exact = new Length(12_345_679); // 0.48605035... in
        Plan cabinet = Plans.cabinet();
        CutBoard board = new CutBoard(
                "ash-1", java.util.List.of(new Section("s1", exact, exact, Edge.LEFT, exact, java.util.List.of())));
        Plan plan = new Plan(
                cabinet.job(),
                cabinet.units(),
                cabinet.status(),
                cabinet.cost(),
                cabinet.tally(),
                java.util.List.of(board),
                cabinet.settings(),
                cabinet.testBlanks(),
                cabinet.steps(),
                cabinet.offcuts(),
                cabinet.shortages(),
                cabinet.cautions());
        String written = written(plan);
        Plan back = read(written);
        assertThat(written).contains("\"from\": 0.48605,");
        assertThat(Math.abs(back.boards().get(0).sections().get(0).from().nanometers() - exact.nanometers()))
                .isLessThanOrEqualTo(13); // half a millionth of an inch is 12.7 nm
        assertThat(written(back)).isEqualTo(written);
    }

    @Test
    void an_offcut_read_knows_its_job_and_the_board_it_was_cut_from() throws IOException, WrongInputException {
        Offcut offcut = read(written(Plans.cabinet())).offcuts().get(0);
        assertThat(offcut.piece().history().flatMap(history -> history.job())).contains("Cabinet");
        assertThat(offcut.piece().history().flatMap(history -> history.board())).contains("ash-1");
        assertThat(Optional.of(offcut.piece()).filter(Board::fromRack)).isPresent();
    }

    @Test
    void all_mistakes_of_a_plan_come_at_once() throws IOException {
        String text = written(Plans.cabinet())
                .replace("\"status\": \"complete\"", "\"status\": \"done\"")
                .replace("\"edgeLoss\": 0,", "\"edgeLoss\": \"0\",")
                .replace("\"does\": \"test\"", "\"doe\": \"test\"")
                .replace("\"length\": 48.125", "\"length\": 0")
                .replace("\"straightEdges\": 2", "\"straightEdges\": 2, \"crook\": 0.25")
                .replace("\"short\": [],", "");
        assertThat(mistakes(text)).isEqualTo("""
                FOLDER/cabinet.plan.json: 6 mistakes, nothing was replayed.
                  $.short                            missing. It must be a list.
                    1:1 | {
                        | ^
                  $.status                           "done"; it must be "complete" or "short".
                    5:13 | "status": "done",
                         |           ^
                  $.boards[0].sections[0].edgeLoss   "0"; it must be a length, a plain number. Leave the quotes out.
                    12:83 | { "id": "s1", "from": 1, "to": 49.125, "referenceEdge": "left", "edgeLoss": "0", "strips": [
                          |                                                                             ^
                  $.steps[1].doe                     no such field. Did you mean "does"?
                    28:29 | { "n": 2, "saw": "rip", "doe": "test", "setting": "r1", "piece": "x1", "makes": [] },
                          |                         ^
                  $.offcuts[0].length                0; it must be more than 0.
                    33:59 | d": "o1", "from": "s1", "width": 3.625, "length": 0, "thickness": 0.75, "species": "ash", "mark": "A
                          |                                                   ^
                  $.offcuts[0].crook                 1/4 in on a board with two straight edges. Set straightEdges to 1 or 0, or leave crook out.
                    33:141 | "ash", "mark": "A", "straightEdges": 2, "crook": 0.25 }
                           |                                                  ^
                """);
    }

    @Test
    void a_job_is_no_plan() throws IOException {
        assertThat(mistakes(JobText.CABINET)).isEqualTo("""
                FOLDER/cabinet.plan.json: 1 mistake, nothing was replayed.
                  this is a job; a plan is due here.
                """);
    }
}
