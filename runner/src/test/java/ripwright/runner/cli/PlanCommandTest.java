package ripwright.runner.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import ripwright.Ending;
import ripwright.Progress;
import ripwright.job.Job;
import ripwright.json.JobText;
import ripwright.json.PlanWriter;
import ripwright.json.Plans;
import ripwright.plan.Plan;

class PlanCommandTest {
    private static final String SUMMARY = """
            Cabinet: complete, all 2 parts.
              boards        1 of 1 from the stack
              cost          14.37 = stock 18.00 - offcuts kept 3.63
              bound         No plan can cost less than 10.80: at most 3.57 could be saved.
              yield         25.0 % of 2.3 board feet; 0.9 go to the rack
              settings      1 rip, 1 stop
              cuts          2 rips, 4 crosscuts, about 13 min
              test blanks   1 from fresh wood
              to the rack   A: ash, 3/4 x 3 5/8 x 48 1/8 in
            """;

    @TempDir
    private Path folder;

    private Shop shop() {
        return new Shop(folder, (job, options) -> Plans.cabinet());
    }

    @Test
    @Tag("locale")
    void a_plan_and_a_sheet_are_written_next_to_the_job_and_a_summary_is_printed() throws IOException {
        Shop shop = shop();
        shop.file("cabinet.job.json", JobText.CABINET);
        assertThat(shop.run("plan", "FOLDER/cabinet.job.json")).isZero();
        assertThat(shop.out()).isEqualTo(SUMMARY + """
                  wrote         FOLDER/cabinet.plan.json
                                FOLDER/cabinet.sheet.html
                """);
        assertThat(shop.err()).isEmpty();
        assertThat(shop.files()).containsExactly("cabinet.job.json", "cabinet.plan.json", "cabinet.sheet.html");
        assertThat(folder.resolve("cabinet.plan.json")).hasBinaryContent(PlanWriter.bytes(Plans.cabinet()));
    }

    @Test
    void the_sheet_says_how_the_search_ended() throws IOException {
        Shop shop = new Shop(folder, (job, options) -> {
            options.listener().ended(Ending.NOTHING_BETTER);
            return Plans.cabinet();
        });
        shop.file("cabinet.job.json", JobText.CABINET);
        assertThat(shop.run("plan", "FOLDER/cabinet.job.json")).isZero();
        assertThat(folder.resolve("cabinet.sheet.html"))
                .content()
                .contains("The search ended when it had found nothing better for a while.");
    }

    @Test
    void a_folder_to_write_to_is_made() throws IOException {
        Shop shop = shop();
        shop.file("cabinet.json", JobText.CABINET);
        assertThat(shop.run("plan", "--out", "FOLDER/a/b", "FOLDER/cabinet.json"))
                .isZero();
        assertThat(shop.files()).containsExactly("a/b/cabinet.plan.json", "a/b/cabinet.sheet.html", "cabinet.json");
    }

    @Test
    void what_was_written_before_is_replaced() throws IOException {
        Shop shop = shop();
        shop.file("cabinet.job.json", JobText.CABINET);
        shop.file("cabinet.plan.json", "old");
        assertThat(shop.run("plan", "FOLDER/cabinet.job.json")).isZero();
        assertThat(folder.resolve("cabinet.plan.json")).hasBinaryContent(PlanWriter.bytes(Plans.cabinet()));
    }

    @Test
    void a_short_plan_is_written_and_ends_with_1() throws IOException {
        Shop shop = new Shop(folder, (job, options) -> Plans.strange());
        shop.file("chest.job.json", JobText.CABINET);
        assertThat(shop.run("plan", "FOLDER/chest.job.json")).isEqualTo(1);
        assertThat(shop.files()).containsExactly("chest.job.json", "chest.plan.json", "chest.sheet.html");
    }

    @Test
    void a_wrong_job_is_told_with_its_place() throws IOException {
        Shop shop = shop();
        shop.file("bad.job.json", JobText.CABINET.replace("0.5", "2"));
        assertThat(shop.run("plan", "FOLDER/bad.job.json")).isEqualTo(2);
        assertThat(shop.err()).isEqualTo("""
                FOLDER/bad.job.json: 1 mistake, nothing was planned.
                  $.salvage   2; it must be a share from 0 to 1.
                    9:14 | "salvage": 2,
                         |            ^
                """);
        assertThat(shop.files()).containsExactly("bad.job.json");
    }

    @Test
    void a_wrong_job_alone_makes_not_even_the_folder() throws IOException {
        Shop shop = shop();
        shop.file("bad.job.json", "{");
        assertThat(shop.run("plan", "FOLDER/bad.job.json", "--out", "FOLDER/out"))
                .isEqualTo(2);
        assertThat(folder.resolve("out")).doesNotExist();
        assertThat(shop.out()).isEmpty();
    }

