package ripwright.runner.json;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** What a user is told about a job that is wrong: the whole text. */
class BadJobTest {
    private static final String SECOND_BOARD = """
            "endTrim": 1 },
                { "id": "ash-1", "species": "ash", "thickness": 1, "width": 6, "length": 72, "straightEdges": 2 }""";

    @Test
    void a_misspelled_field_is_told_with_what_was_meant_and_not_called_missing_too() throws IOException {
        assertThat(JobText.cabinet().with("\"ripKerf\"", "\"ripkref\"").mistakes())
                .isEqualTo("""
                cabinet.job.json: 1 mistake, nothing was planned.
                  $.saw.ripkref   no such field. Did you mean "ripKerf"?
                    5:12 | "saw": { "ripkref": "1/8", "crosscutKerf": "1/8" },
                         |          ^
                """);
    }

    @Test
    void a_field_that_no_unknown_one_is_like_is_missing() throws IOException {
        assertThat(JobText.cabinet().with("\"crosscutKerf\"", "\"blade\"").mistakes())
                .isEqualTo("""
                cabinet.job.json: 2 mistakes, nothing was planned.
                  $.saw.crosscutKerf   missing. It must be a length, such as 23.5 or "2 3/8".
                    5:10 | "saw": { "ripKerf": "1/8", "blade": "1/8" },
                         |        ^
                  $.saw.blade          no such field. The nearest known one is "ripKerf".
                    5:30 | "saw": { "ripKerf": "1/8", "blade": "1/8" },
                         |                            ^
                """);
    }

    @Test
    void an_unknown_field_like_no_other_is_told_with_the_nearest_all_the_same() throws IOException {
        assertThat(JobText.cabinet()
                        .with("\"tries\": 1 }", "\"tries\": 1, \"gauge\": 2 }")
                        .mistakes())
                .isEqualTo("""
                        cabinet.job.json: 1 mistake, nothing was planned.
                          $.testRip.gauge   no such field. The nearest known one is "length".
                            6:42 | "testRip": { "length": 12, "tries": 1, "gauge": 2 },
                                 |                                        ^
                        """);
    }

    @Test
    void a_wrong_unit_of_the_job() throws IOException {
        assertThat(JobText.cabinet().with("\"in\"", "\"inches\"").mistakes()).isEqualTo("""
                cabinet.job.json: 1 mistake, nothing was planned.
                  $.units   "inches"; it must be "in" or "mm".
                    4:12 | "units": "inches",
                         |          ^
                """);
    }

    @Test
    void a_wrong_unit_of_a_length() throws IOException {
        assertThat(JobText.cabinet()
                        .with("\"ripKerf\": \"1/8\"", "\"ripKerf\": \"0.3 cm\"")
                        .mistakes())
                .isEqualTo("""
                        cabinet.job.json: 1 mistake, nothing was planned.
                          $.saw.ripKerf   "0.3 cm" is not a length. Write it like "2 3/8", "2-3/8", "23.5", "38 mm" or "3/4 in".
                            5:23 | "saw": { "ripKerf": "0.3 cm", "crosscutKerf": "1/8" },
                                 |                     ^
                        """);
    }

    @Test
    void a_negative_size() throws IOException {
        assertThat(JobText.cabinet()
                        .with("\"keep\": { \"length\": 12", "\"keep\": { \"length\": -12")
                        .mistakes())
                .isEqualTo("""
                        cabinet.job.json: 1 mistake, nothing was planned.
                          $.keep.length   A length cannot be negative: -12.
                            7:23 | "keep": { "length": -12, "width": 2 },
                                 |                     ^
                        """);
    }

    @Test
    void a_size_of_zero() throws IOException {
        assertThat(JobText.cabinet().with("\"width\": 2 }", "\"width\": 0 }").mistakes())
                .isEqualTo("""
                        cabinet.job.json: 1 mistake, nothing was planned.
                          $.keep.width   0; it must be more than 0.
                            7:36 | "keep": { "length": 12, "width": 0 },
                                 |                                  ^
                        """);
    }

