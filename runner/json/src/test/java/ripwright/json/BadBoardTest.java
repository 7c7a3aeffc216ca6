package ripwright.json;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import org.junit.jupiter.api.Test;

/** What a user is told about boards and parts that are wrong: the whole text. */
class BadBoardTest {
    @Test
    void crook_on_a_board_with_two_straight_edges() throws IOException {
        assertThat(JobText.cabinet().board(", \"crook\": 0.25").mistakes()).isEqualTo("""
                cabinet.job.json: 1 mistake, nothing was planned.
                  $.stack[0].crook   1/4 in on a board with two straight edges. Set straightEdges to 1 or 0, or leave crook out.
                    11:115 | h": 6, "length": 72, "straightEdges": 2, "crook": 0.25 }
                           |                                                   ^
                """);
    }

    @Test
    void three_straight_edges() throws IOException {
        assertThat(JobText.cabinet()
                        .with("\"straightEdges\": 2", "\"straightEdges\": 3")
                        .mistakes())
                .isEqualTo("""
                        cabinet.job.json: 1 mistake, nothing was planned.
                          $.stack[0].straightEdges   3; it must be a whole number from 0 to 2.
                            11:103 | "3/4", "width": 6, "length": 72, "straightEdges": 3, "endTrim": 1 }
                                   |                                                   ^
                        """);
    }

    @Test
    void milled_to_more_than_it_measures() throws IOException {
        assertThat(JobText.cabinet().board(", \"millsTo\": \"13/16\"").mistakes())
                .isEqualTo("""
                        cabinet.job.json: 1 mistake, nothing was planned.
                          $.stack[0].millsTo   13/16 in is more than the thickness of 3/4 in. Milling takes wood off.
                            11:117 | : 6, "length": 72, "straightEdges": 2, "millsTo": "13/16" }
                                   |                                                   ^
                        """);
    }

    @Test
    void a_ripped_board_with_a_rough_edge_and_a_taper() throws IOException {
        assertThat(JobText.cabinet()
                        .with("\"straightEdges\": 2", "\"straightEdges\": 1")
                        .board(", \"ripped\": true, \"widthAtFarEnd\": 5")
                        .mistakes())
                .isEqualTo("""
                        cabinet.job.json: 2 mistakes, nothing was planned.
                          $.stack[0].straightEdges   1 on a ripped board, which has two. Set it to 2, or leave ripped out.
                            11:103 | "3/4", "width": 6, "length": 72, "straightEdges": 1, "ripped": true, "widthAtFarEnd": 5 }
                                   |                                                   ^
                          $.stack[0].widthAtFarEnd   5 in on a ripped board, which is 6 in wide everywhere. Leave it out.
                            11:139 | raightEdges": 1, "ripped": true, "widthAtFarEnd": 5 }
                                   |                                                   ^
                        """);
    }

    @Test
    void a_defect_that_ends_before_it_starts() throws IOException {
        assertThat(JobText.cabinet().board("""
                        ,
                      "defects": [
                        { "from": 7, "to": 7, "left": 2, "right": 1, "kind": " ", "blocks": "some" }
                      ]""").mistakes()).isEqualTo("""
                        cabinet.job.json: 4 mistakes, nothing was planned.
                          $.stack[0].defects[0].to       7 in is not beyond from, 7 in. A defect ends farther along than it starts.
                            13:22 | { "from": 7, "to": 7, "left": 2, "right": 1, "kind": " ", "blocks": "some" }
                                  |                    ^
                          $.stack[0].defects[0].right    1 in is not beyond left, 2 in. A defect is wider than nothing.
                            13:45 | { "from": 7, "to": 7, "left": 2, "right": 1, "kind": " ", "blocks": "some" }
                                  |                                           ^
                          $.stack[0].defects[0].kind     The kind of a defect is blank.
                            13:56 | { "from": 7, "to": 7, "left": 2, "right": 1, "kind": " ", "blocks": "some" }
                                  |                                                      ^
                          $.stack[0].defects[0].blocks   "some"; it must be "all" or "show".
                            13:71 | { "from": 7, "to": 7, "left": 2, "right": 1, "kind": " ", "blocks": "some" }
                                  |                                                                     ^
                        """);
    }

    @Test
    void a_defect_on_a_tapered_board_must_lie_within_the_width_there() throws IOException {
        assertThat(JobText.cabinet().board("""
                        , "widthAtFarEnd": 3,
                      "defects": [
                        { "from": 60, "to": 72, "left": 3, "right": "3 1/2", "kind": "knot", "blocks": "all" },
                        { "from": 60, "to": 72, "left": 3, "right": "3 5/8", "kind": "knot", "blocks": "all" }
                      ]""").mistakes()).isEqualTo("""
                        cabinet.job.json: 1 mistake, nothing was planned.
                          $.stack[0].defects[1].right   3 5/8 in is beyond the board's width of 3 1/2 in there.
                            14:47 | { "from": 60, "to": 72, "left": 3, "right": "3 5/8", "kind": "knot", "blocks": "all" }
                                  |                                             ^
                        """);
    }

