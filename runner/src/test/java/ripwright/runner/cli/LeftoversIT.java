package ripwright.runner.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import ripwright.json.JobText;
import ripwright.json.Plans;
import ripwright.runner.RunnerJar;
import ripwright.runner.disk.Halted;

/** Processes are killed while they write, and the next run finds its folder as if they never had been. */
class LeftoversIT {
    private static final int KILLS = Integer.getInteger("ripwright.kills", 5);

    @TempDir
    private Path folder;

    private List<String> files(String kind) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(file -> String.valueOf(file.getFileName()))
                    .filter(file -> file.matches(kind))
                    .sorted()
                    .toList();
        }
    }

    @Test
    void what_a_run_was_killed_over_is_cleared_by_the_next_wherever_that_was()
            throws IOException, InterruptedException {
        Shop shop = new Shop(folder, (job, options) -> Plans.cabinet());
        shop.file("a.job.json", JobText.CABINET);
        int left = 0;
        int instants = 0;
        for (; Halted.isKilled(instants, folder.resolve("a.sheet.html")); instants++) {
            left += files("\\..*\\.ripwright\\.tmp").size();
            assertThat(shop.run("plan", "FOLDER/a.job.json")).isZero();
            assertThat(files(".*")).containsExactly("a.job.json", "a.plan.json", "a.sheet.html");
        }
        assertThat(instants).isEqualTo(4);
        assertThat(left).isEqualTo(2);
    }

    /** {@code -Dripwright.kills=200} kills the jar itself as often, each time a little later. */
    @Test
    void a_batch_killed_again_and_again_leaves_nothing_but_what_is_whole() throws IOException, InterruptedException {
        for (int i = 1; i <= 6; i++) Files.writeString(folder.resolve("j" + i + ".job.json"), ManyJobs.job(i));
        Path said = Files.createDirectory(folder.resolve("said"));
        for (int kill = 1; kill <= KILLS; kill++) {
            Process process = new RunnerJar(said)
                    .start(List.of(), ProcessBuilder.Redirect.PIPE, "plan", folder.toString(), "--again");
            process.waitFor(4_000L * kill / KILLS, TimeUnit.MILLISECONDS);
            process.destroyForcibly().waitFor();
        }
        assertThat(new RunnerJar(said).run("plan", folder.toString())).isBetween(0, 1);
        assertThat(files("\\..*")).allMatch(file -> file.endsWith(".made-from")).hasSize(6);
        assertThat(files(".*\\.plan\\.json")).hasSize(6);
    }
}
