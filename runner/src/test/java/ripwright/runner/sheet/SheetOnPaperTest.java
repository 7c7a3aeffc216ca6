package ripwright.runner.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import ripwright.Options;
import ripwright.Planner;
import ripwright.job.Job;
import ripwright.json.JobReader;
import ripwright.measure.Unit;
import ripwright.plan.Plan;
import ripwright.plan.Step;

/** The sheet printed, and on screens wide and narrow. */
class SheetOnPaperTest {
    private static final Options BRIEFLY = Options.defaults().withMostRecuts(200);
    private static final double MARGIN = 12 / 25.4 * 72; // as the style has it
    private static final Pattern SPACE = Pattern.compile("\\s+");
    private static final Map<String, Printed> SHEETS = new ConcurrentHashMap<>();

    private static final Map<String, Printout> PRINTOUTS = new ConcurrentHashMap<>();

    @TempDir
    private static Path folder;

    private static Browser browser;

    private record Printed(Plan plan, Path file) {}

    @BeforeAll
    static void start() throws IOException {
        browser = new Browser(
                Files.createDirectory(folder.resolve("profile")), Files.createDirectory(folder.resolve("downloads")));
    }

    @AfterAll
    static void stop() {
        if (browser != null) browser.close();
        SHEETS.clear();
        PRINTOUTS.clear();
    }

    private static Printed sheet(String name) {
        return SHEETS.computeIfAbsent(name, SheetOnPaperTest::written);
    }

    private static Printed written(String name) {
        try {
            Job job = name.equals("hostile")
                    ? HostileJob.job()
                    : JobReader.read(Path.of("../samples", name, name + ".job.json"));
            Plan plan = Planner.plan(job, BRIEFLY);
            Path file = folder.resolve(name + ".sheet.html");
            Files.writeString(file, new Sheet(job, plan).html());
            return new Printed(plan, file);
        } catch (Exception e) {
            throw new AssertionError(e);
        }
    }

    @ParameterizedTest
    @CsvSource({
        "mudroom-lockers, 1280",
        "mudroom-lockers, 390",
        "mudroom-lockers, 360",
        "toy-chest-mm, 1280",
        "toy-chest-mm, 390",
        "hostile, 1280",
        "hostile, 390"
    })
    void the_page_is_as_wide_as_the_screen_and_the_browser_has_nothing_to_complain_of(String name, int width)
            throws IOException {
        browser.width(width);
        browser.open(sheet(name).file());

        assertThat(browser.run("return document.documentElement.scrollWidth")).isEqualTo((long) width);
        assertThat(browser.run("return document.documentElement.clientWidth")).isEqualTo((long) width);
        assertThat(browser.run(
                        "const main = document.querySelector('main'); return main.scrollWidth - main.clientWidth"))
                .isEqualTo(0L);
        assertThat(browser.run("return [...document.querySelectorAll('.scroll')]"
                        + ".filter((one) => one.scrollWidth > one.clientWidth).length"))
                .isEqualTo(0L);
        browser.picture(name + "-" + width);
        assertThat(browser.run("return performance.getEntriesByType('resource').length"))
                .isEqualTo(0L);
        assertThat(browser.run("return typeof window.hostile")).isEqualTo("undefined");
        assertThat(browser.complaints()).isEmpty();
        assertThat(browser.find("#progress").getText())
                .isEqualTo("0 of " + sheet(name).plan().steps().size() + " steps done");
    }

    @ParameterizedTest
    @CsvSource({
        "mudroom-lockers, A4",
        "mudroom-lockers, Letter",
        "toy-chest-mm, A4",
        "toy-chest-mm, Letter",
        "hostile, A4",
        "hostile, Letter"
    })
    void every_step_is_printed_in_its_order_and_nothing_reaches_over_the_edge(String name, String paper) {
        Plan plan = sheet(name).plan();
        Printout printout = printed(name, paper);

        assertThat(stepsOn(printout, plan))
                .isEqualTo(IntStream.rangeClosed(1, plan.steps().size()).boxed().toList());
        assertThat(printout.pages()).isNotEmpty().allSatisfy(page -> {
            assertThat(page.width()).isBetween(590.0, 845.0);
            assertThat(page.left()).isGreaterThan(MARGIN - 1);
            assertThat(page.top()).isGreaterThan(MARGIN - 2);
            assertThat(page.right()).isLessThan(page.width() - MARGIN + 1);
            assertThat(page.bottom()).isLessThan(page.height() - MARGIN + 1);
        });
        assertThat(printout.text()).doesNotContain("differs", "steps done", "came out different");
    }

