package ripwright.json;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import ripwright.json.tree.WrongInputException;
import ripwright.measure.Unit;

/** Files of one kind where another is due: one mistake that says so. */
class FileKindTest {
    private static final Path SAMPLE = Path.of("../../samples/shoe-bench");
    private static final Path JOB = SAMPLE.resolve("shoe-bench.job.json");
    private static final Path PLAN = SAMPLE.resolve("shoe-bench.plan.json");
    private static final Path REPORT = SAMPLE.resolve("knot-found.report.json");
    private static final Path RACK = Path.of("../../samples/three-jobs/rack.json");

    @TempDir
    private Path folder;

    private interface Reading {
        Object read() throws WrongInputException;
    }

    private static String told(Reading reading) {
        try {
            return "no mistake: " + reading.read();
        } catch (WrongInputException e) {
            return e.text("nothing was read");
        }
    }

    private static String mistaken(Path file, String what) {
        return file + ": 1 mistake, nothing was read.\n  " + what + "\n";
    }

    @Test
    void a_job_where_a_plan_is_due() {
        assertThat(told(() -> PlanReader.read(JOB))).isEqualTo(mistaken(JOB, "this is a job; a plan is due here."));
    }

    @Test
    void a_plan_where_a_job_is_due() {
        assertThat(told(() -> JobReader.read(PLAN))).isEqualTo(mistaken(PLAN, "this is a plan; a job is due here."));
    }

    @Test
    void a_report_where_a_plan_is_due() {
        assertThat(told(() -> PlanReader.read(REPORT)))
                .isEqualTo(mistaken(REPORT, "this is a report of what is done; a plan is due here."));
    }

    @Test
    void a_rack_where_a_report_is_due() {
        assertThat(told(() -> ReportFile.read(RACK, Unit.INCH)))
                .isEqualTo(mistaken(RACK, "this is a rack; a report of what is done is due here."));
    }

    @Test
    void a_job_where_a_rack_is_due() throws IOException {
        assertThat(told(() -> RackReader.read(JOB))).isEqualTo(mistaken(JOB, "this is a job; a rack is due here."));
        Path job = folder.resolve("a.job.json");
        Files.writeString(job, JobText.CABINET.replace("\"stack\"", "\"rack\": \"a.job.json\", \"stack\""));
        assertThat(told(() -> JobReader.read(job))).isEqualTo(mistaken(job, "this is a job; a rack is due here."));
    }
}
