package ripwright.runner.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.networknt.schema.InputFormat;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import ripwright.Options;
import ripwright.job.Job;
import ripwright.json.JobText;
import ripwright.json.PlanWriter;
import ripwright.json.Plans;
import ripwright.plan.Plan;

class BatchTest {
    private static final String RACK = "{ \"format\": 1, \"units\": \"in\", \"offcuts\": [] }";

    @TempDir
    private Path folder;

    private final AtomicInteger planned = new AtomicInteger();

    private Plan plan(Job job, Options options) {
        planned.incrementAndGet();
        return switch (job.name()) {
            case "Short" -> Plans.strange();
            case "Faulty" -> throw new IllegalStateException("A strip came out wider than its section.");
            case "Big" -> throw new OutOfMemoryError("Java heap space");
            default -> Plans.cabinet();
        };
    }

    private Shop shop() {
        return new Shop(folder, this::plan);
    }

    private static String job(String name) {
        return JobText.CABINET.replace("Cabinet", name);
    }

    @Test
    @Tag("locale")
    void a_table_tells_what_came_of_each_and_a_line_as_soon_as_it_is_known() throws IOException {
        Shop shop = shop();
        shop.file("jobs/cabinet.job.json", job("Cabinet"));
        shop.file("jobs/low/bad.job.json", JobText.CABINET.replace("0.5", "2"));
        shop.file("jobs/low/chest.job.json", job("Short"));
        assertThat(shop.run("plan", "FOLDER/jobs", "--at-once", "1")).isEqualTo(2);
        assertThat(shop.out().replaceAll(" {2,}", "  ")).isEqualTo("""
                job  parts  cost  at least  gap  yield
                FOLDER/jobs/cabinet  2 of 2  14.37  10.80  24.85 %  25.0 %  complete
                FOLDER/jobs/low/bad  1 mistake
                FOLDER/jobs/low/chest  0 of 3  -3.90  -3.90  0.00 %  0.0 %  short
                3 jobs: 1 complete, 1 short, 1 bad input. Cost of all plans: 10.47.
                """);
        assertThat(shop.err()).isEqualTo("""
                1 of 3: FOLDER/jobs/cabinet: complete, 2 of 2 parts, cost 14.37
                FOLDER/jobs/low/bad.job.json: 1 mistake, nothing was planned.
                  $.salvage   2; it must be a share from 0 to 1.
                    9:14 | "salvage": 2,
                         |            ^
                2 of 3: FOLDER/jobs/low/bad: 1 mistake
                3 of 3: FOLDER/jobs/low/chest: short, 0 of 3 parts, cost -3.90
                """);
    }

    @Test
    void every_job_in_a_folder_is_planned_and_keeps_its_place_below_the_folder_to_write_to() throws IOException {
        Shop shop = shop();
        shop.file("jobs/a.job.json", job("A"));
        shop.file("jobs/b/a.job.json", job("B"));
        shop.file("jobs/b/rack.json", RACK);
        shop.file("jobs/.hidden/c.job.json", job("C"));
        assertThat(shop.run("plan", "FOLDER/jobs", "--out", "FOLDER/plans")).isZero();
        assertThat(shop.files())
                .containsExactly(
                        "jobs/.hidden/c.job.json",
                        "jobs/a.job.json",
                        "jobs/b/a.job.json",
                        "jobs/b/rack.json",
                        "plans/.a.made-from",
                        "plans/a.plan.json",
                        "plans/a.sheet.html",
                        "plans/b/.a.made-from",
                        "plans/b/a.plan.json",
                        "plans/b/a.sheet.html",
                        "plans/report.json");
        assertThat(folder.resolve("plans/b/a.plan.json")).hasBinaryContent(PlanWriter.bytes(Plans.cabinet()));
    }

    @Test
    void a_folder_without_jobs_is_told_and_stops_no_other() throws IOException {
        Shop shop = shop();
        Files.createDirectory(folder.resolve("empty"));
        shop.file("a.job.json", job("A"));
        assertThat(shop.run("plan", "FOLDER/empty", "FOLDER/a.job.json")).isEqualTo(2);
        assertThat(shop.err()).contains("""
                FOLDER/empty: 1 mistake, nothing was planned.
                  no file in this folder ends with .job.json.
                """);
        assertThat(folder.resolve("a.plan.json")).exists();
    }

