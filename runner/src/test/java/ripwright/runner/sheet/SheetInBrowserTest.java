package ripwright.runner.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.support.ui.Select;
import ripwright.plan.Plan;
import ripwright.plan.Step;

/** The sheet on a tablet at the saw. */
class SheetInBrowserTest {
    @TempDir
    private static Path folder;

    private static Browser browser;

    private final Plan plan = WindowSeat.plan();

    @BeforeAll
    static void start() throws IOException {
        browser = new Browser(profile(), Files.createDirectories(downloads()));
    }

    @BeforeEach
    void open() throws IOException {
        Files.writeString(page(), new Sheet(WindowSeat.job(), plan).html());
        browser.open(page());
        browser.run("localStorage.clear(); return true");
        browser.open(page());
    }

    private static Path profile() {
        return folder.resolve("profile");
    }

    private static Path downloads() {
        return folder.resolve("downloads");
    }

    private static Path page() {
        return folder.resolve("window-seat.sheet.html");
    }

    @AfterAll
    static void stop() {
        if (browser != null) browser.close();
    }

    @Test
    void boxes_ticked_stay_ticked_when_the_file_is_opened_again_in_another_browser_window() throws IOException {
        box("Step 1: oak-1/1").click();
        box("Step 1: oak-1/2").click();
        box("Pulled oak-3").click();
        assertThat(browser.find("#progress").getText()).isEqualTo("1 of 47 steps done");

        browser.close();
        browser = new Browser(profile(), downloads());
        browser.open(page());

        assertThat(ticked()).containsExactly("Pulled oak-3", "Step 1: oak-1/1", "Step 1: oak-1/2");
        assertThat(browser.find("#progress").getText()).isEqualTo("1 of 47 steps done");
        assertThat(browser.complaints()).isEmpty();
    }

    @Test
    void the_ticks_of_one_plan_are_not_those_of_another() throws IOException {
        box("Step 1: oak-1/1").click();

        Files.writeString(page(), new Sheet(WindowSeat.job(), cheaper()).html());
        browser.open(page());

        assertThat(ticked()).isEmpty();
    }

    private Plan cheaper() {
        return new Plan(
                plan.job(),
                plan.units(),
                plan.status(),
                PlanBuilder.cost("171.19", "29.85", "141.34", "139.40", "0.0138"),
                plan.tally(),
                plan.boards(),
                plan.settings(),
                plan.testBlanks(),
                plan.steps(),
                plan.offcuts(),
                plan.shortages(),
                plan.cautions());
    }

    @Test
    void what_came_out_different_is_saved_as_a_report_with_the_steps_that_are_done() throws Exception {
        box("Step 1: oak-1/1").click();
        box("Step 1: oak-1/2").click();
        box("Step 2: oak-2/1").click();

        tell(rip("S1"), "S1", "width", "2  3/16");
        tell(1, "oak-1/2", "defect", " 12", "13 1/2", "0", "38 mm", "knot");
        tell(2, "oak-2/2", "spoiled");
        tell(fit(), "scribe", "length", "17 3/4");
        browser.find("#open-report").click();
        browser.find("#note").sendKeys("Blade dull after step 2");
        assertThat(browser.find("#half-done").getText()).isEqualTo("Ticked in part, and told piece by piece: 2.");
        assertThat(browser.all("#changes li").stream().map(WebElement::getText))
                .containsExactly(
                        "strip S1: width 2 3/16 remove",
                        "section oak-1/2: knot from 12 to 13 1/2, left 0, right 38 mm remove",
                        "section oak-2/2: spoiled remove",
                        "part scribe, every one still to be made: length 17 3/4 remove");

        assertThat(saved("window-seat.report.json")).isEqualTo("""
                {
                  "format": 1,
                  "job": "Window seat",
                  "done": [
                    1
                  ],
                  "changes": [
                    {
                      "piece": "S1",
                      "width": "2 3/16"
                    },
                    {
                      "piece": "oak-1/2",
                      "defect": {
                        "from": "12",
                        "to": "13 1/2",
                        "left": "0",
                        "right": "38 mm",
                        "kind": "knot",
                        "blocks": "all"
                      }
                    },
                    {
                      "piece": "oak-2/2",
                      "spoiled": true
                    },
                    {
                      "part": "scribe",
                      "length": "17 3/4"
                    }
                  ],
                  "made": [
                    "oak-2/1"
                  ],
                  "note": "Blade dull after step 2"
                }
                """);
        assertThat(browser.complaints()).isEmpty();
    }

    @Test
    void what_came_out_different_is_kept_and_can_be_taken_back() {
        tell(rip("S1"), "S1", "spoiled");
        tell(rip("S1"), "S1", "width", "2");
        browser.open(page());

        assertThat(browser.find("#open-report").getText()).isEqualTo("Report (2 different)");
        browser.find("#open-report").click();
        browser.find("#changes button").click();
        assertThat(browser.all("#changes li").stream().map(WebElement::getText))
                .containsExactly("strip S1: width 2 remove");
        browser.find("#start-over").click();
        browser.accept();
        assertThat(browser.all("#changes li")).isEmpty();
    }

