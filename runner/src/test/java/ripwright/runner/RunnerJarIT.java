package ripwright.runner;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The jar as a user starts it. */
class RunnerJarIT {
    private static final String SAMPLE = "../samples/crooked-board/crooked-board.job.json";

    @TempDir
    private Path folder;

    private int run(String... arguments) throws IOException, InterruptedException {
        return new RunnerJar(folder).run(arguments);
    }

    @Test
    void a_sample_is_planned_and_its_plan_replayed_without_a_word_on_the_error_stream()
            throws IOException, InterruptedException {
        assertThat(run("plan", SAMPLE, "--out", folder.toString())).isZero();
        assertThat(folder.resolve("err")).isEmptyFile();
        assertThat(folder.resolve("out")).content().startsWith("Dividers from a crooked board: complete, all 9 parts.");
        Path plan = folder.resolve("crooked-board.plan.json");
        assertThat(run("replay", SAMPLE, plan.toString())).isZero();
        assertThat(folder.resolve("out")).content().startsWith(plan + ": right, all ");
    }

    @Test
    void what_is_left_of_a_job_is_planned_without_a_word_on_the_error_stream()
            throws IOException, InterruptedException {
        String bench = "../samples/shoe-bench/";
        String report = bench + "narrow-strip.report.json";
        assertThat(run("resume", bench + "shoe-bench.plan.json", report, "--out", folder.toString()))
                .isZero();
        assertThat(folder.resolve("err")).isEmptyFile();
        assertThat(folder.resolve("out")).content().startsWith("Shoe bench, resumed: complete, all 21 parts.");
    }

    @Test
    void wrong_input_ends_with_2() throws IOException, InterruptedException {
        assertThat(run("plan", "nowhere.job.json")).isEqualTo(2);
        assertThat(folder.resolve("out")).isEmptyFile();
        assertThat(folder.resolve("err")).hasContent("""
                nowhere.job.json: 1 mistake, nothing was planned.
                  there is no such file.
                """);
    }

    @Test
    void it_says_what_to_do_next_and_its_version() throws IOException, InterruptedException {
        assertThat(run()).isZero();
        assertThat(folder.resolve("out")).content().contains("plan lockers.job.json");
        assertThat(run("--version")).isZero();
        assertThat(folder.resolve("out")).content().matches("ripwright \\d+\\.\\d+\\.\\d+.*\\R");
    }

    @Test
    void it_is_under_25_megabytes() throws IOException {
        assertThat(Files.size(RunnerJar.FILE)).isLessThan(25L << 20);
    }
}
