package ripwright.runner.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import ripwright.Planner;
import ripwright.job.Job;
import ripwright.json.JobReader;
import ripwright.json.JobText;
import ripwright.json.PlanReader;
import ripwright.json.Plans;
import ripwright.json.Spreadsheets;
import ripwright.stock.Board;

/** Spreadsheets in and out, as a user has them. */
class SpreadsheetCommandsTest {
    @TempDir
    private Path folder;

    /** The starter job, with little time. */
    private Shop started() throws IOException {
        Shop shop = new Shop(folder, Planner::plan);
        assertThat(shop.run("start", "FOLDER")).isZero();
        Path job = folder.resolve("shoe-rack.job.json");
        Files.writeString(job, Files.readString(job).replace("\"seconds\": 5", "\"seconds\": 1"));
        return shop;
    }

    @Test
    void the_starter_job_says_the_same_as_its_spreadsheets() throws Exception {
        started();
        Path job = folder.resolve("shoe-rack.job.json");
        Spreadsheets spreadsheets = new Spreadsheets(
                Optional.of(folder.resolve("stack.csv")), Optional.of(folder.resolve("bill.csv")), remark -> {
                    throw new AssertionError(remark);
                });
        assertThat(JobReader.read(job, spreadsheets)).isEqualTo(JobReader.read(job));
    }

    @Test
    void the_starter_job_is_planned_at_once_whole_and_one_way_or_the_other() throws IOException {
        Shop shop = started();
        assertThat(shop.run("plan", "FOLDER/shoe-rack.job.json")).isZero();
        assertThat(shop.run(
                        "plan",
                        "FOLDER/shoe-rack.job.json",
                        "--stack",
                        "FOLDER/stack.csv",
                        "--bill",
                        "FOLDER/bill.csv",
                        "--out",
                        "FOLDER/b"))
                .isZero();
        assertThat(shop.out())
                .contains("Shoe rack: complete, all 24 parts.", "  wrote         FOLDER/b/shoe-rack.plan.json");
        assertThat(shop.err()).isEmpty();
    }

    @Test
    void a_plan_made_from_spreadsheets_is_replayed_with_them() throws IOException {
        Shop shop = started();
        Path bill = folder.resolve("bill.csv");
        Files.writeString(bill, Files.readString(bill).replace("slat,10", "slat,4"));
        assertThat(shop.run("plan", "FOLDER/shoe-rack.job.json", "--parts", "FOLDER/bill.csv"))
                .isZero();
        assertThat(shop.out()).contains("complete, all 18 parts");
        assertThat(shop.run(
                        "replay",
                        "FOLDER/shoe-rack.job.json",
                        "FOLDER/shoe-rack.plan.json",
                        "--parts",
                        "FOLDER/bill.csv"))
                .isZero();
        assertThat(shop.run("replay", "FOLDER/shoe-rack.job.json", "FOLDER/shoe-rack.plan.json"))
                .isEqualTo(2);
    }

    @Test
    void a_plan_made_from_spreadsheets_is_settled_by_the_whole_job_kept_beside_it() throws Exception {
        Shop shop = started();
        Path bill = folder.resolve("bill.csv");
        Files.writeString(bill, Files.readString(bill).replace("slat,10", "slat,4"));
        Path job = folder.resolve("shoe-rack.job.json");
        assertThat(shop.run("plan", job.toString(), "--parts", "FOLDER/bill.csv", "--out", "FOLDER/out"))
                .isZero();
        assertThat(shop.out()).contains("FOLDER/out/shoe-rack.whole.json\n");
        assertThat(JobReader.read(folder.resolve("out/shoe-rack.whole.json")))
                .isEqualTo(JobReader.read(job, new Spreadsheets(Optional.empty(), Optional.of(bill), remark -> {})));
        assertThat(shop.run(
                        "settle",
                        "FOLDER/out/shoe-rack.plan.json",
                        "--job",
                        "FOLDER/out/shoe-rack.whole.json",
                        "--rack",
                        "FOLDER/rack.json"))
                .isZero();
    }

