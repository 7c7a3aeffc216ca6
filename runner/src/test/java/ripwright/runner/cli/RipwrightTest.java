package ripwright.runner.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import ripwright.Planner;
import ripwright.json.JobText;

class RipwrightTest {
    @TempDir
    private Path folder;

    private Shop shop;

    @BeforeEach
    void open() {
        shop = new Shop(folder, Planner::plan);
    }

    @Test
    void without_arguments_it_says_what_to_do_next() {
        assertThat(shop.run()).isZero();
        assertThat(shop.out()).isEqualTo("""
                Ripwright plans how a stack of boards becomes the parts of a furniture job.

                Begin with a small job that is ready to be planned and changed:
                  java -jar ripwright.jar start first-job

                Or plan a job file of your own:
                  java -jar ripwright.jar plan lockers.job.json

                It writes lockers.plan.json and lockers.sheet.html. Open the sheet, or print it, and read its cautions first:
                the saws' manuals go before it. Then start cutting.
                More: java -jar ripwright.jar --help
                """);
    }

    @Test
    void the_version() {
        assertThat(shop.run("--version")).isZero();
        assertThat(shop.run("plan", "--version")).isZero();
        assertThat(shop.out()).isEqualTo("ripwright 1.2.3\nripwright 1.2.3\n");
    }

    @Test
    void help_names_every_command_and_exit_code() {
        assertThat(shop.run("--help")).isZero();
        assertThat(shop.run("help", "plan")).isZero();
        assertThat(shop.out())
                .containsPattern(" {2}plan +Plans each job")
                .containsPattern(" {2}replay +Re-enacts a written plan")
                .containsPattern(" {2}trial +Plans a job with a part")
                .containsPattern(" {2}start +Writes a small job")
                .contains("  130   interrupted");
    }

    @Test
    void an_unknown_command_is_told_with_those_there_are() {
        assertThat(shop.run("plna")).isEqualTo(2);
        assertThat(shop.err()).startsWith("""
                Unmatched argument at index 0: 'plna'
                Did you mean: ripwright plan or""");
    }

    @Test
    void a_missing_job_is_told_with_how_to_plan() {
        assertThat(shop.run("plan")).isEqualTo(2);
        assertThat(shop.err()).isEqualTo("""
                Missing required parameter: 'JOB'
                Usage: ripwright plan [-hV] [--again] [--drawings] [--semicolons] [--tables] [--verbose]
                                      [--at-once=N] [--bill=CSV] [--out=DIR] [--report=FILE] [--stack=CSV]
                                      [--together | --in-turn] JOB...
                More: java -jar ripwright.jar plan --help
                """);
    }

    @Test
    void what_is_planned_can_be_replayed_from_its_file() throws IOException {
        shop.file(
                "cabinet.job.json",
                JobText.CABINET.replace("\"stack\"", "\"limits\": { \"seconds\": 0.5 }, \"stack\""));
        assertThat(shop.run("plan", "FOLDER/cabinet.job.json")).isZero();
        assertThat(shop.run("replay", "FOLDER/cabinet.job.json", "FOLDER/cabinet.plan.json"))
                .isZero();
        assertThat(shop.out()).contains("FOLDER/cabinet.plan.json: right, all ");
        assertThat(shop.err()).isEmpty();
    }

    @Test
    void a_plan_that_does_not_fit_its_job_is_refused_with_every_fault() throws IOException {
        shop.file(
                "cabinet.job.json",
                JobText.CABINET.replace("\"stack\"", "\"limits\": { \"seconds\": 0.5 }, \"stack\""));
        shop.run("plan", "FOLDER/cabinet.job.json");
        Path plan = folder.resolve("cabinet.plan.json");
        Files.writeString(plan, Files.readString(plan).replace("\"labor\": 0.00", "\"labor\": 1.00"));
        assertThat(shop.run("replay", "FOLDER/cabinet.job.json", "FOLDER/cabinet.plan.json"))
                .isEqualTo(2);
        assertThat(shop.err()).startsWith("FOLDER/cabinet.plan.json: ").contains("  plan: ");
    }

    @Test
    void a_plan_that_cannot_be_read_is_told() throws IOException {
        shop.file("cabinet.job.json", JobText.CABINET);
        shop.file("cabinet.plan.json", "");
        assertThat(shop.run("replay", "FOLDER/cabinet.job.json", "FOLDER/cabinet.plan.json"))
                .isEqualTo(2);
        assertThat(shop.err()).isEqualTo("""
                FOLDER/cabinet.plan.json: 1 mistake, nothing was replayed.
                  the file is empty; it must hold one JSON object.
                """);
    }
}