    @Test
    void a_fraction_over_zero() throws IOException {
        assertThat(JobText.cabinet()
                        .with("\"ripKerf\": \"1/8\"", "\"ripKerf\": \"1 9/0\"")
                        .mistakes())
                .isEqualTo("""
                        cabinet.job.json: 1 mistake, nothing was planned.
                          $.saw.ripKerf   "1 9/0" divides by zero; the number under the line must be at least 1.
                            5:23 | "saw": { "ripKerf": "1 9/0", "crosscutKerf": "1/8" },
                                 |                     ^
                        """);
    }

    @Test
    void a_defect_outside_its_board() throws IOException {
        assertThat(JobText.cabinet().board("""
                        ,
                      "defects": [
                        { "from": 70, "to": 73, "left": 0, "right": 1, "kind": "knot", "blocks": "all" },
                        { "from": 7, "to": 8, "left": 5, "right": "6 1/2", "kind": "knot", "blocks": "show" }
                      ]""").mistakes()).isEqualTo("""
                        cabinet.job.json: 2 mistakes, nothing was planned.
                          $.stack[0].defects[0].to      73 in is beyond the board's length of 72 in.
                            13:23 | { "from": 70, "to": 73, "left": 0, "right": 1, "kind": "knot", "blocks": "all" },
                                  |                     ^
                          $.stack[0].defects[1].right   6 1/2 in is beyond the board's width of 6 in there.
                            14:45 | { "from": 7, "to": 8, "left": 5, "right": "6 1/2", "kind": "knot", "blocks": "show" }
                                  |                                           ^
                        """);
    }

    @Test
    void duplicate_ids() throws IOException {
        assertThat(JobText.cabinet().with("\"endTrim\": 1 }", SECOND_BOARD).mistakes())
                .isEqualTo("""
                        cabinet.job.json: 1 mistake, nothing was planned.
                          $.stack[1].id   "ash-1" is the id at $.stack[0].id too; ids must differ.
                            12:13 | { "id": "ash-1", "species": "ash", "thickness": 1, "width": 6, "length": 72, "straightEdges": 2
                                  |         ^
                        """);
    }

    @Test
    void duplicate_part_names() throws IOException {
        assertThat(JobText.cabinet().part("""
                         },
                    { "name": "door", "count": 1, "length": 24, "width": 2, "thickness": 1, "face": "hidden\"""").mistakes()).isEqualTo("""
                        cabinet.job.json: 1 mistake, nothing was planned.
                          $.parts[1].name   "door" is the name at $.parts[0].name too; names must differ.
                            15:11 | { "name": "door", "count": 1, "length": 24, "width": 2, "thickness": 1, "face": "hidden" }
                                  |           ^
                        """);
    }

    @Test
    void duplicate_keys() throws IOException {
        assertThat(JobText.cabinet()
                        .with("\"salvage\": 0.5", "\"salvage\": 0.5, \"salvage\": 0.6")
                        .mistakes())
                .isEqualTo("""
                        cabinet.job.json: 1 mistake, nothing was planned.
                          $.salvage   here twice, first on line 9. Keep one.
                            9:19 | "salvage": 0.5, "salvage": 0.6,
                                 |                 ^
                        """);
    }

    @Test
    void a_missing_kerf() throws IOException {
        assertThat(JobText.cabinet().with(", \"crosscutKerf\": \"1/8\"", "").mistakes())
                .isEqualTo("""
                        cabinet.job.json: 1 mistake, nothing was planned.
                          $.saw.crosscutKerf   missing. It must be a length, such as 23.5 or "2 3/8".
                            5:10 | "saw": { "ripKerf": "1/8" },
                                 |        ^
                        """);
    }

    @Test
    void an_empty_bill() throws IOException {
        assertThat(new JobText(JobText.CABINET.replaceFirst("(?s)\"parts\": \\[.*]", "\"parts\": []")).mistakes())
                .isEqualTo("""
                        cabinet.job.json: 1 mistake, nothing was planned.
                          $.parts   The cutting bill is empty; list at least one part.
                            13:12 | "parts": []
                                  |          ^
                        """);
    }

