package ripwright.runner.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.w3c.dom.Document;
import ripwright.job.Job;
import ripwright.json.JobText;
import ripwright.json.Plans;
import ripwright.measure.Length;
import ripwright.plan.Cost;
import ripwright.plan.Plan;
import ripwright.plan.Shortage;

class TrialCommandTest {
    private static final Map<String, String> NETS = Map.of("2", "14.20", "2 1/4", "14.37", "2 1/2", "19.00");

    @TempDir
    private Path folder;

    private Shop shop;

    @BeforeEach
    void open() throws IOException {
        shop = new Shop(folder, (job, options) -> plan(job));
        shop.file("cabinet.job.json", JobText.CABINET);
    }

    /** The cabinet's plan, at a price that hangs on the door's width; short from 3 in up. */
    private static Plan plan(Job job) {
        Length width = job.parts().get(0).width();
        Plan plan = Plans.cabinet();
        boolean isShort = width.compareTo(Length.inches("3")) >= 0;
        String net = NETS.getOrDefault(job.units().exact(width), "20.00");
        BigDecimal bound = new BigDecimal(net).subtract(new BigDecimal("3.57"));
        Cost cost = plan.cost();
        Cost priced = new Cost(
                cost.stock(), cost.salvage(), cost.labor(), new BigDecimal(net), bound, new BigDecimal("0.25"), false);
        Shortage.Buy buy = new Shortage.Buy(
                new BigDecimal("1.2345"),
                List.copyOf(job.parts().get(0).species()),
                Length.inches("3/4"),
                Length.inches("24"),
                width);
        return new Plan(
                plan.job(),
                plan.units(),
                isShort ? Plan.Status.SHORT : Plan.Status.COMPLETE,
                priced,
                plan.tally(),
                plan.boards(),
                plan.settings(),
                plan.testBlanks(),
                plan.steps(),
                plan.offcuts(),
                isShort ? List.of(new Shortage("door", 1, buy)) : List.of(),
                plan.cautions());
    }

    private int trial(String... more) {
        String[] arguments = new String[more.length + 2];
        arguments[0] = "trial";
        arguments[1] = "FOLDER/cabinet.job.json";
        System.arraycopy(more, 0, arguments, 2, more.length);
        return shop.run(arguments);
    }

    @Test
    @Tag("locale")
    void widths_are_compared_side_by_side() {
        assertThat(trial("--part", "door", "--widths", "2, 2 1/4, 2-1/2")).isZero();
        assertThat(shop.out()).isEqualTo("""
                Cabinet: door at 3 widths.

                  width     parts  boards  net cost  at least       settings     offcuts   yield    time
                  2 in      all 2       1     14.20     10.63  1 rip, 1 stop  1 (0.9 bf)  25.0 %  13 min
                  2 1/4 in  all 2       1     14.37     10.80  1 rip, 1 stop  1 (0.9 bf)  25.0 %  13 min
                  2 1/2 in  all 2       1     19.00     15.43  1 rip, 1 stop  1 (0.9 bf)  25.0 %  13 min

                  Cheapest found: 2 in at 14.20.
                  As in the job, 2 1/4 in: 0.17 more.
                  Dearer for certain, whatever the plan: 2 1/2 in.
                """);
        assertThat(shop.err()).isEmpty();
        assertThat(shop.files()).containsExactly("cabinet.job.json");
    }

    @Test
    void where_the_stack_is_short_it_says_of_what_and_ends_with_1() {
        assertThat(trial("--part", "door", "--widths", "2 1/4,3")).isEqualTo(1);
        assertThat(shop.out())
                .contains("  3 in      1 of 2 ", "  Cheapest found: 2 1/4 in at 14.37, as in the job.\n")
                .contains(
                        "  Short at 3 in: 1 x door; buy 1.3 board feet of ash, 3/4 thick, no board under 3 x 24 in.\n");
        assertThat(trial("--part", "door", "--widths", "3")).isEqualTo(1);
        assertThat(shop.out()).contains("  At none of these widths the stack makes all.\n");
    }

    @Test
    void the_same_width_written_twice_is_planned_once_and_other_units_are_taken() {
        assertThat(trial("--part", "door", "--widths", "2.25,2 1/4", "--widths", "57.15 mm, 52 mm"))
                .isZero();
        assertThat(shop.out()).contains("door at 2 widths", "  2 1/4 in ", "  52 mm ");
    }

    @Test
    void a_part_is_found_without_regard_to_case_and_blanks() {
        assertThat(trial("--part", " Door", "--widths", "2")).isZero();
        assertThat(shop.out()).startsWith("Cabinet: door at 1 width.\n");
    }

