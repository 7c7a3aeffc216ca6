package ripwright.json;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** What a user is told about a job that is wrong: the whole text. */
class BadJobTest {
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
        assertThat(JobText.cabinet()
                        .with("\"endTrim\": 1 }", JobText.SECOND_BOARD)
                        .mistakes())
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
