package ripwright.runner.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.networknt.schema.InputFormat;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Objects;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import ripwright.json.JobText;
import ripwright.json.Plans;

class SharedJobsTest {
    @TempDir
    private Path folder;

    private Shop shop() {
        return new Shop(folder, (job, options) -> Plans.cabinet());
    }

    /** A shelf of one board 40 in long, as wide as the stack's only board; nothing is tested. */
    private static String shelf(String name) {
        return JobText.CABINET
                .replace("Cabinet", name)
                .replace("\"tries\": 1", "\"tries\": 0")
                .replace(
                        "\"count\": 2, \"length\": 24, \"width\": \"2 1/4\"",
                        "\"count\": 1, \"length\": 30, \"width\": 6")
                .replace("\"length\": 72", "\"length\": \"72 1/64\"");
    }

    @Test
    @Tag("locale")
    void in_turn_the_second_job_is_cut_from_what_the_first_leaves_and_each_plan_replays_on_what_it_is_cut_from()
            throws IOException {
        Shop shop = shop();
        shop.file("a.job.json", shelf("Shelf <a>"));
        shop.file("b.job.json", shelf("Shelf b"));
        assertThat(shop.run("plan", "FOLDER/a.job.json", "FOLDER/b.job.json", "--in-turn", "--out", "FOLDER/out"))
                .isZero();
        assertThat(shop.err()).isEmpty();
        assertThat(shop.files())
                .containsExactly(
                        "a.job.json",
                        "b.job.json",
                        "out/a.as-planned.json",
                        "out/a.as-planned.rack.json",
                        "out/a.plan.json",
                        "out/a.settings.json",
                        "out/a.sheet.html",
                        "out/b.as-planned.json",
                        "out/b.as-planned.rack.json",
                        "out/b.plan.json",
                        "out/b.sheet.html");
        assertThat(shop.out())
                .startsWith("Shelf <a>: complete, the one part.\n  boards        1 of 1 from the stack\n")
                .contains("""

                          cut from      FOLDER/out/a.as-planned.json

                        Shelf b: complete, the one part.
                          boards        0 of 0 from the stack, 1 of 1 from the rack
                        """)
                .endsWith("""
                        All together: cost 18.00, 2.3 board feet of the stack. Cut in this order: Shelf <a>, Shelf b.
                        Rip settings for all, 1 instead of 2: set the fence and prove it once a line, then rip for every job in the line.
                          run 1  6 in  Shelf <a> F1: 1 strip; Shelf b F1: 1 strip
                        Settings: FOLDER/out/a.settings.json
                        """);
        assertThat(complaints(Files.readString(folder.resolve("out/a.settings.json"))))
                .isEmpty();
        for (String job : new String[] {"a", "b"})
            assertThat(shop.run("replay", "FOLDER/out/" + job + ".as-planned.json", "FOLDER/out/" + job + ".plan.json"))
                    .as(job)
                    .isZero();
    }

    private static java.util.List<String> complaints(String settings) throws IOException {
        try (InputStream in =
                Objects.requireNonNull(SharedJobsTest.class.getResourceAsStream("/ripwright/settings.schema.json"))) {
            return SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                    .getSchema(new String(in.readAllBytes(), StandardCharsets.UTF_8), InputFormat.JSON)
                    .validate(settings, InputFormat.JSON)
                    .stream()
                    .map(Object::toString)
                    .toList();
        }
    }

    @Test
    void a_job_that_finds_no_board_is_told_and_ends_with_1() throws IOException {
        Shop shop = shop();
        shop.file("a.job.json", shelf("A").replace("\"length\": 30", "\"length\": 66"));
        shop.file("b.job.json", shelf("B"));
        assertThat(shop.run("plan", "FOLDER/a.job.json", "FOLDER/b.job.json", "--in-turn"))
                .isEqualTo(1);
        assertThat(shop.out()).contains("B: not planned; the jobs before it leave no board at all.\n");
        assertThat(folder.resolve("b.plan.json")).doesNotExist();
    }

    @Test
    void jobs_that_do_not_agree_are_told_all_that_differs_and_nothing_is_written() throws IOException {
        Shop shop = shop();
        shop.file("a.job.json", shelf("A"));
        shop.file(
                "b.job.json",
                shelf("B")
                        .replace("\"ash\": 6", "\"ash\": 7")
                        .replace("\"width\": 6, \"length\": \"72", "\"width\": 7, \"length\": \"72"));
        assertThat(shop.run("plan", "FOLDER/a.job.json", "FOLDER/b.job.json", "--together"))
                .isEqualTo(2);
        assertThat(shop.err()).isEqualTo("""
                These jobs cannot share a stack, nothing was planned.
                  "A" and "B" do not agree on the price of ash: 6 and 7.
                  The board "ash-1" is not the same in "A" and "B". Give it one measure, or two ids.
                """);
        assertThat(shop.files()).containsExactly("a.job.json", "b.job.json");
    }

    @Test
    void one_wrong_job_and_none_is_planned_as_the_others_would_be_cut_for_it_too() throws IOException {
        Shop shop = shop();
        shop.file("a.job.json", shelf("A"));
        shop.file("b.job.json", "{");
        assertThat(shop.run("plan", "FOLDER/a.job.json", "FOLDER/b.job.json", "--in-turn"))
                .isEqualTo(2);
        assertThat(shop.err()).startsWith("FOLDER/b.job.json: 1 mistake, nothing was planned.\n");
        assertThat(shop.files()).containsExactly("a.job.json", "b.job.json");
    }

    @Test
    void a_stack_is_shared_by_two_jobs_at_least_and_in_one_way() throws IOException {
        Shop shop = shop();
        shop.file("a.job.json", shelf("A"));
        assertThat(shop.run("plan", "FOLDER/a.job.json", "--in-turn")).isEqualTo(2);
        assertThat(shop.err()).isEqualTo("Only one job is named; a stack is shared by two at least.\n");
        assertThat(shop.run("plan", "FOLDER/a.job.json", "FOLDER/a.job.json", "--in-turn", "--together"))
                .isEqualTo(2);
        assertThat(shop.err()).contains("--together", "mutually exclusive");
    }
}