    @Test
    void a_fault_of_ours_is_called_so_and_keeps_its_stack_trace() throws IOException {
        Shop shop = new Shop(folder, (job, options) -> {
            throw new IllegalStateException("A strip came out wider than its section.");
        });
        shop.file("cabinet.job.json", JobText.CABINET);
        assertThat(shop.run("plan", "FOLDER/cabinet.job.json")).isEqualTo(3);
        assertThat(shop.err()).startsWith("""
                FOLDER/cabinet.job.json:
                This is a fault of Ripwright's, not yours. Please report it with all that follows.
                java.lang.IllegalStateException: A strip came out wider than its section.
                \tat ripwright.runner.cli.PlanCommandTest.""");
        assertThat(shop.files()).containsExactly("cabinet.job.json");
    }

    @Test
    void two_jobs_that_would_write_the_same_file_are_refused() throws IOException {
        Shop shop = shop();
        shop.file("a/cabinet.job.json", JobText.CABINET);
        shop.file("b/cabinet.json", JobText.CABINET);
        assertThat(shop.run("plan", "FOLDER/a/cabinet.job.json", "FOLDER/b/cabinet.json", "--out", "FOLDER"))
                .isEqualTo(2);
        assertThat(shop.err())
                .isEqualTo("FOLDER/a/cabinet.job.json and FOLDER/b/cabinet.json would both be planned into "
                        + "FOLDER/cabinet.plan.json. Rename one, or plan them apart.\n");
        assertThat(shop.files()).containsExactly("a/cabinet.job.json", "b/cabinet.json");
    }

    @Test
    void a_file_in_the_place_of_the_folder_is_told_before_planning() throws IOException {
        Shop shop = new Shop(folder, (job, options) -> {
            throw new AssertionError("planned");
        });
        shop.file("cabinet.job.json", JobText.CABINET);
        shop.file("out", "");
        assertThat(shop.run("plan", "FOLDER/cabinet.job.json", "--out", "FOLDER/out"))
                .isEqualTo(2);
        assertThat(shop.err())
                .isEqualTo("FOLDER/cabinet.job.json: the plan cannot be written: FOLDER/out is not a directory.\n");
    }

    @Test
    void a_directory_in_the_place_of_the_plan_is_told_before_planning() throws IOException {
        Shop shop = new Shop(folder, (job, options) -> {
            throw new AssertionError("planned");
        });
        shop.file("cabinet.job.json", JobText.CABINET);
        Files.createDirectory(folder.resolve("cabinet.plan.json"));
        assertThat(shop.run("plan", "FOLDER/cabinet.job.json")).isEqualTo(2);
        assertThat(shop.err())
                .isEqualTo("FOLDER/cabinet.job.json: the plan cannot be written: "
                        + "FOLDER/cabinet.plan.json: a directory has its name.\n");
    }

    private static Plan planWithProgress(ripwright.Options options) {
        options.listener()
                .progress(new Progress(Duration.ofSeconds(3), new BigDecimal("20.50"), new BigDecimal("10.80"), 1, 2));
        options.listener()
                .progress(
                        new Progress(Duration.ofMillis(3_100), new BigDecimal("14.37"), new BigDecimal("10.80"), 2, 2));
        return Plans.cabinet();
    }

    @Test
    @Tag("locale")
    void progress_is_one_line_on_a_terminal_and_goes_away() throws IOException {
        Shop shop = new Shop(folder, (job, options) -> planWithProgress(options), true);
        shop.file("cabinet.job.json", JobText.CABINET);
        shop.run("plan", "FOLDER/cabinet.job.json");
        String line = "  Searching. After 3 s: 1 of 2 parts, cost 20.50, at least 10.80. Ctrl-C ends it.";
        assertThat(shop.err())
                .isEqualTo("\r" + line + "\r" + line.replace("1 of 2", "2 of 2").replace("20.50", "14.37") + "\r"
                        + " ".repeat(line.length()) + "\r");
    }

    @Test
    void progress_is_quiet_where_nobody_watches() throws IOException {
        Shop shop = new Shop(folder, (job, options) -> planWithProgress(options));
        shop.file("cabinet.job.json", JobText.CABINET);
        shop.run("plan", "FOLDER/cabinet.job.json");
        assertThat(shop.err()).isEmpty();
    }

    @Test
    void the_job_that_is_planned_is_the_one_in_the_file() throws IOException {
        List<Job> planned = new ArrayList<>();
        Shop shop = new Shop(folder, (job, options) -> {
            planned.add(job);
            return Plans.cabinet();
        });
        shop.file("cabinet.job.json", JobText.CABINET);
        shop.run("plan", "FOLDER/cabinet.job.json");
        assertThat(planned).extracting(Job::name).containsExactly("Cabinet");
    }
}
