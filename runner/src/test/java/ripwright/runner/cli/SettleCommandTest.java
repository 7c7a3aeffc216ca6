package ripwright.runner.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import ripwright.Planner;
import ripwright.json.JobText;

/** What a user at the terminal sees of bookings. */
class SettleCommandTest {
    @TempDir
    private Path folder;

    /** Two doors from a board that is just wide enough, so that there is one plan alone. */
    private Shop planned() throws IOException {
        Shop shop = new Shop(folder, (job, options) -> Planner.plan(job, options.withMostRecuts(20)));
        shop.file(
                "cabinet.job.json",
                JobText.CABINET
                        .replace("\"tries\": 1", "\"tries\": 0")
                        .replace("\"width\": 6,", "\"width\": 2.25,")
                        .replace(", \"endTrim\": 1", ""));
        shop.run("plan", "FOLDER/cabinet.job.json");
        return new Shop(folder, (job, options) -> {
            throw new AssertionError("planned");
        });
    }

    private int settle(Shop shop) {
        return shop.run("settle", "FOLDER/cabinet.plan.json", "--rack", "FOLDER/rack.json", "--day", "2026-10-01");
    }

    @Test
    @Tag("locale")
    void a_booking_tells_what_left_what_entered_and_what_to_chalk_on_it() throws IOException {
        Shop shop = planned();
        assertThat(settle(shop)).isZero();
        assertThat(shop.out()).isEqualTo("""
                Cabinet: booked.
                  off the stack ash-1
                  off the rack  nothing
                  to the rack
                    ash-1/A: ash, 3/4 x 2 1/4 x 23 3/4 in
                  rack          FOLDER/rack.json
                  boards left   FOLDER/cabinet.left.json
                """);
        assertThat(shop.err()).isEmpty();
        assertThat(folder.resolve("rack.json")).hasContent("""
                {
                  "format": 1,
                  "units": "in",
                  "offcuts": [
                    { "id": "ash-1/A", "mark": "ash-1/A", "species": "ash", "width": "2 1/4", "length": "23 3/4", "thickness": "3/4", "straightEdges": 2, "price": 6, "since": "2026-10-01", "cameFrom": { "job": "Cabinet", "board": "ash-1" } }
                  ]
                }
                """);
        assertThat(folder.resolve("cabinet.left.json")).hasContent("""
                {
                  "format": 1,
                  "job": "Next job",
                  "units": "in",
                  "saw": { "ripKerf": "1/8", "crosscutKerf": "1/8" },
                  "testRip": { "length": 12, "tries": 0 },
                  "keep": { "length": 12, "width": 2 },
                  "prices": { "ash": 6 },
                  "salvage": 0.5,
                  "stack": [],
                  "rack": "rack.json",
                  "parts": []
                }
                """);
    }

    @Test
    void taken_back_it_tells_the_same_the_other_way_round() throws IOException {
        Shop shop = planned();
        List<String> before = shop.files();
        settle(shop);
        Shop later = new Shop(folder, (job, options) -> {
            throw new AssertionError("planned");
        });
        assertThat(later.run("unsettle", "FOLDER/cabinet.plan.json", "--rack", "FOLDER/rack.json"))
                .isZero();
        assertThat(later.out()).isEqualTo("""
                Cabinet: taken back.
                  to the stack  ash-1
                  to the rack   nothing
                  off the rack  ash-1/A
                  rack          FOLDER/rack.json
                """);
        assertThat(later.files()).containsAll(before).contains("rack.last.json").doesNotContain("rack.json");
    }

    @Test
    void what_is_booked_already_is_refused_with_2() throws IOException {
        Shop shop = planned();
        settle(shop);
        assertThat(settle(shop)).isEqualTo(2);
        assertThat(shop.err()).isEqualTo("""
                FOLDER/cabinet.plan.json: nothing was booked.
                  This plan is booked already, on 2026-10-01.
                """);
    }

    @Test
    void a_spoiled_rack_file_is_told_and_where_the_last_good_one_is() throws IOException {
        Shop shop = planned();
        shop.file("rack.json", "{ \"format\": 1, \"units\": \"in\", \"offcuts\": [] }");
        settle(shop);
        Files.writeString(folder.resolve("rack.json"), "{");
        assertThat(shop.run("unsettle", "FOLDER/cabinet.plan.json", "--rack", "FOLDER/rack.json"))
                .isEqualTo(2);
        assertThat(shop.err())
                .startsWith("FOLDER/rack.json: 1 mistake, nothing was taken back.\n")
                .endsWith("FOLDER/rack.last.json is the rack as it was before its last change.\n");
    }

    @Test
    void without_a_rack_it_says_how_it_is_called() {
        Shop shop = new Shop(folder, (job, options) -> {
            throw new AssertionError("planned");
        });
        assertThat(shop.run("settle", "FOLDER/cabinet.plan.json")).isEqualTo(2);
        assertThat(shop.err()).startsWith("Missing required option: '--rack=RACK'");
    }
}