    @Test
    void all_that_is_wrong_with_what_to_try_is_told_at_once() {
        assertThat(trial("--part", "dor", "--part", "drawer", "--widths", "2,2 1/z,0"))
                .isEqualTo(2);
        assertThat(shop.err()).isEqualTo("""
                FOLDER/cabinet.job.json: 4 mistakes in what to try, nothing was planned.
                  --part     no part of the job is called "dor". Did you mean "door"?
                  --part     no part of the job is called "drawer". The nearest known one is "door".
                  --widths   "2 1/z" is not a length. Write it like "2 3/8", "2-3/8", "23.5", "38 mm" or "3/4 in".
                  --widths   "0"; it must be more than 0.
                """);
        assertThat(shop.out()).isEmpty();
    }

    @Test
    void no_width_at_all_is_told() {
        assertThat(trial("--part", "door", "--widths", " ,")).isEqualTo(2);
        assertThat(shop.err()).endsWith("  --widths   names no width. Write it like \"2, 2 1/8, 2 1/4\".\n");
        assertThat(trial("--part", "door")).isEqualTo(2);
        assertThat(shop.err()).contains("Missing required option: '--widths=LIST'");
    }

    @Test
    void a_wrong_job_is_told_with_its_line() throws IOException {
        shop.file("cabinet.job.json", JobText.CABINET.replace("0.5", "2"));
        assertThat(trial("--part", "door", "--widths", "2")).isEqualTo(2);
        assertThat(shop.err()).contains("$.salvage   2; it must be a share from 0 to 1.", "9:14 |");
    }

    @Test
    void picture_table_and_json_are_written_when_asked_for() throws IOException {
        assertThat(trial("--part", "door", "--widths", "2,3", "--out", "FOLDER/out", "--picture", "--tables", "--json"))
                .isEqualTo(1);
        assertThat(shop.files())
                .containsExactly(
                        "cabinet.job.json", "out/cabinet.trial.csv", "out/cabinet.trial.json", "out/cabinet.trial.svg");
        assertThat(shop.out()).endsWith("""
                  wrote FOLDER/out/cabinet.trial.svg
                  wrote FOLDER/out/cabinet.trial.csv
                  wrote FOLDER/out/cabinet.trial.json
                """);
        assertThat(Files.readString(folder.resolve("out/cabinet.trial.csv")))
                .startsWith("\uFEFFwidth (in),as in the job,parts made,parts wanted,boards,stock,")
                .contains("\r\n2,no,2,2,1,18.00,3.63,0.00,14.20,10.63,1,1,1,")
                .contains("\r\n3,no,1,2,1,18.00,3.63,0.00,20.00,16.43,1,1,1,");
        assertThat(Files.readString(folder.resolve("out/cabinet.trial.json")))
                .contains("\"parts\": [\"door\"]")
                .contains("{ \"width\": 3, \"asInTheJob\": false, \"status\": \"short\", \"partsMade\": 1,")
                .contains("{ \"part\": \"door\", \"count\": 1, \"boardFeet\": 1.2345 }");
    }

    @Test
    void a_table_with_semicolons_has_decimal_commas() throws IOException {
        assertThat(trial("--part", "door", "--widths", "2", "--semicolons")).isZero();
        assertThat(Files.readString(folder.resolve("cabinet.trial.csv")))
                .contains("\r\n2;no;2;2;1;18,00;3,63;0,00;14,20;10,63;1;1;1;");
    }

    @Test
    void names_are_escaped_in_the_picture() throws Exception {
        shop.file(
                "cabinet.job.json",
                JobText.CABINET.replace("Cabinet", "<b>&'").replace("\"door\"", "\"<script>\u202e\uD83E\uDEB5\""));
        assertThat(trial("--part", "<script>\u202e\uD83E\uDEB5", "--widths", "2", "--picture"))
                .isZero();
        Document picture = DocumentBuilderFactory.newDefaultInstance()
                .newDocumentBuilder()
                .parse(folder.resolve("cabinet.trial.svg").toFile());
        assertThat(picture.getElementsByTagName("title").item(0).getTextContent())
                .isEqualTo("<b>&': <script>\u202e\uD83E\uDEB5");
        assertThat(picture.getElementsByTagName("script").getLength()).isZero();
    }

    @Test
    void what_cannot_be_written_is_told_before_planning() throws IOException {
        shop = new Shop(folder, (job, options) -> {
            throw new AssertionError("planned");
        });
        shop.file("out", "");
        assertThat(trial("--part", "door", "--widths", "2", "--picture", "--out", "FOLDER/out"))
                .isEqualTo(2);
        assertThat(shop.err())
                .isEqualTo(
                        "FOLDER/cabinet.job.json: the comparison cannot be written: FOLDER/out is not a directory.\n");
    }

    @Test
    void a_fault_of_ours_is_called_so() {
        shop = new Shop(folder, (job, options) -> {
            throw new IllegalStateException("A strip came out wider than its section.");
        });
        assertThat(trial("--part", "door", "--widths", "2")).isEqualTo(3);
        assertThat(shop.err()).startsWith("This is a fault of Ripwright's, not yours.");
    }
}