    @Test
    void what_is_no_length_is_not_noted() {
        tell(rip("S1"), "S1", "width", "2 3/8 ft");
        assertThat(browser.find("#difference").isDisplayed()).isTrue();

        browser.find("#width").clear();
        browser.find("#width").sendKeys("2-3/8\"", Keys.ENTER);
        assertThat(browser.find("#difference").isDisplayed()).isFalse();
        assertThat(browser.find("#open-report").getText()).isEqualTo("Report (1 different)");
        browser.find("#open-report").click();
        assertThat(browser.find("#changes li").getText()).isEqualTo("strip S1: width 2 3/8 in remove");
    }

    @Test
    void an_opening_is_answered_at_once() {
        WebElement opening = browser.all("input.opening").get(0); // planned 18 1/4, sneak-up of 1/4 included
        WebElement answer = browser.all("output.answer").get(0);
        long spare = Long.parseLong(Objects.requireNonNull(opening.getDomAttribute("data-spare")));

        opening.sendKeys("17-1/2\"");
        assertThat(answer.getText()).startsWith("Cut to 17 3/4 in: fits, ");
        opening.clear();
        opening.sendKeys("444.5 mm");
        assertThat(answer.getText()).startsWith("Cut to 17 3/4 in: fits, ");
        opening.clear();
        opening.sendKeys(18 + spare / 25_400_000 + 2 + "");
        assertThat(answer.getText()).contains(": too short by ");
        opening.clear();
        opening.sendKeys("wide");
        assertThat(answer.getText()).isEqualTo("No length: write 12 3/8 or 314 mm.");
    }

    @Test
    void openings_are_kept_when_the_page_is_opened_again() {
        browser.all("input.opening").get(0).sendKeys("17 1/2");
        browser.open(page());

        assertThat(browser.all("output.answer").get(0).getText()).startsWith("Cut to 17 3/4 in: fits, ");
    }

    @Test
    void the_planned_size_stands_beside_the_question() {
        browser.find("button.differs[data-step='" + rip("S1") + "']").click();

        assertThat(browser.find("#planned-width").getText()).isEqualTo("2 1/4");
        assertThat(new Select(browser.find("#thing")).getOptions().stream().map(WebElement::getText))
                .startsWith("strip S1");
    }

    @Test
    void all_of_it_works_from_the_keyboard() {
        browser.run("document.querySelector('main input').focus(); return true;");
        browser.press(Keys.SPACE);
        assertThat(ticked()).containsExactly("Counted apron");

        browser.run("document.querySelector('button.differs').focus(); return true;");
        browser.press(Keys.ENTER);
        assertThat(browser.find("#difference").isDisplayed()).isTrue();
        browser.press(Keys.TAB);
        browser.press(Keys.ESCAPE);
        assertThat(browser.find("#difference").isDisplayed()).isFalse();
        assertThat(browser.run("return document.activeElement.className")).isEqualTo("live differs");
        assertThat(browser.run("return [...document.querySelectorAll('main *')].some((one) => one.tabIndex > 0)"))
                .isEqualTo(false);
    }

    @ParameterizedTest
    @ValueSource(ints = {1280, 390})
    void the_questions_fit_the_screen(int width) throws IOException {
        browser.width(width);
        browser.open(page());
        tell(rip("S1"), "S1", "width", "2");
        browser.find("button.differs[data-step='" + rip("S1") + "']").click();
        browser.find("[name=how][value=defect]").click();
        browser.picture("difference-" + width);
        assertThat(sideways("#difference")).isEqualTo(0L);
        browser.press(Keys.ESCAPE);
        browser.find("#open-report").click();
        browser.picture("report-" + width);
        assertThat(sideways("#report")).isEqualTo(0L);
    }

    private Object sideways(String css) {
        return browser.run(
                "const one = document.querySelector(arguments[0]); return one.scrollWidth - one.clientWidth", css);
    }

    private void tell(int step, String thing, String how, String... typed) {
        browser.find("button.differs[data-step='" + step + "']").click();
        new Select(browser.find("#thing")).selectByValue(thing);
        browser.find("[name=how][value=" + how + "]").click();
        List<String> fields = how.equals("defect") ? List.of("from", "to", "left", "right", "kind") : List.of(how);
        for (int i = 0; i < typed.length; i++) {
            WebElement field = browser.find("#" + fields.get(i));
            field.clear();
            field.sendKeys(typed[i]);
        }
        browser.find("#difference button[value=note]").click();
    }

    private int rip(String strip) {
        return plan.steps().stream()
                .filter(step -> step.does() == Step.Does.RIP && step.makes().contains(strip))
                .mapToInt(Step::n)
                .findFirst()
                .orElseThrow();
    }

    private int fit() {
        return plan.steps().stream()
                .filter(step -> step.does() == Step.Does.BLANK && step.stop().isEmpty())
                .mapToInt(Step::n)
                .findFirst()
                .orElseThrow();
    }

    private WebElement box(String done) {
        return browser.find("input[aria-label='" + done + "']");
    }

    private List<String> ticked() {
        return browser.all("main input").stream()
                .filter(WebElement::isSelected)
                .map(box -> Objects.requireNonNull(box.getDomAttribute("aria-label")))
                .toList();
    }

    private String saved(String name) throws IOException, InterruptedException {
        browser.find("#save").click();
        return Files.readString(Downloads.arrived(downloads(), name));
    }
}
