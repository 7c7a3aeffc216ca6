package ripwright.runner.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static ripwright.runner.sheet.Markups.elements;
import static ripwright.runner.sheet.Markups.texts;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Base64;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import ripwright.plan.Plan;
import ripwright.plan.Step;

class SheetTest {
    private final Plan plan = WindowSeat.plan();
    private final String html = new Sheet(WindowSeat.job(), plan).html();
    private final Document page = Markups.parsed(html);

    @Test
    void every_step_stands_on_the_sheet_in_its_order() {
        List<String> numbers = elements(page, "th").stream()
                .filter(cell -> cell.getAttribute("class").contains("step"))
                .filter(cell -> !cell.getAttribute("scope").equals("col"))
                .map(cell -> cell.getElementsByTagName("bdi").item(0).getTextContent())
                .toList();

        assertThat(numbers)
                .isEqualTo(IntStream.rangeClosed(1, plan.steps().size())
                        .mapToObj(Integer::toString)
                        .toList());
    }

    @Test
    void everything_a_step_makes_stands_in_a_table_with_a_box_to_tick() {
        List<String> boxes = elements(page, "input").stream()
                .map(box -> box.getAttribute("aria-label"))
                .toList();
        List<String> cells = texts(page, "bdi");

        for (Step step : plan.steps()) {
            for (String id : step.makes()) {
                boolean named = cells.contains(id)
                        || cells.stream()
                                .anyMatch(cell -> cell.contains("makes " + id)
                                        || cell.startsWith(id + ", ")
                                        || cell.startsWith(id + " at "));
                assertThat(named).as("step %d makes %s", step.n(), id).isTrue();
            }
            assertThat(boxes).as("step %d", step.n()).anyMatch(box -> box.startsWith("Step " + step.n() + ": "));
        }
    }

    @Test
    void the_blocks_follow_the_order_of_the_work() {
        assertThat(elements(page, "h2").stream()
                        .map(heading -> heading.getElementsByTagName("small").getLength() == 0
                                ? heading.getTextContent()
                                : heading.getFirstChild().getTextContent().strip())
                        .toList())
                .containsExactly(
                        "Cautions",
                        "Cutting list",
                        "Pull the boards",
                        "Break down",
                        "The boards",
                        "Mill to thickness",
                        "Straighten the reference edges",
                        "Rip at 3 1/2 in",
                        "Rip at 2 1/4 in",
                        "Rip at 1 1/2 in",
                        "Rip at 3/4 in",
                        "Crosscut at 30 in",
                        "Crosscut at 28 in",
                        "Crosscut at 22 in",
                        "Crosscut at 16 9/16 in",
                        "Crosscut at 14 in",
                        "Cut to fit",
                        "Back to the rack",
                        "Buy",
                        "Labels for the parts",
                        "Step : what came out different",
                        "Report");
    }

    @Test
    void the_title_says_cost_bound_and_where_the_minutes_come_from() {
        assertThat(texts(page, "p"))
                .contains(
                        "1 of 22 parts cannot be made from this stock; see \u201cBuy\u201d.",
                        "No plan that makes as much can cost less than 139.40: at most 1.95 could be saved.",
                        "The boards cost 171.20, less 29.85 for the offcuts kept. Of 15.82 board feet cut, 6.93 become"
                                + " finished parts, 3.10 go back to the rack, 5.80 are lost.",
                        "Time is an estimate from common figures, from memory, as the job gives none: 6 minutes for a rip"
                                + " setting, 1.5 for a rip, 1 for a crosscut. All lengths are in inches, to the nearest"
                                + " 1/64.");
        assertThat(texts(page, "dd"))
                .containsExactly("141.35", "43.8 %", "1 h 25 min", "21 of 22", "4", "4", "5", "47");
    }

    @Test
    void a_proven_plan_says_that_none_is_cheaper() {
        Document proven = Markups.parsed(new OneBoard("ash").html());

        assertThat(texts(proven, "p"))
                .anyMatch(text ->
                        text.startsWith("No plan that makes as much can cost less: this one is proven cheapest."));
    }

    @Test
    void a_rip_names_the_edge_that_rides_the_fence_and_how_it_is_known() {
        assertThat(fences("oak-2/1"))
                .contains("right, with the triangle", "right, sawn with S7", "right, sawn with S9");
        assertThat(texts(page, "bdi")).contains("section, right edge", "section, left edge");
    }