    @Test
    void a_rack_that_the_job_holds_is_kept_in_the_whole_job_too() throws Exception {
        Shop shop = started();
        Path job = folder.resolve("shoe-rack.job.json");
        String rack = Files.readString(folder.resolve("rack.json"));
        Files.writeString(job, Files.readString(job).replace("\"rack.json\"", rack));
        assertThat(shop.run("plan", job.toString(), "--parts", "FOLDER/bill.csv"))
                .isZero();
        assertThat(JobReader.read(folder.resolve("shoe-rack.whole.json")).rack())
                .isNotEmpty()
                .isEqualTo(JobReader.read(job).rack());
    }

    @Test
    void what_goes_with_one_job_alone_is_refused_elsewhere() throws IOException {
        Shop shop = started();
        assertThat(shop.run("plan", "FOLDER", "--stack", "FOLDER/stack.csv")).isEqualTo(2);
        assertThat(shop.run("plan", "FOLDER", "--tables")).isEqualTo(2);
        assertThat(shop.run("plan", "-", "--parts", "FOLDER/bill.csv")).isEqualTo(2);
        assertThat(shop.err()).isEqualTo("""
                --stack and --parts go with one job and no --report; plan these apart.
                --tables goes with one job and no --report; plan these apart.
                With - the plans go to standard output and nowhere else: leave out all options but --at-once and --verbose.
                """);
    }

    @Test
    void starting_again_writes_nothing_over() throws IOException {
        Shop shop = started();
        Files.writeString(folder.resolve("stack.csv"), "mine");
        Files.delete(folder.resolve("bill.csv"));
        assertThat(shop.run("start", "FOLDER")).isEqualTo(2);
        assertThat(shop.err())
                .isEqualTo("FOLDER/shoe-rack.job.json, FOLDER/rack.json, FOLDER/stack.csv are there already; "
                        + "nothing was written. Name another folder.\n");
        assertThat(folder.resolve("stack.csv")).hasContent("mine");
        assertThat(folder.resolve("bill.csv")).doesNotExist();
    }

    @Test
    void starting_says_what_to_do_next_and_makes_the_folder() {
        Shop shop = new Shop(folder, Planner::plan);
        assertThat(shop.run("start", "FOLDER/my first/job")).isZero();
        assertThat(shop.files())
                .containsExactly(
                        "my first/job/bill.csv",
                        "my first/job/rack.json",
                        "my first/job/shoe-rack.job.json",
                        "my first/job/stack.csv");
        assertThat(shop.out())
                .contains("  java -jar ripwright.jar plan \"FOLDER/my first/job/shoe-rack.job.json\"\n")
                .contains("Measure the kerfs of your own saws first.");
    }

    @Test
    void a_file_in_the_place_of_the_folder_is_told() throws IOException {
        Shop shop = new Shop(folder, Planner::plan);
        shop.file("there", "");
        assertThat(shop.run("start", "FOLDER/there")).isEqualTo(2);
        assertThat(shop.err())
                .isEqualTo("FOLDER/there: the starter job cannot be written: FOLDER/there is not a directory.\n");
        assertThat(shop.run("start")).isEqualTo(2);
        assertThat(shop.err()).contains("Missing required parameter: 'DIR'");
    }

    @Test
    void mistakes_in_a_spreadsheet_are_told_by_row_and_column_and_nothing_is_written() throws IOException {
        Shop shop = started();
        Path stack = folder.resolve("stack.csv");
        Files.writeString(stack, Files.readString(stack).replace("84 1/2", "84 1/"));
        assertThat(shop.run("plan", "FOLDER/shoe-rack.job.json", "--stack", "FOLDER/stack.csv"))
                .isEqualTo(2);
        assertThat(shop.err()).isEqualTo("""
                FOLDER/stack.csv: 1 mistake, nothing was planned.
                  row 3, column E (Length)   "84 1/" is not a length. Write it like "2 3/8", "2-3/8", "23.5", "38 mm" or "3/4 in".
                    3:18 | A2,ash,3/4,6 1/8,84 1/,1,3/16,1/8,1,,,,,,,the left edge is straight
                         |                  ^
                """);
        assertThat(folder.resolve("shoe-rack.plan.json")).doesNotExist();
    }

