package ripwright.json;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import org.junit.jupiter.api.Test;

/** What a user is told about fields that are missing, misspelled, there twice or of another type: the whole text. */
class BadFieldTest {
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
    void a_missing_stack_and_bill_are_not_called_empty_too() throws IOException {
        String neither = JobText.CABINET
                .replaceFirst("(?s)\"stack\": \\[.*?],", "")
                .replaceFirst("(?s),\\s*\"parts\": \\[.*]", "")
                .replace("\"salvage\": 0.5,", "\"salvage\": 0.5");
        assertThat(new JobText(neither.replaceFirst(",\\s*}\\s*$", "}")).mistakes())
                .contains("2 mistakes");
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
}