    /** The cell behind that of a section, in every row that has one. */
    private List<String> fences(String section) {
        return elements(page, "td").stream()
                .filter(cell -> cell.getTextContent().equals(section))
                .filter(cell -> !cell.getAttribute("class").contains("tick"))
                .map(cell -> ((Element) cell.getParentNode()).getElementsByTagName("td"))
                .filter(row -> row.getLength() > 1)
                .map(row -> row.item(1).getTextContent())
                .toList();
    }

    @Test
    void a_job_that_leaves_nothing_over_says_so_at_the_break_down() {
        assertThat(texts(page, "p")).anyMatch(text -> text.startsWith("This job leaves nothing over at break-down:"));
    }

    @Test
    void wood_taken_off_a_straight_edge_is_told_apart_from_an_edge_that_is_not_straight() {
        assertThat(texts(page, "bdi")).contains("not straight yet");
        assertThat(texts(page, "p")).anyMatch(text -> text.contains("A jointer may do what this rip does"));
    }

    @Test
    void what_is_always_to_be_minded_stands_first() {
        assertThat(texts(page, "p"))
                .anyMatch(text -> text.startsWith("Stand out of line with the blade"))
                .anyMatch(text -> text.startsWith("If the kerf closes"))
                .anyMatch(text -> text.contains("short ends fall free"));
    }

    @Test
    void cautions_name_their_steps_and_mark_them() {
        assertThat(texts(page, "p"))
                .contains(
                        "! Steps 27, 29: Strips of 3/4 in are narrower than the saw's narrowest rip: use a push block.");
        assertThat(elements(page, "abbr").stream()
                        .map(mark -> mark.getPreviousSibling().getTextContent() + mark.getTextContent())
                        .toList())
                .containsExactly("27!", "29!");
    }

    @Test
    void nothing_comes_from_outside_and_only_the_style_and_the_script_of_the_page_itself_are_let_in()
            throws NoSuchAlgorithmException {
        String policy = elements(page, "meta").stream()
                .filter(meta -> meta.getAttribute("http-equiv").equals("Content-Security-Policy"))
                .map(meta -> meta.getAttribute("content"))
                .findFirst()
                .orElseThrow();

        assertThat(policy)
                .isEqualTo("default-src 'none'; style-src '" + hash(inside("style")) + "'; script-src '"
                        + hash(inside("script")) + "'; base-uri 'none'; form-action 'none'");
        assertThat(html).doesNotContain("url(", "src=", " style=", "@import", "http-equiv=\"refresh");
        assertThat(elements(page, "a"))
                .allSatisfy(link -> assertThat(link.getAttribute("href")).startsWith("#figure-"));
        assertThat(html.lines().flatMap(line -> Stream.of(line.split(" ", -1))).filter(word -> word.startsWith("on")))
                .noneMatch(word -> word.contains("="));
    }

    /** As a browser hashes it: what stands between the tags, to the letter. */
    private String inside(String tag) {
        int start = html.indexOf("<" + tag + ">") + tag.length() + 2;
        return html.substring(start, html.indexOf("</" + tag + ">", start));
    }