    @Test
    void an_empty_stack() throws IOException {
        assertThat(new JobText(JobText.CABINET.replaceFirst("(?s)\"stack\": \\[.*?],", "\"stack\": [],")).mistakes())
                .isEqualTo("""
                        cabinet.job.json: 1 mistake, nothing was planned.
                          $.stack   There is no board at all; list at least one.
                            10:12 | "stack": [],
                                  |          ^
                        """);
    }

    @Test
    void a_missing_stack_and_bill_are_not_called_empty_too() throws IOException {
        String neither = JobText.CABINET
                .replaceFirst("(?s)\"stack\": \\[.*?],", "")
                .replaceFirst("(?s),\\s*\"parts\": \\[.*]", "")
                .replace("\"salvage\": 0.5,", "\"salvage\": 0.5");
        assertThat(new JobText(neither.replaceFirst(",\\s*}\\s*$", "}")).mistakes())
                .contains("2 mistakes");
    }

    @Test
    void ten_million_parts() throws IOException {
        assertThat(JobText.cabinet()
                        .with("\"count\": 2, \"length\": 24, ", "\"count\": 10000000,\n \"length\": 24,\n ")
                        .mistakes())
                .isEqualTo("""
                        cabinet.job.json: 1 mistake, nothing was planned.
                          $.parts[0].count   10000000; it must be a whole number from 1 to 100000.
                            14:32 | { "name": "door", "count": 10000000,
                                  |                            ^
                        """);
    }

    @Test
    void one_part_too_many_in_all() throws IOException {
        String more = """
                 },
                    { "name": "leg", "count": 1, "length": 24, "width": 2, "thickness": 1, "face": "hidden\"""";
        assertThat(JobText.cabinet()
                        .with("\"count\": 2", "\"count\": 100000")
                        .part(more)
                        .mistakes())
                .isEqualTo("""
                        cabinet.job.json: 1 mistake, nothing was planned.
                          $.parts   100001 parts wanted; a job has at most 100,000.
                            13:12 | "parts": [
                                  |          ^
                        """);
    }

    @Test
    void too_many_boards_are_not_even_copied() throws IOException {
        String more = SECOND_BOARD.replace("ash-1", "ash-2").replace("\"species\"", "\"count\": 9000, \"species\"");
        assertThat(JobText.cabinet()
                        .with("\"id\": \"ash-1\"", "\"id\": \"ash-1\", \"count\": 9000")
                        .with("\"endTrim\": 1 }", more)
                        .mistakes())
                .isEqualTo("""
                        cabinet.job.json: 1 mistake, nothing was planned.
                          $.stack   18000 boards; a job has at most 10000.
                            10:12 | "stack": [
                                  |          ^
                        """);
    }

    @Test
    void an_unknown_format() throws IOException {
        assertThat(JobText.cabinet().with("\"format\": 1", "\"format\": 2").mistakes())
                .isEqualTo("""
                        cabinet.job.json: 1 mistake, nothing was planned.
                          $.format   2 is a format not known here; this version understands 1.
                            2:13 | "format": 2,
                                 |           ^
                        """);
    }

    @Test
    void wrong_types_everywhere() throws IOException {
        assertThat(JobText.cabinet()
                        .with("{ \"ripKerf\": \"1/8\", \"crosscutKerf\": \"1/8\" }", "[]")
                        .with("{ \"length\": 12, \"width\": 2 }", "null")
                        .with("{ \"ash\": 6 }", "true")
                        .with("\"tries\": 1", "\"tries\": 1.5")
                        .with("0.5", "\"half\"")
                        .with("\"Cabinet\"", "{}")
                        .mistakes())
                .isEqualTo("""
                        cabinet.job.json: 6 mistakes, nothing was planned.
                          $.job             an object; it must be text of 1 to 300 characters.
                            3:10 | "job": {},
                                 |        ^
                          $.saw             a list; it must be an object with ripKerf and crosscutKerf.
                            5:10 | "saw": [],
                                 |        ^
                          $.testRip.tries   1.5; it must be a whole number from 0 to 1000.
                            6:39 | "testRip": { "length": 12, "tries": 1.5 },
                                 |                                     ^
                          $.keep            null; it must be an object with length and width.
                            7:11 | "keep": null,
                                 |         ^
                          $.prices          true; it must be an object with a price per board foot for every wood.
                            8:13 | "prices": true,
                                 |           ^
                          $.salvage         "half"; it must be a share from 0 to 1.
                            9:14 | "salvage": "half",
                                 |            ^
                        """);
    }