    @Test
    void no_fault_stops_the_others_not_even_running_out_of_memory() throws IOException {
        Shop shop = shop();
        shop.file("a.job.json", job("Faulty"));
        shop.file("b.job.json", job("Big"));
        shop.file("c.job.json", job("Cabinet"));
        assertThat(shop.run("plan", "FOLDER", "--at-once", "1")).isEqualTo(3);
        assertThat(shop.err())
                .contains("""
                        FOLDER/a.job.json:
                        This is a fault of Ripwright's, not yours. Please report it with all that follows.
                        java.lang.IllegalStateException: A strip came out wider than its section.
                        \tat ripwright.runner.cli.BatchTest.""")
                .contains("FOLDER/b.job.json:\nThis takes more than there is: not enough memory: Java may use ");
        assertThat(shop.files())
                .containsExactly(
                        ".c.made-from", "a.job.json", "b.job.json", "c.job.json", "c.plan.json", "c.sheet.html");
    }

    @Test
    void a_job_that_found_the_heap_full_is_planned_once_more_alone() throws IOException {
        Shop shop = new Shop(folder, (job, options) -> {
            if (planned.incrementAndGet() == 1) throw new OutOfMemoryError("Java heap space");
            return Plans.cabinet();
        });
        shop.file("a.job.json", job("A"));
        shop.file("b.job.json", job("B"));
        assertThat(shop.run("plan", "FOLDER", "--at-once", "2")).isZero();
        assertThat(planned).hasValue(3);
    }

    @Test
    void a_console_that_fails_ends_no_batch() throws IOException {
        StringWriter out = new StringWriter();
        PrintWriter failing = new PrintWriter(new StringWriter()) {
            @Override
            public void println(String line) {
                throw new IllegalStateException("the console is gone");
            }
        };
        Files.writeString(folder.resolve("a.job.json"), job("A"));
        Files.writeString(folder.resolve("b.job.json"), job("B"));
        Terminal terminal = new Terminal(new PrintWriter(out), failing, false);
        assertThat(new Ripwright(terminal, "1.2.3", this::plan).run("plan", folder.toString()))
                .isZero();
        assertThat(out.toString()).contains("2 jobs: 2 complete.");
    }

    @Test
    void run_again_it_plans_nothing_that_stands() throws IOException {
        Shop shop = shop();
        shop.file("a.job.json", job("A"));
        shop.file("b.job.json", job("Short"));
        assertThat(shop.run("plan", "FOLDER")).isEqualTo(1);
        assertThat(shop.run("plan", "FOLDER")).isEqualTo(1);
        assertThat(planned).hasValue(2);
        assertThat(shop.out())
                .contains("14.37     10.80  24.85 %  25.0 %  complete, planned before")
                .contains("1 complete, 1 short; 2 of them planned before");
    }

    @Test
    void asked_to_plan_again_it_plans_what_stands() throws IOException {
        Shop shop = shop();
        shop.file("a.job.json", job("A"));
        shop.run("plan", "FOLDER");
        shop.run("plan", "FOLDER", "--again");
        assertThat(planned).hasValue(2);
    }

    @ParameterizedTest
    @ValueSource(strings = {"a.job.json", "rack.json", "a.plan.json", "a.sheet.html", ".a.made-from"})
    void one_more_blank_in_any_file_and_the_job_is_planned_again(String changed) throws IOException {
        Shop shop = shop();
        shop.file("a.job.json", JobText.CABINET.replace("\"parts\"", "\"rack\": \"rack.json\", \"parts\""));
        shop.file("rack.json", RACK);
        shop.run("plan", "FOLDER");
        shop.file(changed, Files.readString(folder.resolve(changed)) + " ");
        assertThat(shop.run("plan", "FOLDER")).isZero();
        assertThat(planned).hasValue(2);
        assertThat(folder.resolve("a.plan.json")).hasBinaryContent(PlanWriter.bytes(Plans.cabinet()));
        shop.run("plan", "FOLDER");
        assertThat(planned).hasValue(2);
    }

    @Test
    void drawings_asked_for_later_are_made_then() throws IOException {
        Shop shop = shop();
        shop.file("a.job.json", job("A"));
        shop.run("plan", "FOLDER");
        shop.run("plan", "FOLDER", "--drawings");
        assertThat(folder.resolve("a.boards.svg")).exists();
    }

    @Test
    @Timeout(60)
    void as_many_jobs_as_asked_for_are_planned_at_once_each_on_its_share_of_the_processors() throws IOException {
        CountDownLatch both = new CountDownLatch(2);
        ConcurrentLinkedQueue<Integer> threads = new ConcurrentLinkedQueue<>();
        Shop shop = new Shop(folder, (job, options) -> {
            threads.add(job.limits().threads().orElseThrow());
            both.countDown();
            try {
                both.await();
            } catch (InterruptedException e) {
                throw new IllegalStateException(e);
            }
            return Plans.cabinet();
        });
        shop.file("a.job.json", job("A"));
        shop.file("b.job.json", job("B"));
        assertThat(shop.run("plan", "FOLDER", "--at-once", "2")).isZero();
        int share = Math.max(1, Runtime.getRuntime().availableProcessors() / 2);
        assertThat(threads).containsExactly(share, share);
    }

