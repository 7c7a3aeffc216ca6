package ripwright.json;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import org.junit.jupiter.api.Test;

/** What a user is told about a job with too much in it, or with many mistakes: the whole text. */
class TooMuchTest {
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
        String more =
                JobText.SECOND_BOARD.replace("ash-1", "ash-2").replace("\"species\"", "\"count\": 9000, \"species\"");
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
}
