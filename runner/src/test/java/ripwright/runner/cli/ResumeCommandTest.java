package ripwright.runner.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import ripwright.Planner;
import ripwright.job.Job;
import ripwright.json.JobReader;
import ripwright.json.PlanReader;
import ripwright.json.RackReader;
import ripwright.json.ReportFile;
import ripwright.json.tree.WrongInputException;
import ripwright.measure.Length;
import ripwright.plan.Plan;
import ripwright.plan.Step;
import ripwright.resume.ChainReplay;
import ripwright.resume.Report;
import ripwright.resume.Resumed;
import ripwright.stock.Board;

/** The bench of the samples, whose plan was begun, and what went wrong. */
class ResumeCommandTest {
    private static final Path SAMPLE = Path.of("../samples/shoe-bench");
    private static final Path JOB = SAMPLE.resolve("shoe-bench.job.json");
    private static final Path PLAN = SAMPLE.resolve("shoe-bench.plan.json");

    @TempDir
    Path folder;

    private int resume(Shop shop, String report) {
        return shop.run("resume", PLAN.toString(), SAMPLE.resolve(report).toString(), "--out", "FOLDER");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "narrow-strip.report.json",
                "spoiled-part.report.json",
                "knot-found.report.json",
                "wider-opening.report.json"
            })
    void every_mishap_of_the_samples_is_resumed_and_replayed_from_the_first_boards_to_the_last_part(String name)
            throws WrongInputException {
        Shop shop = new Shop(folder, Planner::plan);
        assertThat(resume(shop, name)).as(shop.err()).isEqualTo(0);
        Job begun = JobReader.read(JOB);
        Report report = ReportFile.read(SAMPLE.resolve(name), begun.units()).report();
        Resumed resumed = new Resumed(job(), PlanReader.read(folder.resolve("shoe-bench.resumed.plan.json")), Map.of());
        assertThat(ChainReplay.faults(begun, PlanReader.read(PLAN), report, resumed))
                .isEmpty();
        assertThat(resumed.plan().status()).isEqualTo(Plan.Status.COMPLETE);
    }

    private Job job() throws WrongInputException {
        return JobReader.read(folder.resolve("shoe-bench.resumed.job.json"));
    }

    private Board board(String id) throws WrongInputException {
        return job().boards().stream()
                .filter(board -> board.id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void a_narrow_strip_can_be_ripped_again() throws WrongInputException {
        resume(new Shop(folder, Planner::plan), "narrow-strip.report.json");
        assertThat(board("S1").width()).isEqualTo(Length.inches("2 3/16"));
        assertThat(board("S1").ripped()).isFalse();
        assertThat(board("S4").ripped()).isTrue(); // a strip for seat slats, as wide as planned
    }

    @Test
    void a_knot_lies_on_the_section_it_was_found_on() throws WrongInputException {
        resume(new Shop(folder, Planner::plan), "knot-found.report.json");
        assertThat(board("W3/1").defects()).singleElement().satisfies(knot -> {
            assertThat(knot.from()).isEqualTo(Length.inches("20 1/4"));
            assertThat(knot.left()).isEqualTo(Length.inches("1 1/8"));
        });
    }

    @Test
    void what_is_wanted_longer_is_in_the_bill_of_the_rest() throws WrongInputException {
        resume(new Shop(folder, Planner::plan), "wider-opening.report.json");
        assertThat(job().parts()).singleElement().satisfies(part -> {
            assertThat(part.name()).isEqualTo("end rail");
            assertThat(part.length()).isEqualTo(Length.inches("11 1/8"));
            assertThat(part.count()).isEqualTo(2);
        });
    }

    @Test
    void the_resumed_files_bear_names_of_their_own_and_are_never_written_over() throws WrongInputException {
        Shop shop = new Shop(folder, Planner::plan);
        resume(shop, "wider-opening.report.json");
        resume(shop, "wider-opening.report.json");
        assertThat(shop.files())
                .containsExactly(
                        "shoe-bench.resumed-2.job.json",
                        "shoe-bench.resumed-2.plan.json",
                        "shoe-bench.resumed-2.rack.json",
                        "shoe-bench.resumed-2.sheet.html",
                        "shoe-bench.resumed.job.json",
                        "shoe-bench.resumed.plan.json",
                        "shoe-bench.resumed.rack.json",
                        "shoe-bench.resumed.sheet.html");
        assertThat(RackReader.read(folder.resolve("shoe-bench.resumed.rack.json"))
                        .offcuts())
                .isEqualTo(job().rack());
    }

    @Test
    void what_was_resumed_can_be_resumed_again() throws IOException {
        Shop shop = new Shop(folder, Planner::plan);
        resume(shop, "wider-opening.report.json");
        shop.file("later.report.json", """
                { "format": 1, "job": "Shoe bench, resumed", "done": [], "changes": [ { "piece": "W4/A", "length": 50 } ] }
                """);
        assertThat(shop.run("resume", "FOLDER/shoe-bench.resumed.plan.json", "FOLDER/later.report.json"))
                .as(shop.err())
                .isEqualTo(0);
        assertThat(Files.exists(folder.resolve("shoe-bench.resumed-2.plan.json")))
                .isTrue();
    }

    /** Two doors of one board; one is spoiled when the board is used up. */
    private Shop withADoorLost(String stack) throws IOException, WrongInputException {
        Shop shop = new Shop(folder, Planner::plan);
        shop.file("doors.job.json", """
                { "format": 1, "job": "Doors", "units": "in", "saw": { "ripKerf": 0.125, "crosscutKerf": 0.125 },
                  "testRip": { "length": 12, "tries": 0 }, "keep": { "length": 12, "width": 1 },
                  "prices": { "ash": 5 }, "salvage": 0, "limits": { "seconds": 0.2 },
                  "stack": [ { "id": "B1", "species": "ash", "thickness": 1, "width": 2.5, "length": 41, "straightEdges": 2 }%s ],
                  "parts": [ { "name": "door", "count": 2, "length": 20, "width": 2.5, "thickness": 1, "face": "show",
                    "together": "doors" } ] }
                """.formatted(stack));
        assertThat(shop.run("plan", "FOLDER/doors.job.json")).as(shop.err()).isEqualTo(0);
        Plan plan = PlanReader.read(folder.resolve("doors.plan.json"));
        String door = plan.boards()
                .get(0)
                .sections()
                .get(0)
                .strips()
                .get(0)
                .blanks()
                .get(1)
                .id();
        List<Integer> all = plan.steps().stream().map(Step::n).toList();
        shop.file("doors.report.json", """
                { "format": 1, "job": "Doors", "done": %s, "changes": [ { "piece": "%s", "spoiled": true } ] }
                """.formatted(all, door));
        return shop;
    }

    @Test
    void a_lost_part_is_short_in_plan_sheet_and_on_the_console_through_every_later_report()
            throws IOException, WrongInputException {
        Shop shop = withADoorLost("""
                , { "id": "B2", "species": "ash", "thickness": 1, "width": 4, "length": 60, "straightEdges": 2 }""");
        String[] plans = {"doors", "doors.resumed", "doors.resumed-2", "doors.resumed-3"};
        for (int i = 0; i < 3; i++) {
            String report = i == 0 ? "FOLDER/doors.report.json" : "FOLDER/nothing.report.json";
            assertThat(shop.run("resume", "FOLDER/" + plans[i] + ".plan.json", report))
                    .as(shop.err())
                    .isEqualTo(1);
            Plan rest = PlanReader.read(folder.resolve(plans[i + 1] + ".plan.json"));
            assertThat(rest.shortages()).singleElement().satisfies(shortage -> {
                assertThat(shortage.part()).isEqualTo("door");
                assertThat(shortage.count()).isEqualTo(1);
            });
            assertThat(Files.readString(folder.resolve(plans[i + 1] + ".sheet.html")))
                    .contains("What is short, and what would make it");
            shop.file("nothing.report.json", """
                    { "format": 1, "job": "Doors, resumed", "done": [], "changes": [] }
                    """);
        }
        assertThat(shop.out()).contains("1 x door: buy 0.5 board feet of any wood");
    }

    @Test
    void where_nothing_is_left_at_all_what_to_buy_is_said() throws IOException, WrongInputException {
        Shop shop = withADoorLost("");
        assertThat(shop.run("resume", "FOLDER/doors.plan.json", "FOLDER/doors.report.json"))
                .as(shop.err())
                .isEqualTo(1);
        assertThat(shop.out())
                .contains("Doors: nothing is left to cut the rest from; nothing was written.")
                .contains("  short         1 x door: buy 0.5 board feet of any wood");
    }

    /** The rip is done, and nobody ticked its step. */
    @Test
    void pieces_that_are_there_are_reported_by_their_ids_and_told_in_the_shops_words() throws Exception {
        Plan plan = PlanReader.read(PLAN);
        Step rip = plan.steps().stream()
                .filter(step -> step.does() == Step.Does.RIP)
                .findFirst()
                .orElseThrow();
        String strip = rip.makes().get(0);
        List<Integer> done =
                plan.steps().stream().map(Step::n).filter(n -> n < rip.n()).toList();
        Shop shop = new Shop(folder, Planner::plan);
        shop.file("strip.report.json", """
                { "format": 1, "job": "Shoe bench", "done": %s, "made": [ "%s" ], "changes": [] }
                """.formatted(done, strip));
        assertThat(shop.run("resume", PLAN.toString(), "FOLDER/strip.report.json", "--out", "FOLDER"))
                .as(shop.err())
                .isEqualTo(0);
        assertThat(shop.out())
                .contains(done.size() + " of 29 steps and 1 piece of steps underway; ")
                .containsPattern("strips? [^\\n]*" + strip + " \\(");
        assertThat(board(strip).straightEdges()).isEqualTo(2);
    }

    @Test
    void what_is_wrong_with_pieces_reported_is_told_with_its_place() throws IOException {
        Shop shop = new Shop(folder, Planner::plan);
        shop.file("pieces.report.json", """
                { "format": 1, "job": "Shoe bench", "done": [],
                  "made": [ "S999",
                            "S999" ],
                  "changes": [] }
                """);
        assertThat(shop.run("resume", PLAN.toString(), "FOLDER/pieces.report.json", "--out", "FOLDER"))
                .isEqualTo(2);
        assertThat(shop.err())
                .contains("$.made[0]   \"S999\" is no piece of this plan.")
                .contains("$.made[1]   \"S999\" is listed twice; list it once.");
    }

    @Test
    void all_that_is_wrong_with_a_report_is_told_with_its_place() throws IOException {
        Shop shop = new Shop(folder, (job, options) -> {
            throw new AssertionError("planned");
        });
        Path report = shop.file("today.report.json", """
                { "format": 1, "job": "Shoe bench", "done": [1, 6, 77],
                  "changes": [] }
                """);
        assertThat(shop.run("resume", PLAN.toString(), report.toString(), "--out", "FOLDER/out"))
                .isEqualTo(2);
        assertThat(shop.err()).isEqualTo("""
                        FOLDER/today.report.json: 2 mistakes, nothing was resumed.
                          $.done[1]   step 6 is done to W2/1 after step 2, which is not reported. Report it too, or leave step 6 out.
                            1:49 | { "format": 1, "job": "Shoe bench", "done": [1, 6, 77],
                                 |                                                 ^
                          $.done[2]   77 is no step of this plan; its steps are 1 to 29.
                            1:52 | { "format": 1, "job": "Shoe bench", "done": [1, 6, 77],
                                 |                                                    ^
                        """);
        assertThat(shop.files()).containsExactly("today.report.json");
    }

    @Test
    void however_often_a_step_is_listed_the_first_mistakes_are_told() throws IOException {
        Shop shop = new Shop(folder, Planner::plan);
        String often = "1, ".repeat(200_000 - 1) + "1";
        Path report = shop.file("often.report.json", """
                { "format": 1, "job": "Shoe bench", "changes": [],
                  "done": [
                %s] }
                """.formatted(often.replace(", ", ",\n")));
        assertThat(shop.run("resume", PLAN.toString(), report.toString())).isEqualTo(2);
        assertThat(shop.err()).startsWith("""
                        FOLDER/often.report.json: 199999 mistakes, nothing was resumed. The first 100:
                          $.done[1]     step 1 is listed twice; list it once.
                        """);
        assertThat(shop.err().lines()).hasSize(301);
    }

    @Test
    void what_is_misspelled_in_a_report_is_not_called_missing_too() throws IOException {
        Shop shop = new Shop(folder, Planner::plan);
        Path report = shop.file("today.report.json", """
                { "format": 1, "job": "Shoe bench", "done": [1],
                  "changes": [ { "peice": "W1/1", "spoiled": true },
                    { "piece": "W1/1", "spoilt": true },
                    { "part": "end rail", "len": 12 },
                    { "piece": "W1/1" } ] }
                """);
        assertThat(shop.run("resume", PLAN.toString(), report.toString())).isEqualTo(2);
        assertThat(shop.err()).isEqualTo("""
                        FOLDER/today.report.json: 4 mistakes, nothing was resumed.
                          $.changes[0].peice    no such field. Did you mean "piece"?
                            2:18 | "changes": [ { "peice": "W1/1", "spoiled": true },
                                 |                ^
                          $.changes[1].spoilt   no such field. Did you mean "spoiled"?
                            3:24 | { "piece": "W1/1", "spoilt": true },
                                 |                    ^
                          $.changes[2].len      no such field. Did you mean "length"?
                            4:27 | { "part": "end rail", "len": 12 },
                                 |                       ^
                          $.changes[3].piece    nothing is different. Say one of width, length, spoiled or defect.
                            5:16 | { "piece": "W1/1" } ] }
                                 |            ^
                        """);
    }

    @Test
    void a_plan_or_report_that_is_not_there_is_told_before_a_job_is_looked_for() throws IOException {
        Shop shop = new Shop(folder, Planner::plan);
        assertThat(shop.run("resume", "FOLDER/a.json", "FOLDER/b.json")).isEqualTo(2);
        Files.copy(PLAN, folder.resolve("a.json"));
        assertThat(shop.run("resume", "FOLDER/a.json", "FOLDER/b.json")).isEqualTo(2);
        assertThat(shop.err()).isEqualTo("""
                FOLDER/a.json: 1 mistake, nothing was resumed.
                  there is no such file.
                FOLDER/b.json: 1 mistake, nothing was resumed.
                  there is no such file.
                """);
    }

    @Test
    void a_job_that_is_not_beside_its_plan_is_asked_for() throws IOException {
        Shop shop = new Shop(folder, Planner::plan);
        Files.copy(PLAN, folder.resolve("a.plan.json"));
        assertThat(shop.run(
                        "resume",
                        "FOLDER/a.plan.json",
                        SAMPLE.resolve("knot-found.report.json").toString()))
                .isEqualTo(2);
        assertThat(shop.err()).isEqualTo("""
                FOLDER/a.plan.json: nothing was resumed. There is no FOLDER/a.job.json. Name the job that was planned: --job FILE.
                """);
    }

    @Test
    void a_plan_of_another_job_is_refused() throws IOException {
        Shop shop = new Shop(folder, (job, options) -> {
            throw new AssertionError("planned");
        });
        Path job = shop.file(
                "other.job.json", Files.readString(JOB).replace("\"width\": \"6 9/16\"", "\"width\": \"5 9/16\""));
        int code = shop.run(
                "resume",
                PLAN.toString(),
                SAMPLE.resolve("knot-found.report.json").toString(),
                "--job",
                job.toString());
        assertThat(code).isEqualTo(2);
        assertThat(shop.err())
                .startsWith(PLAN
                        + ": the plan is not right for this job, nothing was resumed. Name the job: --job FILE.\n");
    }
}
