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
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import ripwright.Options;
import ripwright.plan.Plan;
import ripwright.runner.json.JobText;
import ripwright.runner.json.PlanWriter;
import ripwright.runner.json.Plans;

class InterruptionTest {
    @TempDir
    private Path folder;

    /** A process of its own whose search ends only when it is told to. */
    static final class EndlessSearch {
        private EndlessSearch() {}

        public static void main(String[] arguments) {
            PrintWriter out = new PrintWriter(new OutputStreamWriter(System.out, StandardCharsets.UTF_8), true);
            Terminal terminal = new Terminal(out, out, false);
            System.exit(new Ripwright(terminal, "1.2.3", (job, options) -> search(out, options)).run(arguments));
        }

        private static Plan search(PrintWriter out, Options options) {
            out.println("searching");
            while (!options.cancellation().getAsBoolean()) Thread.onSpinWait();
            return Plans.cabinet();
        }
    }

    @Test
    @Timeout(60)
    void the_best_plan_so_far_is_written_when_the_process_is_told_to_end() throws IOException, InterruptedException {
        Path first = Files.writeString(folder.resolve("first.job.json"), JobText.CABINET);
        Path second = Files.writeString(folder.resolve("second.job.json"), JobText.CABINET);
        Process process = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-cp",
                        System.getProperty("java.class.path"),
                        EndlessSearch.class.getName(),
                        "plan",
                        first.toString(),
                        second.toString())
                .redirectErrorStream(true)
                .start();
        try (BufferedReader said =
                new BufferedReader(new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8))) {
            assertThat(said.readLine()).isEqualTo("searching");
            process.toHandle().destroy(); // asks it to end, as closing its window would; Ctrl-C takes the same way
            assertThat(said.lines()).last().isEqualTo("  Interrupted: this is the best plan so far.");
        }
        assertThat(process.waitFor(50, TimeUnit.SECONDS)).isTrue();
        assertThat(process.exitValue()).isNotZero();
        assertThat(folder.resolve("first.plan.json")).hasBinaryContent(PlanWriter.bytes(Plans.cabinet()));
        assertThat(folder.resolve("first.sheet.html")).exists();
        assertThat(folder.resolve("second.plan.json")).doesNotExist();
    }

    @Test
    void without_one_nothing_came() {
        try (Interruption interruption = new Interruption()) {
            assertThat(interruption.came()).isFalse();
        }
    }
}
