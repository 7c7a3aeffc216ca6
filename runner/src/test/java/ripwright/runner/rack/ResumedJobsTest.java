package ripwright.runner.rack;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import ripwright.json.PlanReader;
import ripwright.json.tree.WrongInputException;
import ripwright.plan.CutBoard;
import ripwright.runner.disk.Disk;
import ripwright.settle.Settlement;
import ripwright.stock.Board;

/** Jobs that were begun by one plan and finished by another. */
class ResumedJobsTest extends AtADesk {
    /** The rest of a coat rack that was begun: a section and the boards that are whole. */
    private static final String REST = ShopFolder.JOB
            .replace("Coat rack", "Coat rack, resumed")
            .replace("\"rack\": \"rack.json\",", "")
            .replaceAll(
                    "(?s)\"stack\": \\[.*?\\]",
                    "\"stack\": [ { \"id\": \"A1/1\", \"species\": \"ash\", \"thickness\": \"3/4\","
                            + " \"width\": 7, \"length\": 60, \"straightEdges\": 2, \"price\": 0 } ]")
            .replaceAll(
                    "(?s)\"parts\": \\[.*\\]",
                    "\"parts\": [ { \"name\": \"rail\", \"count\": 1, \"length\": 24,"
                            + " \"width\": \"2 1/4\", \"thickness\": \"3/4\", \"species\": \"ash\", \"face\": \"show\" } ]");

    @Test
    void a_job_that_was_resumed_is_booked_by_the_plan_of_the_rest()
            throws IOException, WrongInputException, RefusedException {
        List<String> planned = PlanReader.read(shop.plan()).boards().stream()
                .map(CutBoard::board)
                .toList();
        Path rest = shop.plan("coats.resumed", REST);
        Map<String, String> before = shop.books();
        Settlement booked = shop.settle(rest, Disk.REAL).entry().settlement();
        List<String> left = Stream.concat(
                        booked.cut().stream(), booked.taken().stream().map(Settlement.Taken::offcut))
                .map(Board::id)
                .toList();
        assertThat(left).containsExactlyInAnyOrderElementsOf(planned);
        assertThat(booked.entered())
                .isNotEmpty()
                .allMatch(offcut -> offcut.history()
                        .flatMap(history -> history.job())
                        .filter("Coat rack"::equals)
                        .isPresent());
        assertThat(refused(() -> shop.settle(Disk.REAL)))
                .isNotEmpty()
                .allMatch(reason -> reason.contains("(coats.resumed.plan.json)"));
        new Desk(shop.rack(), Disk.REAL).unsettle(rest);
        assertThat(shop.books()).isEqualTo(before);
    }

    @Test
    void the_rest_of_a_job_that_is_booked_as_it_was_begun_is_refused()
            throws IOException, WrongInputException, RefusedException {
        Path rest = shop.plan("coats.resumed", REST);
        shop.settle(Disk.REAL);
        assertThat(refused(() -> shop.settle(rest, Disk.REAL)))
                .containsExactly(
                        "This plan makes the rest of what is booked already: \"Coat rack\", booked on 2026-10-01"
                                + " (coats.plan.json), as if all of it had been cut. Unsettle that first.");
    }
}