    /** The numbers that start a row, as far as they follow one another; other rows start with numbers too. */
    private static List<Integer> stepsOn(Printout printout, Plan plan) {
        List<Integer> steps = new ArrayList<>();
        for (String line : printout.text().lines().toList()) {
            String start = line.strip().split("[ !]", 2)[0];
            String[] ends = start.split("–", 2); // steps that are told in one row, such as 41–43
            if (steps.size() >= plan.steps().size() || !ends[0].equals("" + (steps.size() + 1))) continue;
            int last = ends[ends.length - 1].matches("[0-9]{1,4}") ? Integer.parseInt(ends[ends.length - 1]) : 0;
            do steps.add(steps.size() + 1);
            while (steps.size() < last);
        }
        return steps;
    }

    @ParameterizedTest
    @ValueSource(strings = {"mudroom-lockers", "toy-chest-mm"})
    void the_printed_words_are_the_plans(String name) {
        Plan plan = sheet(name).plan();
        String text = printed(name, "Letter").text();
        Unit unit = plan.units();

        assertThat(text)
                .contains(plan.cost().net().toPlainString(), plan.cost().bound().toPlainString());
        assertThat(plan.settings())
                .allSatisfy(setting ->
                        assertThat(text).contains("Rip at " + unit.nearest(setting.width()) + " " + unit.symbol()));
        assertThat(plan.steps().stream().flatMap(step -> step.stop().stream()).distinct())
                .allSatisfy(
                        stop -> assertThat(text).contains("Crosscut at " + unit.nearest(stop) + " " + unit.symbol()));
        assertThat(plan.boards().stream().flatMap(board -> board.sections().stream()))
                .allSatisfy(section -> assertThat(section.strips())
                        .filteredOn(strip -> strip.setting().isPresent()) // ripped stock is not ripped again
                        .allSatisfy(strip -> assertThat(text.lines())
                                .anyMatch(line -> line.contains(section.id() + " ")
                                        && line.contains(
                                                " " + unit.nearest(section.to().minus(section.from())) + " "))
                                .anyMatch(line -> (" " + line + " ").contains(" " + strip.id() + " "))));
        assertThat(plan.offcuts())
                .allSatisfy(offcut -> assertThat(text.lines())
                        .anyMatch(line -> line.startsWith(offcut.id() + " ")
                                && line.contains(unit.nearest(offcut.piece().length()))));
        assertThat(plan.steps().stream()
                        .filter(step -> step.does() == Step.Does.TEST)
                        .map(Step::piece))
                .allSatisfy(test -> assertThat(text).contains("rip test blank " + test + " ("));
    }

    @ParameterizedTest
    @CsvSource({"mudroom-lockers, A4", "mudroom-lockers, Letter", "hostile, A4", "hostile, Letter"})
    void every_drawing_is_whole_on_one_page(String name, String paper) {
        Plan plan = sheet(name).plan();
        Printout printout = printed(name, paper);
        for (int i = 1; i <= plan.boards().size(); i++) {
            String figure = "Fig. " + i + " ";
            assertThat(printout.pages())
                    .as(figure)
                    .filteredOn(page -> (page.text() + " ").contains(figure))
                    .hasSize(1);
        }
        browser.open(sheet(name).file());
        assertThat(browser.run("""
                return [...document.querySelectorAll('figure svg')].filter((svg) => {
                  const all = svg.getBBox();
                  const paper = svg.viewBox.baseVal;
                  return all.x < -100 || all.y < -100 || all.x + all.width > paper.width + 100
                    || all.y + all.height > paper.height + 100;
                }).map((svg) => svg.querySelector('title').textContent)""")).isEqualTo(List.of());
    }