    @Test
    void all_mistakes_come_at_once_in_the_order_of_the_file() throws IOException {
        assertThat(JobText.cabinet()
                        .with("\"face\": \"show\"", "\"face\": \"inside\"")
                        .with(
                                "\"species\": \"ash\", \"thickness\": \"3/4\", \"width\": 6",
                                "\"species\": \"oak\", \"thickness\": 1, \"width\": 6")
                        .with("\"salvage\": 0.5", "\"salvage\": 50")
                        .with("\"tries\": 1", "\"tries\": -1")
                        .with("\"crosscutKerf\": \"1/8\"", "\"crosscutKerf\": \"1/8\", \"shortestRip\": 14")
                        .mistakes())
                .isEqualTo("""
                        cabinet.job.json: 5 mistakes, nothing was planned.
                          $.testRip.length   12 in is under shortestRip, 14 in. Make it as long at least.
                            6:26 | "testRip": { "length": 12, "tries": -1 },
                                 |                        ^
                          $.testRip.tries    -1; it must be a whole number from 0 to 1000.
                            6:39 | "testRip": { "length": 12, "tries": -1 },
                                 |                                     ^
                          $.salvage          50; it must be a share from 0 to 1.
                            9:14 | "salvage": 50,
                                 |            ^
                          $.stack[0].price   No price for "oak". Add it to prices, or give the board its own.
                            11:5 | { "id": "ash-1", "species": "oak", "thickness": 1, "width": 6, "length": 72, "straightEdges": 2,
                                 | ^
                          $.parts[0].face    "inside"; it must be "hidden" or "show".
                            14:113 | 4", "thickness": "3/4", "species": "ash", "face": "inside" }
                                   |                                                   ^
                        """);
    }

    @Test
    void the_same_mistake_of_all_copies_of_a_board_is_told_once() throws IOException {
        assertThat(JobText.cabinet()
                        .with(
                                "\"id\": \"ash-1\", \"species\": \"ash\",",
                                "\"id\": \"ash-1\", \"count\": 5, \"species\": \"oak\",")
                        .mistakes())
                .isEqualTo("""
                        cabinet.job.json: 1 mistake, nothing was planned.
                          $.stack[0].price   No price for "oak". Add it to prices, or give the board its own.
                            11:5 | { "id": "ash-1", "count": 5, "species": "oak", "thickness": "3/4", "width": 6, "length": 72, "st
                                 | ^
                        """);
    }

    @Test
    void a_misspelled_wood_is_told_with_the_one_that_has_a_price() throws IOException {
        assertThat(JobText.cabinet()
                        .with("\"prices\": { \"ash\": 6 }", "\"prices\": { \"oak\": 5, \"White ash\": 6 }")
                        .with(
                                "\"id\": \"ash-1\", \"species\": \"ash\",",
                                "\"id\": \"ash-1\", \"count\": 2, \"species\": \"whte ash\",")
                        .mistakes())
                .isEqualTo("""
                        cabinet.job.json: 1 mistake, nothing was planned.
                          $.stack[0].species   No price for "whte ash". Did you mean "White ash"? If not, add it to prices, or give the board its own.
                            11:45 | { "id": "ash-1", "count": 2, "species": "whte ash", "thickness": "3/4", "width": 6, "length": 72
                                  |                                         ^
                        """);
    }