    @Test
    void spreadsheets_stand_for_the_lists_of_one_job_only() throws IOException {
        Shop shop = started();
        shop.file("other.job.json", JobText.CABINET);
        assertThat(shop.run(
                        "plan", "FOLDER/shoe-rack.job.json", "FOLDER/other.job.json", "--stack", "FOLDER/stack.csv"))
                .isEqualTo(2);
        assertThat(shop.err()).isEqualTo("--stack and --parts stand for the lists of one job. Plan these 2 apart.\n");
    }

    @Test
    void a_plan_as_tables_has_a_row_for_every_blank_setting_and_offcut() throws IOException {
        Shop shop = new Shop(folder, (job, options) -> Plans.cabinet());
        shop.file("cabinet.job.json", JobText.CABINET);
        assertThat(shop.run("plan", "FOLDER/cabinet.job.json", "--tables")).isZero();
        assertThat(shop.out()).endsWith("""
                                FOLDER/cabinet.cuts.csv
                                FOLDER/cabinet.settings.csv
                                FOLDER/cabinet.offcuts.csv
                                FOLDER/cabinet.short.csv
                """);
        assertThat(lines("cabinet.cuts.csv"))
                .containsExactly(
                        "\uFEFFboard,species,thickness (in),section,section from (in),section to (in),reference edge,"
                                + "edge loss (in),strip,setting,offset (in),strip width (in),blank,part,blank from (in),"
                                + "blank length (in)",
                        "ash-1,ash,0.75,s1,1,49.125,left,0,t1,r1,0,2.25,b1,door,1,24",
                        "ash-1,ash,0.75,s1,1,49.125,left,0,t1,r1,0,2.25,b2,door,25.125,24");
        assertThat(lines("cabinet.settings.csv"))
                .startsWith("\uFEFFsaw,setting,position (in),pieces,proved on,test wood from")
                .contains("crosscut,,24,2,,");
        assertThat(lines("cabinet.settings.csv").get(1)).matches("rip,r1,2\\.25,1,\\w+,fresh");
        assertThat(lines("cabinet.offcuts.csv")).hasSize(2);
        assertThat(lines("cabinet.short.csv")).hasSize(1);
    }

    @Test
    void a_short_plan_says_in_a_table_what_to_buy() throws IOException {
        Shop shop = new Shop(folder, (job, options) -> Plans.strange());
        shop.file("chest.job.json", JobText.CABINET);
        assertThat(shop.run("plan", "FOLDER/chest.job.json", "--tables")).isEqualTo(1);
        assertThat(lines("chest.short.csv").size())
                .isEqualTo(1 + Plans.strange().shortages().size());
    }

    @Test
    void offcuts_written_as_a_table_are_read_as_a_stack() throws Exception {
        Shop shop = started();
        assertThat(shop.run("plan", "FOLDER/shoe-rack.job.json", "--tables")).isZero();
        Job job = JobReader.read(
                folder.resolve("shoe-rack.job.json"),
                new Spreadsheets(Optional.of(folder.resolve("shoe-rack.offcuts.csv")), Optional.empty(), remark -> {}));
        List<Board> written = PlanReader.read(folder.resolve("shoe-rack.plan.json")).offcuts().stream()
                .map(offcut -> offcut.piece())
                .toList();
        assertThat(job.stack())
                .extracting(Board::id)
                .isEqualTo(written.stream().map(Board::id).toList());
        assertThat(job.stack())
                .extracting(Board::defects)
                .isEqualTo(written.stream().map(Board::defects).toList());
        assertThat(job.stack())
                .extracting(Board::length)
                .isEqualTo(written.stream().map(Board::length).toList());
        assertThat(job.stack())
                .extracting(Board::endTrim)
                .isEqualTo(written.stream().map(Board::endTrim).toList());
    }

    private List<String> lines(String file) throws IOException {
        return Files.readAllLines(folder.resolve(file));
    }
}