    @ParameterizedTest
    @ValueSource(strings = {"A4", "Letter"})
    void ninety_five_parts_are_told_on_thirteen_pages_and_none_is_nearly_empty(String paper) {
        Printout printout = printed("mudroom-lockers", paper);

        assertThat(printout.pages()).hasSizeLessThanOrEqualTo(13);
        assertThat(printout.pages())
                .allSatisfy(page -> assertThat(page.bottom()).isGreaterThan(page.height() / 4));
    }

    @ParameterizedTest
    @ValueSource(strings = {"mudroom-lockers", "hostile"})
    void there_is_a_label_for_every_blank(String name) {
        Plan plan = sheet(name).plan();
        Printout printout = printed(name, "A4");
        String labels = printout.text().substring(printout.text().indexOf("Labels for the parts"));
        List<String> blanks = plan.steps().stream()
                .filter(step -> step.does() == Step.Does.BLANK)
                .flatMap(step -> step.makes().stream())
                .filter(id ->
                        plan.offcuts().stream().noneMatch(offcut -> offcut.id().equals(id)))
                .filter(id ->
                        plan.testBlanks().stream().noneMatch(test -> test.id().equals(id)))
                .toList();

        assertThat(blanks).hasSizeGreaterThan(50);
        assertThat(SPACE.splitAsStream(labels)).containsAll(blanks);
        assertThat(labels.split("Step \\d+, strip", -1)).hasSize(blanks.size() + 1);
    }

    @ParameterizedTest
    @ValueSource(strings = {"mudroom-lockers", "hostile"})
    void all_that_is_read_stands_out_from_what_is_behind_it(String name) {
        browser.width(1280);
        browser.open(sheet(name).file());
        browser.run("for (const one of document.querySelectorAll('dialog')) one.show(); return true");

        @SuppressWarnings("unchecked")
        List<List<String>> colors = (List<List<String>>) browser.run("""
                const behind = (one) => {
                  const color = getComputedStyle(one).backgroundColor;
                  return color === 'rgba(0, 0, 0, 0)' ? behind(one.parentElement) : color;
                };
                const pairs = new Set();
                const walk = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
                while (walk.nextNode()) {
                  const one = walk.currentNode.parentElement;
                  if (walk.currentNode.textContent.trim() === '' || !one.checkVisibility()) continue;
                  const style = getComputedStyle(one);
                  pairs.add([one instanceof SVGElement ? style.fill : style.color, behind(one), style.opacity].join('|'));
                }
                return [...pairs].map((pair) => pair.split('|'))""");
        assertThat(colors).isNotEmpty().allSatisfy(pair -> {
            assertThat(Contrast.of(pair.get(0), pair.get(1))).as("%s", pair).isGreaterThanOrEqualTo(7);
            assertThat(pair.get(2)).isEqualTo("1");
        });
        @SuppressWarnings("unchecked")
        List<String> edges = (List<String>) browser.run("""
                return [...new Set([...document.querySelectorAll('button, input, select, textarea')]
                  .filter((one) => one.checkVisibility() && one.type !== 'radio')
                  .map((one) => getComputedStyle(one).borderTopColor))]""");
        assertThat(edges)
                .isNotEmpty()
                .allSatisfy(edge ->
                        assertThat(Contrast.of(edge, "rgb(255, 255, 255)")).isGreaterThanOrEqualTo(3));
    }

    private static Printout printed(String name, String paper) {
        return PRINTOUTS.computeIfAbsent(name + "-" + paper, any -> printedNow(name, paper));
    }

    private static Printout printedNow(String name, String paper) {
        browser.open(sheet(name).file());
        byte[] pdf = paper.equals("A4") ? browser.printed(210 / 25.4, 297 / 25.4) : browser.printed(8.5, 11);
        try {
            Files.write(Browser.TO_LOOK_AT.resolve(name + "-" + paper + ".pdf"), pdf);
            return new Printout(pdf);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
