package ripwright.runner.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.OutputStreamWriter;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import ripwright.Options;
import ripwright.job.Job;
import ripwright.json.JobText;
import ripwright.json.PlanWriter;
import ripwright.json.Plans;
import ripwright.plan.Plan;

class InterruptionTest {
    @TempDir
    private Path folder;

    /** A process of its own whose search ends only when it is told to, unless the job is called Quick. */
    static final class EndlessSearch {
        private EndlessSearch() {}

        public static void main(String[] arguments) {
            PrintWriter out = new PrintWriter(new OutputStreamWriter(System.out, StandardCharsets.UTF_8), true);
            Terminal terminal = new Terminal(System.in, out, out, false);
            int code = new Ripwright(terminal, "1.2.3", (job, options) -> search(job, out, options)).run(arguments);
            Runtime.getRuntime().halt(code);
        }

        private static Plan search(Job job, PrintWriter out, Options options) {
            if (!job.name().equals("Quick")) {
                out.println("searching");
                while (!options.cancellation().getAsBoolean()) Thread.onSpinWait();
            }
            return Plans.cabinet();
        }
    }

    private static Process started(String... arguments) throws IOException {
        List<String> command = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-cp",
                System.getProperty("java.class.path"),
                EndlessSearch.class.getName()));
        command.addAll(List.of(arguments));
        return new ProcessBuilder(command).redirectErrorStream(true).start();
    }

    /** What the process said after it was ended while it searched; {@code forced} as a power cut would. */
    private static List<String> ended(Process process, boolean forced) throws IOException, InterruptedException {
        try (BufferedReader said =
                new BufferedReader(new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8))) {
            for (String line = ""; !"searching".equals(line); line = said.readLine())
                assertThat(line).as("the end of what was said").isNotNull();
            if (forced) process.toHandle().destroyForcibly();
            else process.toHandle().destroy(); // asks it to end, as closing its window would; Ctrl-C takes the same way
            List<String> after = said.lines().toList();
            assertThat(process.waitFor(50, TimeUnit.SECONDS)).isTrue();
            return after;
        }
    }

    private Path job(String file, String name) throws IOException {
        return Files.writeString(folder.resolve(file), JobText.CABINET.replace("Cabinet", name));
    }

    private List<String> files() throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(file -> String.valueOf(file.getFileName()))
                    .filter(file -> !file.endsWith(".job.json"))
                    .sorted()
                    .toList();
        }
    }

    @Test
    @Timeout(60)
    void the_best_plan_so_far_is_written_when_the_process_is_told_to_end() throws IOException, InterruptedException {
        Process process = started("plan", job("first.job.json", "First").toString());
        assertThat(ended(process, false)).last().isEqualTo("  Interrupted: this is the best plan so far.");
        assertThat(process.exitValue()).isEqualTo(130);
        assertThat(folder.resolve("first.plan.json")).hasBinaryContent(PlanWriter.bytes(Plans.cabinet()));
        assertThat(files()).containsExactly("first.plan.json", "first.sheet.html");
    }

    @Test
    @Timeout(60)
    void a_batch_told_to_end_writes_what_is_underway_begins_nothing_more_and_goes_on_there_the_next_time()
            throws IOException, InterruptedException {
        threeJobs();
        Process process = started("plan", folder.toString(), "--at-once", "1", "--report", folder + "/report.json");
        assertThat(ended(process, false))
                .contains(
                        "3 jobs: 1 complete, 2 interrupted. Cost of all plans: 28.74.",
                        "Report: " + folder + "/report.json");
        assertThat(process.exitValue()).isEqualTo(130);
        assertThat(files())
                .containsExactly(
                        ".a.made-from", "a.plan.json", "a.sheet.html", "b.plan.json", "b.sheet.html", "report.json");
        assertThat(folder.resolve("b.plan.json")).hasBinaryContent(PlanWriter.bytes(Plans.cabinet()));
        assertThat(folder.resolve("report.json")).content().contains("\"exitCode\": 130,", "\"interrupted\": 2,");
        assertThat(plannedNow()).containsExactly("B", "C");
        assertThat(plannedNow()).isEmpty();
    }

    @Test
    @Timeout(60)
    void a_batch_that_is_cut_off_leaves_whole_files_and_goes_on_there_the_next_time()
            throws IOException, InterruptedException {
        threeJobs();
        Process process = started("plan", folder.toString(), "--at-once", "1");
        ended(process, true);
        assertThat(files()).containsExactly(".a.made-from", "a.plan.json", "a.sheet.html");
        assertThat(folder.resolve("a.plan.json")).hasBinaryContent(PlanWriter.bytes(Plans.cabinet()));
        assertThat(plannedNow()).containsExactly("B", "C");
    }

    private void threeJobs() throws IOException {
        job("a.job.json", "Quick");
        job("b.job.json", "B");
        job("c.job.json", "C");
    }

    /** The jobs of the folder that a run now does not find planned already. */
    private List<String> plannedNow() {
        List<String> planned = new ArrayList<>();
        Shop shop = new Shop(folder, (job, options) -> {
            planned.add(job.name());
            return Plans.cabinet();
        });
        assertThat(shop.run("plan", folder.toString(), "--at-once", "1")).isZero();
        return planned;
    }

    @Test
    @Timeout(60)
    void lines_end_too_although_standard_input_stays_open() throws IOException, InterruptedException {
        Process process = started("plan", "-", "--at-once", "1");
        String line = JobText.CABINET.replace("\n", " ") + "\n";
        process.getOutputStream().write((line + line).getBytes(StandardCharsets.UTF_8));
        process.getOutputStream().flush();
        assertThat(ended(process, false))
                .anySatisfy(answer -> assertThat(answer)
                        .startsWith(
                                "{ \"line\": 1, \"job\": \"Cabinet\", \"outcome\": \"interrupted\", \"exitCode\": 130,")
                        .contains("\"plan\": { "));
        assertThat(process.exitValue()).isEqualTo(130);
    }

    @Test
    void without_one_nothing_came() {
        try (Interruption interruption = new Interruption()) {
            assertThat(interruption.came()).isFalse();
        }
    }
}
