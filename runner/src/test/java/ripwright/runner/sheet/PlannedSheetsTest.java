package ripwright.runner.sheet;

import static java.util.stream.Collectors.joining;
import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.w3c.dom.Document;
import ripwright.Options;
import ripwright.Planner;
import ripwright.job.Job;
import ripwright.json.JobReader;
import ripwright.plan.Plan;
import ripwright.runner.sheet.place.BoardMap;
import ripwright.runner.sheet.place.Survey;

/** What holds of the sheet of any plan that was replayed. */
class PlannedSheetsTest {
    private static final Options BRIEFLY = Options.defaults().withMostRecuts(200);

    @ParameterizedTest
    @ValueSource(strings = {"crooked-board", "mudroom-lockers", "toy-chest-mm"})
    void every_step_piece_and_cut_of_a_sample_has_its_place(String sample) throws Exception {
        Job job = JobReader.read(Path.of("../samples", sample, sample + ".job.json"));
        Plan plan = Planner.plan(job, BRIEFLY);
        Document page = Markups.parsed(new Sheet(job, plan).html());

        assertThat(new Survey(job, plan).maps()).hasSameSizeAs(plan.boards()).allSatisfy(PlannedSheetsTest::whole);
        assertThat(stepNumbers(page))
                .isEqualTo(IntStream.rangeClosed(1, plan.steps().size())
                        .mapToObj(Integer::toString)
                        .toList());
        assertThat(labels(page))
                .contains(plan.steps().stream()
                        .flatMap(step -> step.makes().stream())
                        .toList());
    }

    private static void whole(BoardMap map) {
        assertThat(map.unplaced()).isEmpty();
        assertThat(map.cuts()).allMatch(cut -> cut.step().isPresent());
    }

    private static List<String> stepNumbers(Document page) {
        return Markups.elements(page, "th").stream()
                .filter(cell -> cell.getAttribute("class").contains("step"))
                .filter(cell -> !cell.getAttribute("scope").equals("col"))
                .map(cell -> cell.getElementsByTagName("bdi").item(0).getTextContent())
                .flatMap(PlannedSheetsTest::each)
                .toList();
    }

    /** Steps that are told in one row, such as 41–43, one by one. */
    private static Stream<String> each(String steps) {
        String[] ends = steps.split("–", 2);
        return IntStream.rangeClosed(Integer.parseInt(ends[0]), Integer.parseInt(ends[ends.length - 1]))
                .mapToObj(Integer::toString);
    }

    private static String labels(Document page) {
        return Markups.texts(page, "bdi").stream().collect(joining("\n"));
    }
}
