package ripwright.runner.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.support.ui.Select;
import ripwright.json.JobReader;
import ripwright.json.PlanReader;
import ripwright.measure.Length;
import ripwright.plan.Plan;
import ripwright.plan.Step;
import ripwright.runner.RunnerJar;
import ripwright.stock.Board;

/** From the jar's sheet at the saw back to the jar: what a person saves there is what it resumes from. */
class SheetToResumeIT {
    private static final String SAMPLE = "../samples/crooked-board/crooked-board.job.json";

    @TempDir
    private Path folder;

    @Test
    void steps_ticked_and_a_narrow_strip_told_on_the_sheet_are_resumed_from() throws Exception {
        assertThat(run("plan", SAMPLE, "--out", folder.toString())).isZero();
        Path planFile = folder.resolve("crooked-board.plan.json");
        Plan plan = PlanReader.read(planFile);
        Step rip = plan.steps().stream()
                .filter(step -> step.does() == Step.Does.RIP)
                .findFirst()
                .orElseThrow();

        Path report = reported(plan, rip);

        assertThat(run("resume", planFile.toString(), report.toString(), "--job", SAMPLE))
                .as("%s%n%s", Files.readString(folder.resolve("err")), Files.readString(report))
                .isZero();
        String strip = rip.makes().get(0);
        assertThat(JobReader.read(folder.resolve("crooked-board.resumed.job.json"))
                        .stack())
                .filteredOn(board -> board.id().equals(strip))
                .extracting(Board::width)
                .containsExactly(Length.inches("1"));
        assertThat(folder.resolve("crooked-board.resumed.sheet.html")).isNotEmptyFile();
    }

    private Path reported(Plan plan, Step rip) throws IOException, InterruptedException {
        Path downloads = Files.createDirectory(folder.resolve("downloads"));
        try (Browser browser = new Browser(Files.createDirectory(folder.resolve("profile")), downloads)) {
            browser.open(folder.resolve("crooked-board.sheet.html"));
            for (WebElement box : browser.all("main input[data-step]")) {
                int step = Integer.parseInt(Objects.requireNonNull(box.getDomAttribute("data-step")));
                if (step <= rip.n()) box.click();
            }
            assertThat(browser.find("#progress").getText())
                    .isEqualTo(rip.n() + " of " + plan.steps().size() + " steps done");
            browser.find("button.differs[data-step='" + rip.n() + "']").click();
            new Select(browser.find("#thing")).selectByValue(rip.makes().get(0));
            browser.find("#width").sendKeys("1");
            browser.find("#difference button[value=note]").click();
            browser.find("#open-report").click();
            browser.find("#save").click();
            assertThat(browser.complaints()).isEmpty();
            return Downloads.arrived(downloads, "dividers-from-a-crooked-board.report.json");
        }
    }

    private int run(String... arguments) throws IOException, InterruptedException {
        return new RunnerJar(folder).run(arguments);
    }
}