    private static String hash(String text) throws NoSuchAlgorithmException {
        byte[] digest = MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8));
        return "sha256-" + Base64.getEncoder().encodeToString(digest);
    }

    @Test
    void every_table_has_a_caption_and_heads_with_a_scope_and_every_drawing_a_title() {
        assertThat(elements(page, "table")).isNotEmpty().allSatisfy(table -> {
            assertThat(table.getElementsByTagName("caption").getLength()).isOne();
            assertThat(table.getElementsByTagName("thead").getLength()).isOne();
        });
        assertThat(elements(page, "th"))
                .allSatisfy(head -> assertThat(head.getAttribute("scope")).isIn("col", "row", "rowgroup"));
        assertThat(elements(page, "svg")).hasSize(5).allSatisfy(svg -> {
            assertThat(svg.getAttribute("role")).isEqualTo("img");
            List<String> ids = List.of(svg.getAttribute("aria-labelledby").split(" "));
            assertThat(ids)
                    .containsExactly(idOf(svg, "title"), idOf(svg, "desc"))
                    .doesNotContain("");
        });
    }

    private static String idOf(Element svg, String child) {
        return ((Element) svg.getElementsByTagName(child).item(0)).getAttribute("id");
    }

    @Test
    void rows_of_a_table_have_as_many_cells_as_it_has_columns() {
        for (Element table : elements(page, "table")) {
            int columns = ((Element) table.getElementsByTagName("thead").item(0))
                    .getElementsByTagName("th")
                    .getLength();
            assertThat(TableShape.of(table))
                    .as(table.getElementsByTagName("caption").item(0).getTextContent())
                    .containsOnly(columns);
        }
    }

    @Test
    void ids_are_unique() {
        List<String> ids = elements(page, "*").stream()
                .map(element -> element.getAttribute("id"))
                .filter(id -> !id.isEmpty())
                .toList();

        assertThat(ids).isNotEmpty().doesNotHaveDuplicates();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "<b>&\"'",
                "</bdi></td><script>alert(1)</script>",
                "${1+1} @if(true) ]]> -->",
                "\uD83E\uDEB5 b\u00F6ard \uD83E\uDE9A",
                "\u05DC\u05D5\u05D7 \u0644\u0648\u062D\u0629",
                "\u202Edraob"
            })
    void a_hostile_name_is_shown_as_it_is(String name) {
        assertShown(name, new OneBoard(name));
    }

    @Test
    void a_name_of_300_characters_is_shown_whole() {
        String name = "x".repeat(300);

        assertThat(texts(Markups.parsed(new OneBoard(name).html()), "bdi")).contains(name);
    }

    @Test
    void a_name_from_right_to_left_leaves_the_figures_beside_it_in_their_order() {
        Document hostile = Markups.parsed(new OneBoard("\u05DC\u05D5\u05D7").html());

        assertThat(texts(hostile, "text"))
                .contains(
                        "\u2068\u05DC\u05D5\u05D7\u2069, 20 \u00D7 120 \u00D7 1500 mm",
                        "\u2068\u05DC\u05D5\u05D7/1\u2069 \u2013 645 long");
    }

    @Test
    void directional_controls_in_a_name_cannot_break_out_of_it() {
        Document hostile = Markups.parsed(new OneBoard("\u2069\u202Edraob").html());

        assertThat(texts(hostile, "text")).contains("\u2068\uFFFD\uFFFDdraob\u2069, 20 \u00D7 120 \u00D7 1500 mm");
    }

    @Test
    void half_a_character_pair_becomes_a_replacement_character() {
        assertThat(texts(Markups.parsed(new OneBoard("a\uD83Db\uFFFEc").html()), "bdi"))
                .contains("a\uFFFDb\uFFFDc");
    }

    private static void assertShown(String name, OneBoard job) {
        Document hostile = Markups.parsed(job.html());

        assertThat(texts(hostile, "h1")).containsExactly(name);
        assertThat(texts(hostile, "title")).contains("Shop sheet: " + name, "Board " + name);
        assertThat(texts(hostile, "bdi")).contains(name, name + "/1", name + " O1", name + " mark");
        assertThat(texts(hostile, "p")).contains("! Step 3: Mind " + name + ".");
        assertThat(elements(hostile, "b")).isEmpty();
        assertThat(elements(hostile, "script")).hasSize(1);
    }

    @Test
    void the_same_plan_gives_the_same_bytes_whatever_the_locale() {
        Locale before = Locale.getDefault();
        try {
            Locale.setDefault(Locale.forLanguageTag("ar-EG-u-nu-arab"));
            assertThat(new Sheet(WindowSeat.job(), WindowSeat.plan()).html()).isEqualTo(html);
            Locale.setDefault(Locale.forLanguageTag("tr-TR"));
            assertThat(new Sheet(WindowSeat.job(), WindowSeat.plan()).html()).isEqualTo(html);
        } finally {
            Locale.setDefault(before);
        }
    }

    @Test
    void a_small_sheet_is_the_one_on_file() throws IOException {
        Path golden = Path.of("src/test/resources/ripwright/runner/sheet/one-board.html");
        String sheet = new OneBoard("ash").html();
        Path actual = Path.of("target/one-board.html");
        Files.writeString(actual, sheet);

        assertThat(firstDifference(sheet.lines().toList(), Files.readAllLines(golden)))
                .as("when this change is meant, copy %s to %s", actual, golden)
                .isEmpty();
    }

    private static Optional<String> firstDifference(List<String> actual, List<String> due) {
        for (int i = 0; i < Math.max(actual.size(), due.size()); i++) {
            String here = i < actual.size() ? actual.get(i) : "the end";
            String there = i < due.size() ? due.get(i) : "the end";
            if (!here.equals(there)) return Optional.of("line " + (i + 1) + " is " + here + ", not " + there);
        }
        return Optional.empty();
    }
}