    @Test
    void the_report_keeps_to_its_schema_whatever_happened() throws IOException {
        Shop shop = shop();
        shop.file("jobs/a.job.json", job("A"));
        shop.file("jobs/b.job.json", job("Short"));
        shop.file("jobs/c.job.json", "{ \"format\": 1 }");
        shop.file("jobs/d.job.json", job("Faulty"));
        shop.file("jobs/e.job.json", job("E"));
        Files.createDirectories(folder.resolve("jobs/e.plan.json"));
        shop.run("plan", "FOLDER/jobs/a.job.json", "--report", "FOLDER/first.json");
        assertThat(shop.run("plan", "FOLDER/jobs", "FOLDER/f", "--report", "FOLDER/new/report.json"))
                .isEqualTo(3);
        String report = Files.readString(folder.resolve("new/report.json"));
        assertThat(complaints(report)).isEmpty();
        assertThat(report)
                .contains("\"exitCode\": 3,", "\"jobs\": 6,", "\"complete\": 1,", "\"short\": 1,", "\"badInput\": 3,")
                .contains("\"fault\": 1,", "\"interrupted\": 0,", "\"plannedBefore\": 1,")
                .contains("\"outcome\": \"fault\", \"exitCode\": 3")
                .contains("java.lang.IllegalStateException: A strip came out wider than its section.")
                .contains("e.plan.json: a directory has its name")
                .contains("there is no such file.");
    }

    private static List<String> complaints(String report) throws IOException {
        try (InputStream in =
                Objects.requireNonNull(BatchTest.class.getResourceAsStream("/ripwright/batch.schema.json"))) {
            return SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                    .getSchema(new String(in.readAllBytes(), StandardCharsets.UTF_8), InputFormat.JSON)
                    .validate(report, InputFormat.JSON)
                    .stream()
                    .map(Object::toString)
                    .toList();
        }
    }

    @Test
    void a_report_that_cannot_be_written_is_told_and_the_plans_stay() throws IOException {
        Shop shop = shop();
        shop.file("a.job.json", job("A"));
        assertThat(shop.run("plan", "FOLDER/a.job.json", "--report", "FOLDER/a.job.json/report.json"))
                .isEqualTo(2);
        assertThat(shop.err()).contains("FOLDER/a.job.json/report.json: the report cannot be written: ");
        assertThat(folder.resolve("a.plan.json")).exists();
    }

    @Test
    void on_a_terminal_there_is_a_bar_and_it_goes_away() throws IOException {
        Shop shop = new Shop(folder, this::plan, true);
        shop.file("a.job.json", job("A"));
        shop.file("b.job.json", "{");
        shop.run("plan", "FOLDER");
        assertThat(shop.err())
                .contains("\rPlanning", "b.job.json: 1 mistake, nothing was planned.\n")
                .doesNotContain("1 of 2:")
                .endsWith("\r" + " ".repeat(79) + "\r");
    }

    @Test
    void what_goes_with_one_job_alone_is_refused_for_many_and_not_left_out_in_silence() throws IOException {
        Shop shop = shop();
        shop.file("a.job.json", job("A"));
        shop.file("b.job.json", job("B"));
        assertThat(shop.run("plan", "FOLDER", "--tables")).isEqualTo(2);
        assertThat(shop.run("plan", "FOLDER/a.job.json", "--report", "FOLDER/r.json", "--stack", "FOLDER/s.csv"))
                .isEqualTo(2);
        assertThat(shop.run("plan", "FOLDER", "--together", "--tables")).isEqualTo(2);
        assertThat(shop.run("plan", "-", "--tables")).isEqualTo(2);
        assertThat(shop.err()).isEqualTo("""
                --tables goes with one job and no --report; plan these apart.
                --stack and --parts go with one job and no --report; plan these apart.
                Jobs that share a stack are planned as one: leave out --report, --at-once, --again, --stack, --parts and --tables.
                With - the plans go to standard output and nowhere else: leave out all options but --at-once and --verbose.
                """);
        assertThat(planned).hasValue(0);
    }

    @Test
    void no_number_of_jobs_at_once_below_one_is_taken() throws IOException {
        Shop shop = shop();
        shop.file("a.job.json", job("A"));
        assertThat(shop.run("plan", "FOLDER", "--at-once", "0")).isEqualTo(2);
        assertThat(shop.err()).isEqualTo("--at-once is 0; it must be at least 1.\n");
        assertThat(planned).hasValue(0);
    }
}
