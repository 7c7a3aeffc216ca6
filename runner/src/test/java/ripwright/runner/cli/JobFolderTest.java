package ripwright.runner.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import ripwright.json.JobText;
import ripwright.json.Plans;
import ripwright.json.tree.TextLimit;

/** A folder of jobs in which some are none: each is told, and the others are planned. */
@Timeout(60)
class JobFolderTest {
    @TempDir
    private Path folder;

    private Shop shop() throws IOException {
        Shop shop = new Shop(folder, (job, options) -> Plans.cabinet());
        shop.file("z.job.json", JobText.CABINET);
        return shop;
    }

    private void assertThatAllButTheLastAreToldAs(Shop shop, String mistakes) {
        assertThat(shop.run("plan", "FOLDER", "--at-once", "1")).isEqualTo(2);
        assertThat(shop.err().replaceAll("(?m)^\\d of \\d: .*\n", "")).isEqualTo(mistakes);
        assertThat(folder.resolve("z.plan.json")).exists();
    }

    @Test
    void a_directory_with_the_name_of_a_job_is_told_and_looked_into_all_the_same() throws IOException {
        Shop shop = shop();
        shop.file("a.job.json/b.job.json", JobText.CABINET);
        assertThatAllButTheLastAreToldAs(shop, """
                FOLDER/a.job.json: 1 mistake, nothing was planned.
                  this is a directory; it must be a file.
                """);
        assertThat(folder.resolve("a.job.json/b.plan.json")).exists();
    }

    @Test
    void links_that_lead_nowhere_in_circles_or_to_folders_are_told() throws IOException {
        Shop shop = shop();
        Files.createSymbolicLink(folder.resolve("a.job.json"), folder.resolve("gone"));
        Files.createSymbolicLink(folder.resolve("b.job.json"), folder.resolve("b.job.json"));
        Files.createSymbolicLink(folder.resolve("c.job.json"), folder);
        Files.createSymbolicLink(folder.resolve("d"), folder);
        assertThatAllButTheLastAreToldAs(shop, """
                FOLDER/a.job.json: 1 mistake, nothing was planned.
                  this link leads nowhere.
                FOLDER/b.job.json: 1 mistake, nothing was planned.
                  the file cannot be reached.
                FOLDER/c.job.json: 1 mistake, nothing was planned.
                  this is a directory; it must be a file.
                """);
    }

    @Test
    void a_pipe_is_not_waited_for_whether_it_is_a_job_or_its_rack() throws IOException, InterruptedException {
        Shop shop = shop();
        String pipe = folder.resolve("a.job.json").toString();
        assumeTrue(new ProcessBuilder("mkfifo", pipe, folder + "/rack").start().waitFor() == 0);
        shop.file("b.job.json", JobText.CABINET.replace("\"stack\"", "\"rack\": \"rack\", \"stack\""));
        assertThatAllButTheLastAreToldAs(shop, """
                FOLDER/a.job.json: 1 mistake, nothing was planned.
                  this is a pipe or a device; it must be a file.
                FOLDER/b.job.json: 1 mistake, nothing was planned.
                  $.rack   "rack" leads to FOLDER/rack: this is a pipe or a device; it must be a file.
                    10:11 | "rack": "rack", "stack": [
                          |         ^
                """);
        assertThat(shop.run("plan", pipe)).isEqualTo(2);
    }

    @Test
    void files_too_long_for_a_job_are_told_and_not_read() throws IOException {
        Shop shop = shop();
        for (String name : new String[] {"a.job.json", "rack"})
            try (RandomAccessFile large =
                    new RandomAccessFile(folder.resolve(name).toFile(), "rw")) {
                large.setLength(3L << 30);
            }
        shop.file("b.job.json", JobText.CABINET.replace("\"stack\"", "\"rack\": \"rack\", \"stack\""));
        String over = TextLimit.ofThisHeap().over("the file");
        assertThatAllButTheLastAreToldAs(shop, """
                FOLDER/a.job.json: 1 mistake, nothing was planned.
                  %s
                FOLDER/rack: 1 mistake, nothing was planned.
                  %s
                """.formatted(over, over));
    }

    @Test
    void a_folder_that_may_not_be_looked_into_hides_only_itself() {
        JobFolder jobs = new JobFolder(folder);
        jobs.visitFileFailed(folder.resolve("shut"), new AccessDeniedException(folder + "/shut"));
        assertThat(jobs.jobs())
                .extracting(job -> job.path() + ": " + job.hindrance().orElseThrow())
                .containsExactly(folder + "/shut: this user may not look into it.");
    }
}