    @Test
    void end_trim_with_one_end_misspelled() throws IOException {
        assertThat(JobText.cabinet()
                        .with("\"endTrim\": 1 }", "\"endTrim\": { \"near\": 1, \"fra\": 2 } }")
                        .mistakes())
                .isEqualTo("""
                        cabinet.job.json: 1 mistake, nothing was planned.
                          $.stack[0].endTrim.fra   no such field. Did you mean "far"?
                            11:130 | : 72, "straightEdges": 2, "endTrim": { "near": 1, "fra": 2 } }
                                   |                                                   ^
                        """);
    }

    @Test
    void an_id_with_the_sign_of_copies() throws IOException {
        assertThat(JobText.cabinet().with("\"ash-1\"", "\"ash#1\"").mistakes()).isEqualTo("""
                cabinet.job.json: 1 mistake, nothing was planned.
                  $.stack[0].id   "ash#1" holds a #, which tells the copies of an entry with a count apart. Leave it out.
                    11:13 | { "id": "ash#1", "species": "ash", "thickness": "3/4", "width": 6, "length": 72, "straightEdges"
                          |         ^
                """);
    }

    @Test
    void an_id_that_is_too_long_once_it_is_numbered() throws IOException {
        assertThat(JobText.cabinet()
                        .with("\"ash-1\"", "\"" + "x".repeat(298) + "\"")
                        .board(", \"count\": 10")
                        .mistakes())
                .contains("$.stack[0].id   too long to be numbered: with #10 it is over 300 characters. Shorten it.\n");
    }

    @Test
    void names_that_are_none() throws IOException {
        assertThat(JobText.cabinet()
                        .with("\"Cabinet\"", "\"a\\nb\"")
                        .with("\"door\"", "\"   \"")
                        .with("\"ash-1\"", "\"\\ud83e\"")
                        .mistakes())
                .isEqualTo("""
                        cabinet.job.json: 3 mistakes, nothing was planned.
                          $.job             The job's name holds a control character, such as a line break or tab.
                            3:10 | "job": "a\\nb",
                                 |        ^
                          $.stack[0].id     The id holds half of a two-part character; write it whole.
                            11:13 | { "id": "\\ud83e", "species": "ash", "thickness": "3/4", "width": 6, "length": 72, "straightEdges
                                  |         ^
                          $.parts[0].name   The name is blank.
                            14:15 | { "name": "   ", "count": 2, "length": 24, "width": "2 1/4", "thickness": "3/4", "species": "ash
                                  |           ^
                        """);
    }

    @Test
    void a_longest_rip_under_the_shortest() throws IOException {
        assertThat(JobText.cabinet()
                        .with(
                                "\"crosscutKerf\": \"1/8\"",
                                "\"crosscutKerf\": \"1/8\", \"longestRip\": 10, \"shortestRip\": 14")
                        .mistakes())
                .isEqualTo("""
                        cabinet.job.json: 2 mistakes, nothing was planned.
                          $.saw.longestRip   10 in is under shortestRip, 14 in. Make it as long at least.
                            5:67 | "saw": { "ripKerf": "1/8", "crosscutKerf": "1/8", "longestRip": 10, "shortestRip": 14 },
                                 |                                                                 ^
                          $.testRip.length   12 in is under shortestRip, 14 in. Make it as long at least.
                            6:26 | "testRip": { "length": 12, "tries": 1 },
                                 |                        ^
                        """);
    }

    @Test
    void a_kerf_over_an_inch() throws IOException {
        assertThat(JobText.cabinet()
                        .with("\"ripKerf\": \"1/8\"", "\"ripKerf\": \"30 mm\"")
                        .mistakes())
                .isEqualTo("""
                        cabinet.job.json: 1 mistake, nothing was planned.
                          $.saw.ripKerf   "30 mm"; a kerf is at most 1 in.
                            5:23 | "saw": { "ripKerf": "30 mm", "crosscutKerf": "1/8" },
                                 |                     ^
                        """);
    }