    @Test
    void numbers_and_flags_in_quotes_are_told_to_go_without() throws IOException {
        assertThat(JobText.cabinet()
                        .with("\"ash\": 6", "\"ash\": \"6.50\"")
                        .with("\"salvage\": 0.5", "\"salvage\": \"50%\"")
                        .part(", \"fitted\": \"true\"")
                        .mistakes())
                .isEqualTo("""
                        cabinet.job.json: 3 mistakes, nothing was planned.
                          $.prices.ash        "6.50"; it must be an amount of money from 0 to 1000000. Leave the quotes out.
                            8:22 | "prices": { "ash": "6.50" },
                                 |                    ^
                          $.salvage           "50%"; it must be a share from 0 to 1.
                            9:14 | "salvage": "50%",
                                 |            ^
                          $.parts[0].fitted   "true"; it must be true or false. Leave the quotes out.
                            14:131 | 3/4", "species": "ash", "face": "show", "fitted": "true" }
                                   |                                                   ^
                        """);
    }

    @Test
    void numbers_out_of_all_reason_are_refused_before_they_are_reckoned_with() throws IOException {
        assertThat(JobText.cabinet()
                        .with("\"tries\": 1", "\"tries\": 1e999999999")
                        .with("\"keep\": { \"length\": 12", "\"keep\": { \"length\": 1e-999999999")
                        .with("0.5", "0." + "3".repeat(200))
                        .mistakes())
                .isEqualTo("""
                        cabinet.job.json: 3 mistakes, nothing was planned.
                          $.testRip.tries   1e999999999 is out of all reason; write a number in plain digits.
                            6:39 | "testRip": { "length": 12, "tries": 1e999999999 },
                                 |                                     ^
                          $.keep.length     1e-999999999 is out of all reason; write a number in plain digits.
                            7:23 | "keep": { "length": 1e-999999999, "width": 2 },
                                 |                     ^
                          $.salvage         0.333333333333333333... is out of all reason; write a number in plain digits.
                            9:14 | "salvage": 0.3333333333333333333333333333333333333333333333333333333333333333333333333333333333333
                                 |            ^
                        """);
    }

    @Test
    void a_hundred_mistakes_are_shown_and_all_are_counted() throws IOException {
        String parts = "{ \"count\": 0 }, ".repeat(150) + "{ \"count\": 0 }";
        String told = new JobText(JobText.CABINET.replaceFirst("(?s)\"parts\": \\[.*]", "\"parts\": [" + parts + "]"))
                .mistakes();
        assertThat(told).startsWith("cabinet.job.json: 906 mistakes, nothing was planned. The first 100:\n");
        assertThat(told.lines()).hasSize(301);
    }

    @Test
    void names_cannot_reach_the_terminal_with_control_characters() throws IOException {
        assertThat(JobText.cabinet()
                        .with("\"tries\": 1", "\"tries\": 1, \"\\u001b[31m\": 1")
                        .mistakes())
                .isEqualTo("""
                        cabinet.job.json: 1 mistake, nothing was planned.
                          $.testRip["?[31m"]   no such field. The nearest known one is "tries".
                            6:42 | "testRip": { "length": 12, "tries": 1, "\\u001b[31m": 1 },
                                 |                                        ^
                        """);
    }

    @Test
    @Tag("locale")
    void capital_letters_are_matched_the_same_in_every_language() throws IOException {
        assertThat(JobText.cabinet()
                        .with("\"tries\"", "\"TRIES\"")
                        .with("\"crosscutKerf\"", "\"CROSSCUTKERF\"")
                        .mistakes())
                .isEqualTo("""
                        cabinet.job.json: 2 mistakes, nothing was planned.
                          $.saw.CROSSCUTKERF   no such field. Did you mean "crosscutKerf"?
                            5:30 | "saw": { "ripKerf": "1/8", "CROSSCUTKERF": "1/8" },
                                 |                            ^
                          $.testRip.TRIES      no such field. Did you mean "tries"?
                            6:30 | "testRip": { "length": 12, "TRIES": 1 },
                                 |                            ^
                        """);
    }
}