    @Test
    void prices_that_are_none() throws IOException {
        assertThat(JobText.cabinet()
                        .with("{ \"ash\": 6 }", "{ \"ash\": 6, \" ASH\": 7, \"oak\": -1, \"\": 2 }")
                        .mistakes())
                .isEqualTo("""
                        cabinet.job.json: 3 mistakes, nothing was planned.
                          $.prices[" ASH"]   the same wood as "ash" above. Keep one.
                            8:33 | "prices": { "ash": 6, " ASH": 7, "oak": -1, "": 2 },
                                 |                               ^
                          $.prices.oak       -1; it must be an amount of money from 0 to 1000000.
                            8:43 | "prices": { "ash": 6, " ASH": 7, "oak": -1, "": 2 },
                                 |                                         ^
                          $.prices[""]       The species is blank.
                            8:51 | "prices": { "ash": 6, " ASH": 7, "oak": -1, "": 2 },
                                 |                                                 ^
                        """);
    }

    @Test
    void species_of_a_part_that_are_none() throws IOException {
        assertThat(JobText.cabinet()
                        .with("\"species\": \"ash\", \"face\"", "\"species\": [\"ash\", \"any\", 3], \"face\"")
                        .part("""
                                 },
                            { "name": "leg", "count": 1, "length": 24, "width": 2, "thickness": 1, "face": "show", "species": []""")
                        .mistakes())
                .isEqualTo("""
                        cabinet.job.json: 3 mistakes, nothing was planned.
                          $.parts[0].species      "any" in a list; write it alone, or name woods only.
                            14:98 | "width": "2 1/4", "thickness": "3/4", "species": ["ash", "any", 3], "face": "show"     },
                                  |                                                  ^
                          $.parts[0].species[2]   3; it must be the name of a wood.
                            14:113 | 4", "thickness": "3/4", "species": ["ash", "any", 3], "face": "show"     },
                                   |                                                   ^
                          $.parts[1].species      an empty list; name one wood at least, or write "any".
                            15:99 | h": 2, "thickness": 1, "face": "show", "species": [] }
                                  |                                                   ^
                        """);
    }

    @Test
    void a_blank_over_a_hundred_meters() throws IOException {
        assertThat(JobText.cabinet().part(", \"sneakUp\": 3930").mistakes()).isEqualTo("""
                cabinet.job.json: 1 mistake, nothing was planned.
                  $.parts[0].sneakUp   3930 in more than 24 in is over 100 m; make it less.
                    14:132 | /4", "species": "ash", "face": "show", "sneakUp": 3930 }
                           |                                                   ^
                """);
    }

    @Test
    void limits_and_labor_that_are_none() throws IOException {
        assertThat(JobText.cabinet().with("\"salvage\": 0.5,", """
                                "salvage": 0.5,
                                  "limits": { "seconds": 0, "threads": 0, "seed": 1.5 },
                                  "labor": { "perHour": -1, "settingMinutes": 6, "ripMinutes": 1.5 },""").mistakes()).isEqualTo("""
                        cabinet.job.json: 5 mistakes, nothing was planned.
                          $.limits.seconds          0; it must be a number of seconds from 0.001 to 1000000.
                            10:26 | "limits": { "seconds": 0, "threads": 0, "seed": 1.5 },
                                  |                        ^
                          $.limits.threads          0; it must be a whole number from 1 to 256.
                            10:40 | "limits": { "seconds": 0, "threads": 0, "seed": 1.5 },
                                  |                                      ^
                          $.limits.seed             1.5; it must be a whole number.
                            10:51 | "limits": { "seconds": 0, "threads": 0, "seed": 1.5 },
                                  |                                                 ^
                          $.labor.crosscutMinutes   missing. It must be a number of minutes from 0 to 1000000.
                            11:12 | "labor": { "perHour": -1, "settingMinutes": 6, "ripMinutes": 1.5 },
                                  |          ^
                          $.labor.perHour           -1; it must be an amount of money from 0 to 1000000.
                            11:25 | "labor": { "perHour": -1, "settingMinutes": 6, "ripMinutes": 1.5 },
                                  |                       ^
                        """);
    }

    @Test
    void null_is_nothing_to_leave_a_field_out_by() throws IOException {
        assertThat(JobText.cabinet().part(", \"together\": null").mistakes()).isEqualTo("""
                cabinet.job.json: 1 mistake, nothing was planned.
                  $.parts[0].together   null; it must be text of 1 to 300 characters.
                    14:133 | 4", "species": "ash", "face": "show", "together": null }
                           |                                                   ^
                """);
    }

    @Test
    void lengths_of_a_metric_job_are_told_in_millimeters() throws IOException {
        assertThat(JobText.cabinet()
                        .with("\"in\"", "\"mm\"")
                        .board(", \"crook\": 25.4")
                        .mistakes())
                .isEqualTo("""
                        cabinet.job.json: 1 mistake, nothing was planned.
                          $.stack[0].crook   25.4 mm on a board with two straight edges. Set straightEdges to 1 or 0, or leave crook out.
                            11:115 | h": 6, "length": 72, "straightEdges": 2, "crook": 25.4 }
                                   |                                                   ^
                        """);
    }
}
